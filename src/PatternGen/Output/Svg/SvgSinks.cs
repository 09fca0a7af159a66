using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes every run as an element of its own.</summary>
internal sealed class SvgRunSink(SvgPathWriter paths) : SelectiveSink
{
    public override void Chip(in PlacedChip chip) => paths.Closed(chip.Outline);

    public override void Stock(ReadOnlySpan<Vertex> outline) => paths.Closed(outline);

    public override void LineCut(ReadOnlySpan<Vertex> path, double width) => paths.Open(path);

    public override void LayoutLine(ReadOnlySpan<Vertex> path) => paths.Open(path);
}

/// <summary>Adds the outlines of the wood to one path, so that holes in it show as holes.</summary>
internal sealed class SvgAreaSink(SvgPathWriter paths) : SelectiveSink
{
    public override void Stock(ReadOnlySpan<Vertex> outline) => paths.AddClosed(outline);
}

/// <summary>Writes every groove as wide as it is cut.</summary>
internal sealed class SvgGrooveSink(SvgPathWriter paths) : SelectiveSink
{
    public override void LineCut(ReadOnlySpan<Vertex> path, double width) =>
        paths.Open(path, width);
}

/// <summary>Writes every label as strokes.</summary>
internal sealed class SvgLabelSink(SvgFile file) : SelectiveSink
{
    public override void Label(Label label) => file.Text(label);
}
