using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A motif moved, turned, mirrored or scaled.</summary>
internal sealed class PlacedNode(PatternNode child, Transform transform) : PatternNode
{
    internal override IReadOnlyList<int> RowSizes => child.RowSizes;

    internal override long PieceCount => child.PieceCount;

    internal override long HoleCount => child.HoleCount;

    internal override LayerSet Layers => child.Layers;

    internal override Action Bind(IPatternSink sink, LayerSet layers) =>
        child.Bind(new Sink(sink, transform), layers);

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink) =>
        child.Leaves(new Sink(sink, transform));

    internal override Extents? Bounds(Transform outer, LayerSet layers) =>
        child.Bounds(transform.Then(outer), layers);

    internal override PatternNode Changed(LeafChange change) =>
        new PlacedNode(change.Of(child), transform);

    private sealed class Sink(IPatternSink target, Transform transform) : MappingSink(target)
    {
        protected override Transform Placement => transform;

        protected override void Map(ReadOnlySpan<Vertex> from, Span<Vertex> to)
        {
            for (var i = 0; i < from.Length; i++)
                to[i] = new(transform.Apply(from[i].Point), transform.ApplyBulge(from[i].Bulge));
        }
    }
}
