namespace PatternGen;

/// <summary>How the lines and areas of a group look.</summary>
/// <param name="Fill">Colour inside, or none.</param>
/// <param name="Stroke">Colour of the line, or none.</param>
/// <param name="Width">Width of the line in mm.</param>
/// <param name="FillOpacity">1 covers what lies below, less lets it show.</param>
internal readonly record struct SvgStyle(
    string Fill,
    string Stroke,
    double Width,
    double FillOpacity = 1
)
{
    internal const string None = "none";

    internal static SvgStyle Line(string colour, double width) => new(None, colour, width);

    internal static SvgStyle Area(string colour) => new(colour, None, 0);
}
