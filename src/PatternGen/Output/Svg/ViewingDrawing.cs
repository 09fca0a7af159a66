using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The picture to look at: carved wood on a quiet ground.</summary>
internal sealed class ViewingDrawing(Pattern pattern, Extents reach) : ISvgDrawing
{
    private const double Margin = 8;
    private const double EdgeWidth = 0.22;

    /// <summary>How far the edge lies over the walls: a little less than half of it, so that nothing shows between.</summary>
    private const double EdgeOverlap = 0.09;

    private const string Ground = "#f6f2ea";
    private const string Wood = "#ecd9b4";
    private const string WoodEdge = "#b08f5c";
    private const string Cut = "#4f3018";

    /// <summary>What shows between walls: a middle tone, which no one takes for a pit.</summary>
    private const string Floor = "#8c6b48";

    private const string GrooveWall = "#9a7043";
    private const string Ridge = "#f8edd3";
    private const string Ink = "#6b5a44";
    private const string Pencil = "#9b8c76";
    private const string GridLine = "#c4b394";

    public SvgSheet Sheet { get; } = SvgSheet.Around(reach.Grown(Margin), step: 0.1);

    public void Draw(SvgFile file, SvgLayers layers)
    {
        // Without an outline all that is seen is wood.
        var hasStock = pattern.Root.Layers.HasFlag(LayerSet.Stock);
        file.Background(hasStock ? Ground : Wood);
        layers.StockArea(new(Wood, WoodEdge, 0.35));
        layers.Runs(Layer.Grid, SvgStyle.Line(GridLine, 0.06));
        layers.Runs(Layer.LayoutLines, SvgStyle.Line(Pencil, 0.12));
        layers.Grooves(SvgStyle.Groove(GrooveWall, 0.5));
        layers.Valleys(SvgStyle.Groove(Cut, 0.2));
        // The light edge is what makes ridges read: two of them side by side are the wood left standing.
        layers.Chips(new(Floor, Ridge, EdgeWidth));
        layers.Walls(EdgeOverlap);
        layers.Labels(SvgStyle.Line(Ink, 0.25));
    }
}
