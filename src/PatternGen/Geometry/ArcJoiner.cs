namespace PatternGen.Geometry;

/// <summary>Joins neighbouring arcs of a run that lie on one circle, up to a half circle; straight sides stay as they are.</summary>
internal sealed class ArcJoiner
{
    /// <summary>
    /// Most arcs joined to one. All of them are measured each time, so that many small steps can't lead away, and a run of
    /// many must not take the square of their number.
    /// </summary>
    private const int Most = 16;

    private readonly Tolerance _tolerance;
    private readonly List<Segment> _joined = [];

    // The arcs that the last of the joined ones consists of, and how far it lies off them.
    private readonly List<Segment> _pieces = [];
    private double _off;
    private double _moved;

    private ArcJoiner(Tolerance tolerance) => _tolerance = tolerance;

    /// <summary>Returns the run with arcs joined, and how far they lie off those that they were joined of, in mm.</summary>
    /// <param name="run">Segments, each starting where the one before ends.</param>
    /// <param name="isClosed">Whether the first starts where the last ends.</param>
    /// <param name="tolerance">How far off is near enough.</param>
    internal static (List<Segment> Run, double Moved) Joined(
        List<Segment> run,
        bool isClosed,
        Tolerance tolerance
    )
    {
        var joiner = new ArcJoiner(tolerance);
        var first = isClosed
            ? PieceJoiner.FirstCorner(run, (arc, next) => joiner.Join(arc, next) is not null)
            : 0;
        for (var i = 0; i < run.Count; i++)
            joiner.Add(run[(first + i) % run.Count]);
        joiner.Settle();
        return (joiner._joined, joiner._moved);
    }

    private void Add(Segment next)
    {
        if (_joined.Count > 0 && Join(_joined[^1], next) is var (longer, off))
        {
            _joined[^1] = longer;
            _off = off;
        }
        else
        {
            Settle();
            _joined.Add(next);
        }
        _pieces.Add(next);
    }

    private void Settle()
    {
        _moved = Math.Max(_moved, _off);
        _off = 0;
        _pieces.Clear();
    }

    private (Segment Joined, double Off)? Join(Segment arc, Segment next)
    {
        if (arc.IsLine || next.IsLine || _pieces.Count >= Most)
            return null;
        if (PieceJoiner.Join(arc, next, _tolerance) is not { } joined)
            return null;
        var off = Math.Max(joined.DistanceTo(arc.End), joined.DistanceTo(next.Middle));
        foreach (var piece in _pieces)
            off = Math.Max(off, joined.DistanceTo(piece.Middle));
        return off <= _tolerance.Merge ? (joined, off) : null;
    }
}
