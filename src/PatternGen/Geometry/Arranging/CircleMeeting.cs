namespace PatternGen.Geometry;

/// <summary>What two circles have in common: nothing, one point, two, or all of it.</summary>
internal readonly struct CircleMeeting
{
    /// <summary>How many merge distances apart curves on one circle lie at most; as far apart, pieces of curves are one.</summary>
    internal const double SameWithin = 4;

    private CircleMeeting(int count, Point first, Point second)
    {
        Count = count;
        First = first;
        Second = second;
    }

    /// <summary>Whether they are one circle.</summary>
    internal bool IsSameCircle { get; private init; }

    /// <summary>How many points they share, if they are not one circle.</summary>
    internal int Count { get; }

    internal Point First { get; }

    internal Point Second { get; }

    /// <remarks>
    /// The line through both points stands x = (d² + r₁² − r₂²) / 2d from the first centre, and the points h = √(r₁² − x²)
    /// to either side; differences of squares are written as products, which do not cancel.
    /// </remarks>
    internal static CircleMeeting Of(Circle one, Circle other, Tolerance tolerance)
    {
        var between = other.Centre - one.Centre;
        var (r1, r2, merge) = (one.Radius, other.Radius, tolerance.Merge);
        var d = between.Length;
        var difference = r1 - r2;
        if (d + Math.Abs(difference) <= SameWithin * merge)
            return new() { IsSameCircle = true };
        if (d > r1 + r2 + merge || d < Math.Abs(difference) - merge)
            return default;
        var along = between / d;
        // Where they touch, the middle of the gap: each of two circles by the same amount off.
        if (d >= r1 + r2 - merge)
            return Touching(r1 + (d - r1 - r2) / 2);
        if (d <= Math.Abs(difference) + merge)
            return Touching(difference > 0 ? (r1 + d + r2) / 2 : -(r1 + (r2 - d)) / 2);
        var x = (d + (r1 + r2) * (difference / d)) / 2;
        var h = Math.Sqrt(Math.Max(0, (r1 - x) * (r1 + x)));
        var foot = one.Centre + along * x;
        var aside = along.Left * h;
        return new(2, foot + aside, foot - aside);

        CircleMeeting Touching(double distance) => new(1, one.Centre + along * distance, default);
    }
}
