using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A part of the pattern that is a piece of wood for itself, with a length and a grain.</summary>
internal sealed class MemberNode(PatternNode child, MemberGrain grain) : PatternNode
{
    internal override IReadOnlyList<int> RowSizes => child.RowSizes;

    internal override long PieceCount => child.PieceCount;

    internal override long HoleCount => child.HoleCount;

    internal override LayerSet Layers => child.Layers;

    internal override Action Bind(IPatternSink sink, LayerSet layers) =>
        child.Bind(new Sink(sink, grain), layers);

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink) =>
        child.Leaves(new Sink(sink, grain));

    internal override Extents? Bounds(Transform outer, LayerSet layers) =>
        child.Bounds(outer, layers);

    internal override PatternNode Changed(LeafChange change) =>
        new MemberNode(change.Of(child), grain);

    private sealed class Sink(IPatternSink target, MemberGrain grain) : ForwardingSink(target)
    {
        public override void Chip(in PlacedChip chip) => Target.Chip(chip.InMember(grain));
    }
}
