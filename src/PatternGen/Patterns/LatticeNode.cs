using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Motifs at points of a lattice, shared and never copied; corners that lie at points come from these to the last digit.</summary>
/// <remarks>All motifs draw into the same rows, and the chips of a row are counted in the order of the places, as in a <see cref="ScatterNode"/>.</remarks>
internal sealed class LatticeNode : PatternNode
{
    private readonly PatternNode[] _children;
    private readonly Lattice _lattice;
    private readonly LatticePlace[] _places;
    private readonly int[] _rowSizes;

    /// <param name="children">The motifs, in the frame of the lattice.</param>
    /// <param name="lattice">The lattice.</param>
    /// <param name="places">Where they lie, in the order that chips are counted. Not copied.</param>
    internal LatticeNode(PatternNode[] children, Lattice lattice, LatticePlace[] places)
    {
        _children = children;
        _lattice = lattice;
        _places = places;
        var times = new long[children.Length];
        foreach (ref readonly var place in places.AsSpan())
            times[place.Child]++;
        _rowSizes = new int[children.Max(child => child.RowSizes.Count)];
        var pieces = 0m;
        for (var i = 0; i < children.Length; i++)
            pieces += (decimal)children[i].PieceCount * times[i];
        RefuseTooMany(pieces);
        for (var i = 0; i < children.Length; i++)
        {
            if (times[i] == 0)
                continue;
            Layers |= children[i].Layers;
            PieceCount += children[i].PieceCount * times[i];
            HoleCount += children[i].HoleCount * times[i];
            var sizes = children[i].RowSizes;
            for (var row = 0; row < sizes.Count; row++)
                _rowSizes[row] += sizes[row] * (int)times[i];
        }
    }

    internal override IReadOnlyList<int> RowSizes => _rowSizes;

    internal override long PieceCount { get; }

    internal override long HoleCount { get; }

    internal override LayerSet Layers { get; }

    internal override Action Bind(IPatternSink sink, LayerSet layers)
    {
        var mapping = new Sink(sink, this);
        var draws = Array.ConvertAll(
            _children,
            child => (child.Layers & layers) == 0 ? null : child.Bind(mapping, layers)
        );
        return () =>
        {
            mapping.Restart();
            for (var i = 0; i < _places.Length; i++)
            {
                mapping.MoveTo(_places[i]);
                draws[_places[i].Child]?.Invoke();
            }
        };
    }

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink)
    {
        if (PieceCount == 0)
            yield break;
        var mapping = new Sink(sink, this);
        mapping.Restart();
        foreach (var place in _places)
        {
            mapping.MoveTo(place);
            foreach (var leaf in _children[place.Child].Leaves(mapping))
                yield return leaf;
        }
    }

    /// <summary>A motif turned alike has the same extents everywhere, so each is measured once for each of its turns.</summary>
    internal override Extents? Bounds(Transform outer, LayerSet layers)
    {
        var measured = new Dictionary<(int, LatticeTurn), Extents?>();
        var origin = _lattice.At(0, 0);
        Extents? bounds = null;
        foreach (var place in _places)
        {
            if (!measured.TryGetValue((place.Child, place.Turn), out var own))
                measured[(place.Child, place.Turn)] = own = _children[place.Child]
                    .Bounds(_lattice.Placement(place.Turn, 0, 0).Then(outer), layers);
            if (own is not { } box)
                continue;
            var move = outer.Apply(_lattice.At(place.I, place.J) - origin);
            bounds = Union(bounds, new Extents(box.Min + move, box.Max + move));
        }
        return bounds;
    }

    internal override PatternNode Changed(LeafChange change) =>
        new LatticeNode(Array.ConvertAll(_children, change.Of), _lattice, _places);

    private sealed class Sink(IPatternSink target, LatticeNode node) : MappingSink(target)
    {
        /// <summary>For each row the number of chips at the places before this one.</summary>
        private readonly int[] _counted = new int[node._rowSizes.Length];

        private readonly IReadOnlyList<int>[] _rowSizes = Array.ConvertAll(
            node._children,
            child => child.RowSizes
        );

        private readonly Dictionary<LatticeTurn, Transform> _turned = node
            ._places.Select(place => place.Turn)
            .Distinct()
            .ToDictionary(turn => turn, turn => node._lattice.Placement(turn, 0, 0));

        private LatticePlace _place;
        private Transform _placement;
        private int _child = -1;

        protected override Transform Placement => _placement;

        internal void Restart()
        {
            Array.Clear(_counted);
            _child = -1;
        }

        internal void MoveTo(in LatticePlace place)
        {
            if (_child >= 0)
                for (var row = 0; row < _rowSizes[_child].Count; row++)
                    _counted[row] += _rowSizes[_child][row];
            _child = place.Child;
            _place = place;
            var lattice = node._lattice;
            _placement = _turned[place.Turn]
                .Then(Transform.Move(lattice.At(place.I, place.J) - lattice.At(0, 0)));
        }

        protected override ChipId MapId(ChipId id) => new(id.Row, id.Index + _counted[id.Row]);

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
