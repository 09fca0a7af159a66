using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Motifs at points of a lattice; corners that lie at points come from these to the last digit.</summary>
internal sealed class LatticeNode : PlacesNode<LatticePlace>
{
    private readonly Lattice _lattice;

    /// <param name="children">The motifs, in the frame of the lattice.</param>
    /// <param name="lattice">The lattice.</param>
    /// <param name="places">Where they lie, in the order that chips are counted. Not copied.</param>
    internal LatticeNode(PatternNode[] children, Lattice lattice, LatticePlace[] places)
        : base(children, places) => _lattice = lattice;

    /// <summary>A motif turned alike has the same extents everywhere, so each is measured once for each of its turns.</summary>
    internal override Extents? Bounds(Transform outer, LayerSet layers)
    {
        var measured = new Dictionary<(int, LatticeTurn), Extents?>();
        var origin = _lattice.At(0, 0);
        Extents? bounds = null;
        foreach (var place in Places)
        {
            if (!measured.TryGetValue((place.Child, place.Turn), out var own))
                measured[(place.Child, place.Turn)] = own = Children[place.Child]
                    .Bounds(_lattice.Placement(place.Turn, 0, 0).Then(outer), layers);
            if (own is not { } box)
                continue;
            var move = outer.Apply(_lattice.At(place.I, place.J) - origin);
            bounds = Union(bounds, new Extents(box.Min + move, box.Max + move));
        }
        return bounds;
    }

    internal override PatternNode Changed(LeafChange change) =>
        new LatticeNode(Array.ConvertAll(Children, change.Of), _lattice, Places);

    private protected override CountingSink SinkTo(IPatternSink target) => new Sink(target, this);

    private sealed class Sink(IPatternSink target, LatticeNode node) : CountingSink(target, node)
    {
        private readonly Dictionary<LatticeTurn, Transform> _turned = node
            .Places.Select(place => place.Turn)
            .Distinct()
            .ToDictionary(turn => turn, turn => node._lattice.Placement(turn, 0, 0));

        private LatticePlace _place;
        private Transform _placement;

        protected override Transform Placement => _placement;

        protected override void StandAt(in LatticePlace place)
        {
            _place = place;
            var lattice = node._lattice;
            _placement = _turned[place.Turn]
                .Then(Transform.Move(lattice.At(place.I, place.J) - lattice.At(0, 0)));
        }

        protected override void Map(ReadOnlySpan<Vertex> from, Span<Vertex> to)
        {
            for (var i = 0; i < from.Length; i++)
                to[i] = new(
                    node._lattice.Map(from[i].Point, _place.Turn, _placement, _place.I, _place.J),
                    _placement.ApplyBulge(from[i].Bulge)
                );
        }
    }
}
