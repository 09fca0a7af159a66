using System.Text;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes every line and outline of the wood as an element of its own.</summary>
internal sealed class SvgRunSink(SvgPathWriter paths) : SelectiveSink
{
    public override void Stock(ReadOnlySpan<Vertex> outline) => paths.Closed(outline);

    public override void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile) =>
        paths.Open(path);

    public override void LayoutLine(ReadOnlySpan<Vertex> path) => paths.Open(path);

    public override void GridLine(ReadOnlySpan<Vertex> path) => paths.Open(path);
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
internal sealed class SvgGrooveSink(SvgPathWriter paths, string colour) : SelectiveSink
{
    /// <summary>How far the edge of a tapering groove may be off in mm: a tenth of what is seen on a screen.</summary>
    private const double EdgeAccuracy = 0.01;

    private readonly byte[] _area = Encoding.ASCII.GetBytes($" fill=\"{colour}\" stroke=\"none\"");

    public override void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile)
    {
        if (!profile.IsTapering)
        {
            paths.Open(path, width);
            return;
        }
        // A line has one width, so what tapers is an area.
        var chain = new Chain(VertexRun.Trusted(path.ToArray()));
        paths.TryClosed(GrooveEdge.Of(chain, width, profile, EdgeAccuracy), _area);
    }
}

/// <summary>Writes every label as strokes.</summary>
internal sealed class SvgLabelSink(SvgFile file) : SelectiveSink
{
    public override void Label(Label label) => file.Text(label);
}
