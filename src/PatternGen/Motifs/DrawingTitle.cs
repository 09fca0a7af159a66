namespace PatternGen;

/// <summary>What a compass drawing is called.</summary>
internal static class DrawingTitle
{
    internal static string Of(CompassDrawing drawing, Wording words) =>
        drawing is Rosette rosette
            ? rosette.Title(words)
            : words.CompassDrawing(drawing.Extents.Width, drawing.Extents.Height);
}
