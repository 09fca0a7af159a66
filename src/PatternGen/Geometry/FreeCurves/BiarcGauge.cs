namespace PatternGen.Geometry;

/// <summary>Measures how far a curve runs beside a biarc.</summary>
internal readonly struct BiarcGauge
{
    /// <summary>The cosine under which the curve runs too much across the biarc for its feet to go forward surely.</summary>
    private const double LeastForward = 0.1;

    private readonly ArcFrame _first;
    private readonly ArcFrame _second;
    private readonly Point _joint;
    private readonly Vector _onward;

    internal BiarcGauge(Biarc biarc)
    {
        _first = new(biarc.First);
        _second = biarc.Second is { } second ? new(second) : _first;
        (_joint, _onward) = (biarc.First.End, biarc.First.TangentAt(biarc.First.Length));
    }

    /// <summary>Measures at one place of the curve.</summary>
    /// <returns>
    /// How far it lies to the left of the biarc in mm, and how fast that grows along the curve: the sine of the angle between
    /// the two. Infinite where it runs across or back, where feet would jump and parts of the biarc have no curve near.
    /// </returns>
    internal (double Off, double Slope) At(Point point, Vector direction)
    {
        var frame = (point - _joint).Dot(_onward) < 0 ? _first : _second;
        var side = frame.Side(point);
        var square = 1 - 2 * frame.Curvature * side;
        // At the centre of the circle there is no foot.
        if (!(square > 0))
            return (double.PositiveInfinity, 0);
        var root = Math.Sqrt(square);
        // |p - centre| = R root, so that the distance is R (1 - root), without the difference.
        var off = 2 * side / (1 + root);
        var normal = (frame.Normal - frame.Curvature * (point - frame.Middle)) / root;
        // direction · tangent, where the tangent's left is the normal.
        if (normal.Cross(direction) > -LeastForward)
            return (double.PositiveInfinity, 0);
        var foot = frame.Foot(point);
        if (Math.Abs(foot) > frame.Half)
            off = Math.CopySign(point.DistanceTo(frame.At(Math.CopySign(frame.Half, foot))), off);
        return (off, normal.Dot(direction));
    }

    /// <summary>The largest size of the cubic with the given values and slopes at two places a length apart.</summary>
    internal static double Largest(
        (double Off, double Slope) a,
        (double Off, double Slope) b,
        double length
    )
    {
        var ends = Math.Max(Math.Abs(a.Off), Math.Abs(b.Off));
        if (!double.IsFinite(ends))
            return double.PositiveInfinity;
        // off + p u + q u² + r u³ for u from 0 to 1; its slope has roots where it may be larger than at the ends.
        var p = a.Slope * length;
        var last = b.Slope * length;
        var rise = b.Off - a.Off;
        var q = 3 * rise - 2 * p - last;
        var r = p + last - 2 * rise;
        var root = q * q - 3 * r * p;
        if (!(root >= 0))
            return ends;
        // Both roots without a difference of like numbers.
        var sum = -(q + Math.CopySign(Math.Sqrt(root), q));
        return Math.Max(ends, Math.Max(At(sum / (3 * r)), At(p / sum)));

        double At(double u) => u > 0 && u < 1 ? Math.Abs(a.Off + u * (p + u * (q + u * r))) : 0;
    }
}
