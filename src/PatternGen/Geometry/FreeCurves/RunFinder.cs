namespace PatternGen.Geometry;

/// <summary>Finds the smooth runs of a curve: halves it until every part hardly bends, and parts it at corners and cusps.</summary>
internal sealed class RunFinder
{
    /// <summary>Parts in which each stretch between two breaks is looked at first, so that a loop is not taken for a straight piece.</summary>
    private const int FirstParts = 8;

    /// <summary>Bend of a part in radians at most. Larger values overlook wiggles, smaller ones only cost time.</summary>
    private const double MostBend = 0.2;

    /// <summary>How unlike in length two halves may be: a curve that starts like t⁴ from rest has 15.</summary>
    private const double MostUneven = 16;

    /// <summary>A turn of more than this in a part too short to matter, or on the spot, is a corner.</summary>
    private const double CornerTurn = 1e-6;

    /// <summary>Share of the accuracy under which a part is too short to matter.</summary>
    private const double Negligible = 1e-4;

    private const int MostHalvings = 60;

    /// <summary>Share of the curve's largest speed under which it stands still.</summary>
    private const double Still = 1e-9;

    /// <summary>Share of a first part over which a direction that the curve does not tell is worked out.</summary>
    private const double LimitStep = 1e-4;

    private readonly Func<double, CurvePlace> _whole;
    private readonly double _leastLength;
    private readonly List<SmoothRun> _runs = [];
    private readonly List<CurveStation> _open = [];
    private Func<double, CurvePlace> _curve;
    private double _from;
    private double _to;
    private double _step;
    private double _leastSpeed;

    private RunFinder(Func<double, CurvePlace> whole, double accuracy)
    {
        (_whole, _curve) = (whole, whole);
        _leastLength = Math.Max(Tolerance.ForExtent(0).Merge, Negligible * accuracy);
    }

    /// <summary>Returns the smooth runs in order; each starts where the one before ends.</summary>
    internal static IReadOnlyList<SmoothRun> Find(
        Func<double, CurvePlace> whole,
        IReadOnlyList<CurveStretch> stretches,
        double accuracy
    )
    {
        var finder = new RunFinder(whole, accuracy);
        foreach (var stretch in stretches)
            finder.Pass(stretch);
        finder.Close();
        return finder._runs;
    }

    private void Pass(CurveStretch stretch)
    {
        (_curve, var from, var to) = stretch;
        (_from, _to, _step) = (from, to, (to - from) / FirstParts);
        var (speed, bend) = FirstLook();
        // A stretch that never moves has no direction and no length.
        if (!(speed > 0))
            return;
        _leastSpeed = Still * speed;
        // What hardly bends, as between the many joints of a way of arcs, is not worth eight parts.
        var parts = Math.Clamp((int)Math.Ceiling(bend / MostBend), 1, FirstParts);
        var before = Sample(from);
        Begin(before);
        for (var part = 1; part <= parts; part++)
        {
            var next = Sample(part == parts ? to : from + (to - from) * part / parts);
            Part(before, next, 0);
            before = next;
        }
    }

    /// <summary>The largest speed at the ends of the first parts, and by how much the direction turns from each to the next, in radians.</summary>
    private (double Speed, double Bend) FirstLook()
    {
        var along = _curve(_from).Along;
        var (speed, bend) = (along.Length, 0.0);
        for (var part = 1; part <= FirstParts; part++)
        {
            var next = _curve(part == FirstParts ? _to : _from + part * _step).Along;
            speed = Math.Max(speed, next.Length);
            // The angle from or to a place where the curve stands still is 0; the halving sees to these.
            bend += Math.Abs(SmoothRun.Angle(along, next));
            along = next;
        }
        return (speed, bend);
    }

    private void Part(CurveSample a, CurveSample b, int halvings)
    {
        var at = a.T + (b.T - a.T) / 2;
        var middle = Sample(at);
        var (first, second) = (a.Point.DistanceTo(middle.Point), middle.Point.DistanceTo(b.Point));
        if (
            IsGentle(a, middle)
            && IsGentle(middle, b)
            && first <= MostUneven * second
            && second <= MostUneven * first
        )
        {
            Add(middle);
            Add(b);
        }
        else if (first + second <= _leastLength || halvings >= MostHalvings)
            Jump(a, b);
        else
        {
            Part(a, middle, halvings + 1);
            Part(middle, b, halvings + 1);
        }
    }

    private static bool IsGentle(CurveSample a, CurveSample b)
    {
        var chord = b.Point - a.Point;
        return chord.LengthSquared > 0
            && Math.Abs(SmoothRun.Angle(a.Onward, b.Arriving)) <= MostBend
            && Math.Abs(SmoothRun.Angle(a.Onward, chord)) <= MostBend
            && Math.Abs(SmoothRun.Angle(chord, b.Arriving)) <= MostBend;
    }

    /// <summary>Opens a run, or goes on with the one that is open if there is no corner.</summary>
    private void Begin(CurveSample start)
    {
        if (
            _open.Count > 0
            && Math.Abs(SmoothRun.Angle(_open[^1].Direction, start.Onward)) <= CornerTurn
        )
            return;
        Open(start);
    }

    private void Open(CurveSample start)
    {
        var place = _open.Count > 0 ? _open[^1].Point : start.Point;
        Close();
        _open.Add(new(start.T, place, start.Onward, 0));
    }

    private void Add(CurveSample next)
    {
        var last = _open[^1];
        var turn = last.Turn + SmoothRun.Angle(last.Direction, next.Arriving);
        _open.Add(new(next.T, next.Point, next.Arriving, turn));
        if (Math.Abs(SmoothRun.Angle(next.Arriving, next.Onward)) > CornerTurn)
            Open(next);
    }

    /// <summary>Passes a part too short to matter: a corner if it turns, as at a cusp.</summary>
    private void Jump(CurveSample a, CurveSample b)
    {
        if (Math.Abs(SmoothRun.Angle(a.Onward, b.Arriving)) > CornerTurn)
            Open(b);
        else if (a.Point != b.Point)
            Add(b);
    }

    private void Close()
    {
        if (_open.Count > 1)
            _runs.Add(new(_whole, [.. _open]));
        _open.Clear();
    }

    private CurveSample Sample(double t)
    {
        var place = _curve(t);
        if (place.Along.Length > _leastSpeed)
        {
            var direction = place.Along.Unit();
            return new(t, place.Point, direction, direction);
        }
        // The curve stands still: what counts is how it comes and goes.
        var arriving = t > _from ? Limit(t, -_step) : Limit(t, _step);
        return new(t, place.Point, arriving, t < _to ? Limit(t, _step) : arriving);
    }

    /// <summary>
    /// The direction that the curve's takes on as the parameter comes to t from one side, from three places near it, so that
    /// its first and second change cancel.
    /// </summary>
    private Vector Limit(double t, double side)
    {
        var near = Math.Abs(side) * LimitStep * Math.Sign(side);
        var (one, two, three) = (
            Direction(t + near),
            Direction(t + 2 * near),
            Direction(t + 3 * near)
        );
        var turn = 3 * SmoothRun.Angle(two, one) - SmoothRun.Angle(three, one);
        return one * Math.Cos(turn) + one.Left * Math.Sin(turn);
    }

    private Vector Direction(double t)
    {
        var along = _curve(t).Along;
        return along.Length > 0 ? along.Unit() : new(1, 0);
    }
}
