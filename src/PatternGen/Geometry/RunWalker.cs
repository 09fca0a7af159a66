namespace PatternGen.Geometry;

/// <summary>
/// Walks along a run from place to place. As long as it goes forward, n segments and m places take n + m steps; what a
/// segment asks for is worked out once.
/// </summary>
internal sealed class RunWalker
{
    private readonly SegmentRun _run;
    private readonly int _last;
    private int _index;
    private double _start;
    private double _end;
    private Segment _segment;
    private Vector _along;
    private double _halfSweep;
    private double _sinHalf;
    private double _cosHalf;

    internal RunWalker(SegmentRun run)
    {
        _run = run;
        _last = run.Count - 1;
        while (_last > 0 && run.StartOf(_last + 1) == run.StartOf(_last))
            _last--;
        Enter(0);
    }

    /// <summary>Where it stands.</summary>
    internal Point Point { get; private set; }

    /// <summary>The direction of travel there, of length 1; at a corner that of the segment that starts there.</summary>
    internal Vector Tangent { get; private set; }

    /// <summary>Signed curvature there, in 1/mm, positive where the run turns left.</summary>
    internal double Curvature { get; private set; }

    /// <summary>Goes to a distance along the run in mm, from 0 to its length.</summary>
    internal void MoveTo(double length)
    {
        if (length < _start)
            Enter(0);
        var index = _index;
        // A doubled corner is passed over: only a segment with a length has a direction.
        while (index < _last && length >= _run.StartOf(index + 1))
            index++;
        if (index != _index)
            Enter(index);
        var share = Math.Clamp((length - _start) / (_end - _start), 0, 1);
        if (_segment.IsLine)
            Point = _segment.Start.Towards(_segment.End, share);
        else
            Turn(_halfSweep * share);
    }

    private void Enter(int index)
    {
        _index = index;
        _segment = _run.At(index);
        (_start, _end) = (_run.StartOf(index), _run.StartOf(index + 1));
        _along = _end > _start ? _segment.Chord.Unit() : default;
        Curvature = _segment.Curvature;
        _halfSweep = 2 * Math.Atan(_segment.Bulge);
        (_sinHalf, _cosHalf) = Math.SinCos(_halfSweep);
        Tangent = _along;
    }

    /// <summary>
    /// Place and direction after half a turn of φ/2 out of the half sweep θ/2: the chord walked so far is c·sin(φ/2)/sin(θ/2)
    /// in the direction of the whole chord turned by (φ - θ)/2, and the direction is that chord's turned by φ - θ/2. One
    /// sine and cosine give both.
    /// </summary>
    private void Turn(double halfTurn)
    {
        var (sin, cos) = Math.SinCos(halfTurn);
        var chordSin = sin * _cosHalf - cos * _sinHalf;
        var chordCos = cos * _cosHalf + sin * _sinHalf;
        var chord = _segment.Chord;
        Point = _segment.Start + (chord * chordCos + chord.Left * chordSin) * (sin / _sinHalf);
        Tangent =
            _along * (cos * chordCos - sin * chordSin)
            + _along.Left * (sin * chordCos + cos * chordSin);
    }
}
