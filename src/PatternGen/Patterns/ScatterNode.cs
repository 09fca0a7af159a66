using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Motifs at any number of places, each drawn by a similarity of its own; what stands at a place is shared, never copied.</summary>
/// <remarks>
/// All motifs draw into the same rows, and the chips of a row are counted in the order of the places: the first chip of
/// row 1 at the second place follows the last one of row 1 at the first, whichever motifs stand there.
/// </remarks>
internal sealed class ScatterNode : PatternNode
{
    private readonly PatternNode[] _children;
    private readonly ScatterPlace[] _places;
    private readonly int[] _rowSizes;

    /// <param name="child">The motif at every place.</param>
    /// <param name="places">Where its frame comes to lie, in the order that chips are counted.</param>
    internal ScatterNode(PatternNode child, IEnumerable<Transform> places)
        : this([child], [.. places.Select(place => new ScatterPlace(place, 0))]) { }

    /// <param name="children">The motifs.</param>
    /// <param name="places">Where they lie, in the order that chips are counted. Not copied.</param>
    internal ScatterNode(PatternNode[] children, ScatterPlace[] places)
    {
        _children = children;
        _places = places;
        var times = new int[children.Length];
        foreach (var place in places)
            times[place.Child]++;
        RefuseTooMany(Total(child => child.PieceCount));
        PieceCount = (long)Total(child => child.PieceCount);
        HoleCount = (long)Total(child => child.HoleCount);
        _rowSizes = new int[children.Max(child => child.RowSizes.Count)];
        for (var i = 0; i < children.Length; i++)
        {
            if (times[i] > 0)
                Layers |= children[i].Layers;
            for (var row = 0; row < children[i].RowSizes.Count; row++)
                _rowSizes[row] += children[i].RowSizes[row] * times[i];
        }

        decimal Total(Func<PatternNode, long> number)
        {
            var total = 0m;
            for (var i = 0; i < children.Length; i++)
                total += (decimal)number(children[i]) * times[i];
            return total;
        }
    }

    internal override IReadOnlyList<int> RowSizes => _rowSizes;

    internal override long PieceCount { get; }

    internal override long HoleCount { get; }

    internal override LayerSet Layers { get; }

    internal override Action Bind(IPatternSink sink, LayerSet layers)
    {
        var scatter = new Sink(sink, this);
        var draws = Array.ConvertAll(
            _children,
            // What holds nothing of the layers is not walked, but its chips are counted.
            child => (child.Layers & layers) == 0 ? null : child.Bind(scatter, layers)
        );
        return () =>
        {
            scatter.Restart();
            foreach (ref readonly var place in _places.AsSpan())
            {
                scatter.MoveTo(place);
                draws[place.Child]?.Invoke();
            }
        };
    }

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink)
    {
        if (PieceCount == 0)
            yield break;
        var scatter = new Sink(sink, this);
        scatter.Restart();
        foreach (var place in _places)
        {
            scatter.MoveTo(place);
            foreach (var leaf in _children[place.Child].Leaves(scatter))
                yield return leaf;
        }
    }

    internal override Extents? Bounds(Transform outer, LayerSet layers)
    {
        var own = Array.ConvertAll(_children, child => child.Bounds(Transform.Identity, layers));
        Extents? bounds = null;
        foreach (ref readonly var place in _places.AsSpan())
        {
            if (own[place.Child] is not { } box)
                continue;
            // A turned box holds the turned motif. If that is inside already, the motif needn't be measured.
            var at = place.At.Then(outer);
            if (bounds is { } all && Holds(all, box, at))
                continue;
            bounds = Union(bounds, _children[place.Child].Bounds(at, layers));
        }
        return bounds;
    }

    internal override PatternNode Changed(LeafChange change) =>
        new ScatterNode(Array.ConvertAll(_children, change.Of), _places);

    private static bool Holds(Extents all, Extents box, Transform at) =>
        all.Contains(at.Apply(box.Min))
        && all.Contains(at.Apply(box.Max))
        && all.Contains(at.Apply(new Point(box.Min.X, box.Max.Y)))
        && all.Contains(at.Apply(new Point(box.Max.X, box.Min.Y)));

    private sealed class Sink(IPatternSink target, ScatterNode node) : MappingSink(target)
    {
        /// <summary>For each row the number of chips at the places before this one.</summary>
        private readonly int[] _counted = new int[node._rowSizes.Length];

        private readonly IReadOnlyList<int>[] _rowSizes = Array.ConvertAll(
            node._children,
            child => child.RowSizes
        );

        private Transform _placement;
        private int _child = -1;

        protected override Transform Placement => _placement;

        internal void Restart()
        {
            Array.Clear(_counted);
            _child = -1;
        }

        internal void MoveTo(in ScatterPlace place)
        {
            if (_child >= 0)
                for (var row = 0; row < _rowSizes[_child].Count; row++)
                    _counted[row] += _rowSizes[_child][row];
            _child = place.Child;
            _placement = place.At;
        }

        protected override ChipId MapId(ChipId id) => new(id.Row, id.Index + _counted[id.Row]);

        protected override void Map(ReadOnlySpan<Vertex> from, Span<Vertex> to)
        {
            for (var i = 0; i < from.Length; i++)
                to[i] = new(_placement.Apply(from[i].Point), _placement.ApplyBulge(from[i].Bulge));
        }
    }
}
