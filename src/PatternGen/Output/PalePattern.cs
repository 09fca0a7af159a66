namespace PatternGen;

/// <summary>A pattern in pale colours, for a drawing that marks something on it.</summary>
internal static class PalePattern
{
    internal static void Draw(SvgFile file, Pattern pattern, Wording words)
    {
        var layers = new SvgLayers(pattern, file, SaveOptions.Default.WithWording(words));
        layers.StockArea(new("#fbf3e2", "#c9b48d", 0.3));
        layers.Runs(Layer.LayoutLines, SvgStyle.Line("#cfc4b2", 0.15));
        layers.Runs(Layer.LineCuts, SvgStyle.Line(StepColours.Before, 0.3));
        layers.Chips(new("#f1debb", "#6b5a44", 0.2));
    }
}
