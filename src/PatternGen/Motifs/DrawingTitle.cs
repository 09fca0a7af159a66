namespace PatternGen;

/// <summary>What a compass drawing is called.</summary>
internal static class DrawingTitle
{
    internal static string Of(CompassDrawing drawing, Wording words) => words.UntitledDrawing;
}
