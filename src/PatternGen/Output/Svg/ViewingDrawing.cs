using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The picture to look at: carved wood on a quiet ground.</summary>
internal sealed class ViewingDrawing(Pattern pattern, Extents reach) : ISvgDrawing
{
    private const double Margin = 8;

    private const string Ground = "#f6f2ea";
    private const string Wood = "#ecd9b4";
    private const string WoodEdge = "#b08f5c";
    private const string Cut = "#5f3d22";
    private const string Ridge = "#f8edd3";
    private const string Pencil = "#9b8c76";

    public SvgSheet Sheet { get; } = SvgSheet.Around(reach.Grown(Margin), step: 0.1);

    public void Draw(SvgFile file, SvgLayers layers)
    {
        // Without an outline all that is seen is wood.
        var hasStock = pattern.Root.Layers.HasFlag(LayerSet.Stock);
        file.Background(hasStock ? Ground : Wood);
        layers.StockArea(new(Wood, WoodEdge, 0.35));
        layers.Runs(Layer.LayoutLines, SvgStyle.Line(Pencil, 0.12));
        layers.Grooves(SvgStyle.Line(Cut, 0.5));
        // The light edge is what makes ridges read: two of them side by side are the wood left standing.
        layers.Runs(Layer.Chips, new(Cut, Ridge, 0.22));
        layers.Labels(SvgStyle.Line(Pencil, 0.25));
    }
}
