using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Passes pieces on to another sink, mapped. One object serves a whole node, so nothing is allocated per chip.</summary>
/// <remarks>Mirroring turns counter-clockwise into clockwise; rings are walked the other way to stay as they were.</remarks>
internal abstract class MappingSink(IPatternSink target) : IPatternSink
{
    private Vertex[] _buffer = new Vertex[16];

    /// <summary>The mapping as a similarity, for chips' placements, labels and widths.</summary>
    protected abstract Transform Placement { get; }

    public void Chip(in PlacedChip chip)
    {
        var corners = Map(chip.Corners);
        if (Placement.IsMirrored)
            for (var ring = 0; ring < chip.RingCount; ring++)
                VertexRun.ReverseRing(corners[chip.Shape.CornersOf(ring)]);
        target.Chip(chip.Mapped(MapId(chip.Id), corners, Placement));
    }

    public void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile) =>
        target.LineCut(Map(path), width * Placement.Scale, profile.Scaled(Placement.Scale));

    public void LayoutLine(ReadOnlySpan<Vertex> path) => target.LayoutLine(Map(path));

    public void Stock(ReadOnlySpan<Vertex> outline)
    {
        var ring = Map(outline);
        if (Placement.IsMirrored)
            VertexRun.ReverseRing(ring);
        target.Stock(ring);
    }

    public void Label(Label label) => target.Label(label.Transformed(Placement));

    public void GridLine(ReadOnlySpan<Vertex> path) => target.GridLine(Map(path));

    protected virtual ChipId MapId(ChipId id) => id;

    protected abstract void Map(ReadOnlySpan<Vertex> from, Span<Vertex> to);

    private Span<Vertex> Map(ReadOnlySpan<Vertex> vertices)
    {
        if (_buffer.Length < vertices.Length)
            _buffer = new Vertex[vertices.Length * 2];
        var mapped = _buffer.AsSpan(0, vertices.Length);
        Map(vertices, mapped);
        return mapped;
    }
}
