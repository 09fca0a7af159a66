namespace PatternGen;

/// <summary>How the lines and areas of a group look.</summary>
/// <param name="Fill">Colour inside, or none.</param>
/// <param name="Stroke">Colour of the line, or none.</param>
/// <param name="Width">Width of the line in mm.</param>
/// <param name="FillOpacity">1 covers what lies below, less lets it show.</param>
/// <param name="Cap">How lines end: round, or cut off where they end.</param>
/// <param name="StrokeOpacity">The same of the line as of the inside.</param>
internal readonly record struct SvgStyle(
    string Fill,
    string Stroke,
    double Width,
    double FillOpacity = 1,
    string Cap = "round",
    double StrokeOpacity = 1
)
{
    internal const string None = "none";

    internal static SvgStyle Line(string colour, double width) => new(None, colour, width);

    /// <summary>A line that ends where it ends, as a groove does.</summary>
    internal static SvgStyle Groove(string colour, double width) =>
        new(None, colour, width, Cap: "butt");

    internal static SvgStyle Area(string colour) => new(colour, None, 0);
}
