using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A bent chip repeated along a line, once every whole pitch of the stations, on stretches that look alike.</summary>
internal sealed class BentRepeatNode : PatternNode
{
    private readonly PatternNode _leaf;
    private readonly BentChip _chip;
    private readonly BendLine _line;
    private readonly Stations _stations;
    private readonly int _firstHalf;
    private readonly int _count;

    /// <param name="chip">The chip.</param>
    /// <param name="line">The line.</param>
    /// <param name="stations">The places along it.</param>
    /// <param name="firstHalf">Index of the station where the first repeat begins.</param>
    /// <param name="count">Number of repeats.</param>
    internal BentRepeatNode(
        BentChip chip,
        BendLine line,
        Stations stations,
        int firstHalf,
        int count
    )
        : this(MotifNode.Of(chip.Shape), chip, line, stations, firstHalf, count) { }

    private BentRepeatNode(
        PatternNode leaf,
        BentChip chip,
        BendLine line,
        Stations stations,
        int firstHalf,
        int count
    )
    {
        (_leaf, _chip, _line, _stations) = (leaf, chip, line, stations);
        (_firstHalf, _count) = (firstHalf, count);
        RefuseTooMany(count);
    }

    internal override IReadOnlyList<int> RowSizes => [_count];

    internal override long PieceCount => _leaf.PieceCount * _count;

    internal override long HoleCount => _leaf.HoleCount * _count;

    internal override LayerSet Layers => _leaf.Layers;

    internal override Action Bind(IPatternSink sink, LayerSet layers)
    {
        var repeat = new Sink(sink, this);
        var draw = _leaf.Bind(repeat, layers);
        return () =>
        {
            for (var i = 0; i < _count; i++)
            {
                repeat.MoveTo(i);
                draw();
            }
        };
    }

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink)
    {
        var repeat = new Sink(sink, this);
        for (var i = 0; i < _count; i++)
        {
            repeat.MoveTo(i);
            foreach (var leaf in _leaf.Leaves(repeat))
                yield return leaf;
        }
    }

    internal override Extents? Bounds(Transform outer, LayerSet layers)
    {
        Extents? bounds = null;
        for (var i = 0; i < _count; i++)
            bounds = Union(bounds, _leaf.Bounds(Placement(i).Then(outer), layers));
        return bounds;
    }

    /// <remarks>A change of chips keeps their corners, so that their places still hold.</remarks>
    internal override PatternNode Changed(LeafChange change) =>
        new BentRepeatNode(change.Of(_leaf), _chip, _line, _stations, _firstHalf, _count);

    private BendStation Station(int index) => new(_line, _stations, _firstHalf + 2 * index);

    private Transform Placement(int index) => Station(index).Frame(_chip.Middle);

    private sealed class Sink(IPatternSink target, BentRepeatNode node) : MappingSink(target)
    {
        private int _index;
        private Transform _placement;

        protected override Transform Placement => _placement;

        internal void MoveTo(int index)
        {
            _index = index;
            _placement = node.Placement(index);
        }

        protected override ChipId MapId(ChipId id) => new(id.Row, id.Index + _index);

        /// <summary>Corners come from the line, not from the placement, so that they agree with those of the neighbours.</summary>
        protected override void Map(ReadOnlySpan<Vertex> from, Span<Vertex> to)
        {
            var places = node._chip.Places;
            var station = node.Station(_index);
            for (var i = 0; i < from.Length; i++)
                to[i] = new(station.PointOf(places[i]), from[i].Bulge);
        }
    }
}
