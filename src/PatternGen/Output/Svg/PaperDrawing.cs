using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sheet to print at true size: outlines, and below them what the piece is and a bar to measure.</summary>
internal sealed class PaperDrawing : ISvgDrawing
{
    /// <summary>Free edge in mm; printers leave about 5 mm white.</summary>
    private const double Margin = 10;

    /// <summary>
    /// An eighth of an inch: 12 of the pixels in which browsers and librsvg count, 96 to the inch. They round a sheet
    /// to whole pixels and scale the drawing with it, by up to 0.1 %, unless there is nothing to round.
    /// </summary>
    private const double WholePixels = 3.175;

    private const string Ink = "#1d1a17";
    private const string Tint = "#a98a5b";
    private const string Pencil = "#8f8a82";
    private const string GridLine = "#b9c3c9";

    private readonly PaperFoot _foot;

    internal PaperDrawing(Pattern pattern, Extents reach, Wording wording)
    {
        _foot = new(pattern.Caption(wording), reach, wording);
        Sheet = SvgSheet.Around(reach.Including(_foot.Box).Grown(Margin), WholePixels);
    }

    public SvgSheet Sheet { get; }

    public void Draw(SvgFile file, SvgLayers layers)
    {
        layers.Runs(Layer.Stock, SvgStyle.Line(Ink, 0.25));
        layers.Runs(Layer.Grid, SvgStyle.Line(GridLine, 0.06));
        layers.Runs(Layer.LayoutLines, SvgStyle.Line(Pencil, 0.1));
        layers.Runs(Layer.LineCuts, SvgStyle.Line(Ink, 0.18));
        layers.Sides(new(Tint, Ink, 0.15, FillOpacity: 0.22));
        layers.Labels(SvgStyle.Line(Ink, 0.2));
        _foot.Draw(file);
    }
}
