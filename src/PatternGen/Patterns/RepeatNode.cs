using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A motif repeated to the right, once every whole pitch of the stations.</summary>
internal sealed class RepeatNode : PatternNode
{
    private readonly PatternNode _child;
    private readonly Stations _stations;
    private readonly int _firstHalf;
    private readonly int _count;
    private readonly int[] _rowSizes;

    /// <param name="child">The motif; its x = 0 comes to lie on a station.</param>
    /// <param name="stations">The places along the band.</param>
    /// <param name="firstHalf">Index of the station where the first repeat begins.</param>
    /// <param name="count">Number of repeats.</param>
    internal RepeatNode(PatternNode child, Stations stations, int firstHalf, int count)
    {
        _child = child;
        _stations = stations;
        _firstHalf = firstHalf;
        _count = count;
        RefuseTooMany(child.PieceCount * (decimal)count);
        _rowSizes = new int[child.RowSizes.Count];
        for (var row = 0; row < _rowSizes.Length; row++)
            _rowSizes[row] = child.RowSizes[row] * count;
    }

    internal override IReadOnlyList<int> RowSizes => _rowSizes;

    internal override long PieceCount => _child.PieceCount * _count;

    internal override long HoleCount => _child.HoleCount * _count;

    internal override LayerSet Layers => _child.Layers;

    internal override Action Bind(IPatternSink sink, LayerSet layers)
    {
        var repeat = new Sink(sink, _stations, _child.RowSizes);
        var draw = _child.Bind(repeat, layers);
        return () =>
        {
            for (var i = 0; i < _count; i++)
            {
                repeat.MoveTo(i, _firstHalf + 2 * i);
                draw();
            }
        };
    }

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink)
    {
        if (_child.PieceCount == 0)
            yield break;
        var repeat = new Sink(sink, _stations, _child.RowSizes);
        for (var i = 0; i < _count; i++)
        {
            repeat.MoveTo(i, _firstHalf + 2 * i);
            foreach (var leaf in _child.Leaves(repeat))
                yield return leaf;
        }
    }

    internal override Extents? Bounds(Transform outer, LayerSet layers)
    {
        if (_count == 0)
            return null;
        // Repeats lie along a line, so the first and the last reach as far as all of them.
        return Union(BoundsAt(0, outer, layers), BoundsAt(_count - 1, outer, layers));
    }

    internal override PatternNode Changed(LeafChange change) =>
        new RepeatNode(change.Of(_child), _stations, _firstHalf, _count);

    private Extents? BoundsAt(int index, Transform outer, LayerSet layers) =>
        _child.Bounds(Transform.Move(_stations.At(_firstHalf + 2 * index), 0).Then(outer), layers);

    private sealed class Sink(IPatternSink target, Stations stations, IReadOnlyList<int> rowSizes)
        : MappingSink(target)
    {
        private int _index;
        private int _half;
        private Transform _placement;

        protected override Transform Placement => _placement;

        internal void MoveTo(int index, int half)
        {
            _index = index;
            _half = half;
            _placement = Transform.Move(stations.At(half), 0);
        }

        protected override ChipId MapId(ChipId id) =>
            new(id.Row, id.Index + _index * rowSizes[id.Row]);

        protected override void Map(ReadOnlySpan<Vertex> from, Span<Vertex> to)
        {
            for (var i = 0; i < from.Length; i++)
                to[i] = new(stations.Map(_half, from[i].Point.X), from[i].Point.Y, from[i].Bulge);
        }
    }
}
