using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A walk round a circle with one setting: where each step ends, and whether the last comes back.</summary>
internal sealed class RoundWalk
{
    private readonly Point _centre;
    private readonly Vector _toStart;
    private readonly double _sharePerStep;

    internal RoundWalk(
        DrawnCurve circle,
        MarkedPoint start,
        double setting,
        int steps,
        int every,
        Tolerance tolerance
    )
    {
        (Circle, Start, Setting, Steps, Every) = (circle, start, setting, steps, every);
        var round = circle.Curve.Circle;
        _centre = round.Centre;
        _toStart = start.Point - _centre;
        var share = 2 * Math.Asin(Math.Min(1, setting / (2 * round.Radius))) / Math.Tau;
        var turns = Math.Round(share * steps);
        // A setting of the whole diameter says nothing finer about the angle than the root of its own rounding.
        var isHalf = setting >= 2 * round.Radius - tolerance.Merge;
        var misses = Math.Abs(share * steps - turns) * Math.Tau * round.Radius;
        var comesBack =
            turns > 0 && misses <= (isHalf ? tolerance.AtTangency : steps * tolerance.Merge);
        // From the index, not by adding up, and free of what rounding left of the setting.
        _sharePerStep = comesBack ? turns / steps : share;
        Closes = comesBack && steps % every == 0;
    }

    internal DrawnCurve Circle { get; }

    internal MarkedPoint Start { get; }

    internal double Setting { get; }

    internal int Steps { get; }

    internal int Every { get; }

    /// <summary>Whether the last step, which would be marked, comes back to the start.</summary>
    internal bool Closes { get; }

    /// <summary>How many places are marked.</summary>
    internal int Marks => Steps / Every - (Closes ? 1 : 0);

    internal Point PlaceOf(int step)
    {
        var turn = Angle.OfTurn(_sharePerStep * step);
        return _centre + _toStart * turn.Cos() + _toStart.Left * turn.Sin();
    }
}
