using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Centre lines for a machine, a group for each purpose: what lies inside first, the outline of the wood last.</summary>
internal sealed class MachineDrawing(Pattern pattern, Extents reach, Wording wording) : ISvgDrawing
{
    private const double Margin = 1;
    private const double LineWidth = 0.1;

    public SvgSheet Sheet { get; } = SvgSheet.Around(reach.Grown(Margin), step: 0.1);

    public void Draw(SvgFile file, SvgLayers layers)
    {
        if (MachineNote.Place(pattern, wording) is { } note)
        {
            file.StartGroup(
                SvgNames.Of(Layer.Note),
                wording.LayerTitle(Layer.Note),
                Line("#8a5fa8")
            );
            file.Text(note);
            file.EndGroup();
        }
        layers.Labels(Line("#4f7cac"));
        var read = PatternReader.Read(pattern.Root);
        layers.Once(Layer.Grid, read.GridLines, Line("#c3cbd0"));
        layers.Once(Layer.LayoutLines, read.LayoutLines, Line("#8c8c84"));
        layers.Once(Layer.LineCuts, [.. read.LineCuts.Select(cut => cut.Path)], Line("#c2702e"));
        layers.Sides(Line("#26221e"));
        layers.Once(Layer.Stock, read.Stock, Line("#2f7d57"));
    }

    private static SvgStyle Line(string colour) => SvgStyle.Line(colour, LineWidth);
}
