using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes every line and outline of the wood as an element of its own.</summary>
internal sealed class SvgRunSink(SvgPathWriter paths) : SelectiveSink
{
    public override void Stock(ReadOnlySpan<Vertex> outline) => paths.Closed(outline);

    public override void LineCut(ReadOnlySpan<Vertex> path, double width) => paths.Open(path);

    public override void LayoutLine(ReadOnlySpan<Vertex> path) => paths.Open(path);
}

/// <summary>Writes every chip, those that are repeated as copies of their shapes.</summary>
internal sealed class SvgChipSink(SvgFile file, RepeatedShapes repeated) : SelectiveSink
{
    public override void Chip(in PlacedChip chip)
    {
        if (repeated.CopyOf(chip) is { } copy)
            file.Copies.Use(copy);
        else
            file.Paths.Chip(chip);
    }
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
