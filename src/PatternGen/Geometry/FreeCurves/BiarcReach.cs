namespace PatternGen.Geometry;

/// <summary>Finds how far along a smooth run one biarc can follow it.</summary>
internal sealed class BiarcReach
{
    /// <summary>Fewest gaps between the places where a biarc is measured; between them the slopes tell what happens.</summary>
    private const int LeastGaps = 16;

    /// <summary>Fewest gaps between two stations, where a curve that turns more tightly than the accuracy is no cubic beside an arc.</summary>
    private const int LeastParts = 4;

    /// <summary>Most a biarc turns in radians: a half circle, and a little for rounding.</summary>
    private const double MostTurn = Math.PI + 1e-9;

    /// <summary>Cosine of the largest angle between chord and direction at either end: beyond it, arcs run round the back.</summary>
    private const double LeastAhead = -0.5;

    /// <summary>An error of at least this share of what is allowed is near enough to stop at.</summary>
    private const double NearEnough = 0.95;

    /// <summary>Steps shorter than this share of the length are not worth a further try.</summary>
    private const double Finest = 5e-3;

    private const int MostTries = 60;

    private readonly SmoothRun _run;
    private readonly double _allowed;
    private double _lastStep;

    internal BiarcReach(SmoothRun run, double allowed)
    {
        (_run, _allowed) = (run, allowed);
        _lastStep = run.End.T - run.Start.T;
    }

    /// <summary>Returns the biarc from a place on the run that goes about as far as is allowed, and where it ends; null if none does.</summary>
    internal (Biarc Biarc, CurveStation End)? From(CurveStation start)
    {
        var rest = _run.End.T - start.T;
        (Biarc Biarc, CurveStation End)? best = null;
        var (good, bad) = (0.0, double.PositiveInfinity);
        var step = Math.Min(_lastStep, rest);
        for (var tries = 0; tries < MostTries; tries++)
        {
            var end = _run.At(start.T + step);
            if (end.T <= start.T)
                break;
            var (biarc, error) = Try(start, end);
            if (biarc is { } found && error <= _allowed)
            {
                (best, good) = ((found, end), step);
                if (step >= rest || error >= NearEnough * _allowed)
                    break;
            }
            else
                bad = step;
            if (best is not null && double.IsFinite(bad) && bad - good <= Finest * bad)
                break;
            step = Next(step, error, good, bad, rest);
        }
        _lastStep = Math.Max(good, 0);
        return best;
    }

    /// <summary>The step that the cube law of the error promises, kept well inside what is known.</summary>
    private double Next(double step, double error, double good, double bad, double rest)
    {
        var promised = error > 0 ? step * Math.Cbrt((1 + NearEnough) / 2 * _allowed / error) : rest;
        if (double.IsInfinity(bad))
            return Math.Min(rest, Math.Clamp(promised, 1.1 * step, 4 * step));
        if (!double.IsFinite(error))
            return (good + bad) / 2;
        var margin = (bad - good) / 16;
        return Math.Clamp(promised, good + margin, bad - margin);
    }

    /// <summary>The biarc between two places and the largest distance in mm between it and the run; infinite where it does not follow at all.</summary>
    internal (Biarc? Biarc, double Error) Try(CurveStation start, CurveStation end)
    {
        var chord = end.Point - start.Point;
        var length = chord.Length;
        if (
            Math.Abs(end.Turn - start.Turn) > MostTurn
            || !(length > 0)
            || chord.Dot(start.Direction) < LeastAhead * length
            || chord.Dot(end.Direction) < LeastAhead * length
        )
            return (null, double.PositiveInfinity);
        var biarc = Biarc.Between(start.Point, start.Direction, end.Point, end.Direction);
        return (biarc, Error(biarc, start, end));
    }

    private double Error(Biarc biarc, CurveStation start, CurveStation end)
    {
        var gauge = new BiarcGauge(biarc);
        var (first, last) = (_run.IndexBefore(start.T) + 1, _run.IndexBefore(end.T));
        var stations = _run.Stations;
        while (last > first && stations[last].T >= end.T)
            last--;
        var between = last - first + 1;
        // Each gap between stations is measured in as many parts as make up the least number.
        var parts = Math.Max(LeastParts, (LeastGaps + between) / (between + 1));
        var (before, measured, largest) = (start, gauge.At(start.Point, start.Direction), 0.0);
        for (var i = first; i <= last + 1; i++)
        {
            var next = i <= last ? stations[i] : end;
            var from = before.T;
            for (var part = 1; part <= parts; part++)
            {
                var at = part == parts ? next : _run.At(from + (next.T - from) * part / parts);
                var now = gauge.At(at.Point, at.Direction);
                largest = Math.Max(
                    largest,
                    BiarcGauge.Largest(measured, now, at.Point.DistanceTo(before.Point))
                );
                // No need to know how much too far it is.
                if (largest > 64 * _allowed)
                    return largest;
                (before, measured) = (at, now);
            }
        }
        return largest;
    }
}
