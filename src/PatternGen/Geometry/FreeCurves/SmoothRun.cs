namespace PatternGen.Geometry;

/// <summary>A piece of a curve without corners, with stations so near that between two of them it only bends a little.</summary>
internal sealed class SmoothRun
{
    private readonly Func<double, CurvePlace> _curve;
    private readonly CurveStation[] _stations;

    internal SmoothRun(Func<double, CurvePlace> curve, CurveStation[] stations) =>
        (_curve, _stations) = (curve, stations);

    internal CurveStation Start => _stations[0];

    internal CurveStation End => _stations[^1];

    internal ReadOnlySpan<CurveStation> Stations => _stations;

    /// <summary>Index of the last station at or before a parameter.</summary>
    internal int IndexBefore(double t)
    {
        var (low, high) = (0, _stations.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (_stations[middle].T <= t)
                low = middle;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>The curve at a parameter between the ends.</summary>
    internal CurveStation At(double t)
    {
        if (t <= Start.T)
            return Start;
        if (t >= End.T)
            return End;
        var before = _stations[IndexBefore(t)];
        if (before.T == t)
            return before;
        var place = _curve(t);
        var length = place.Along.Length;
        // Where the curve stands still it has the direction of the station that is nearest by.
        var direction = length > 0 ? place.Along / length : before.Direction;
        return new(t, place.Point, direction, before.Turn + Angle(before.Direction, direction));
    }

    /// <summary>The angle from one direction to another in radians, positive to the left.</summary>
    internal static double Angle(Vector from, Vector to) =>
        Math.Atan2(from.Cross(to), from.Dot(to));
}
