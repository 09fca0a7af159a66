namespace PatternGen.Geometry;

/// <summary>
/// A segment seen from its middle point: the tangent and left normal there, and the signed curvature.
/// </summary>
/// <remarks>
/// With s = (2/k) tan(ψ/2), where ψ is the angle walked from the middle, a point of the segment is
/// M + (s T + (k s²/2) N) / (1 + k² s²/4). For k = 0 this is the line M + s T, and nothing in it divides by k, so that
/// lines and arcs of any flatness share one formula. The segment is -S ≤ s ≤ S with S = c (1 + b²) / 2.
/// </remarks>
internal readonly struct ArcFrame
{
    /// <summary>
    /// Half the curvature × the distance under which two terms of a series replace atan and tan. Their error grows as its
    /// fourth power; far smaller values would divide by a curvature that has lost its digits.
    /// </summary>
    private const double Flat = 1e-4;

    internal ArcFrame(Segment segment)
    {
        var chord = segment.Chord;
        var length = chord.Length;
        Middle = segment.Middle;
        Tangent = length > 0 ? chord / length : new Vector(1, 0);
        Normal = Tangent.Left;
        Curvature = length > 0 ? segment.Curvature : 0;
        Half = length * (1 + segment.Bulge * segment.Bulge) / 2;
    }

    internal ArcFrame(Point middle, Vector tangent, double curvature, double half)
    {
        (Middle, Tangent, Normal) = (middle, tangent, tangent.Left);
        (Curvature, Half) = (curvature, half);
    }

    internal Point Middle { get; }

    internal Vector Tangent { get; }

    internal Vector Normal { get; }

    internal double Curvature { get; }

    /// <summary>The segment runs from -Half to Half.</summary>
    internal double Half { get; }

    internal Point At(double s)
    {
        var w = Weight(s);
        return Middle + Tangent * (s / w) + Normal * (Curvature * s * s / 2 / w);
    }

    /// <summary>1 + k² s²/4, the denominator of the parametrization.</summary>
    internal double Weight(double s)
    {
        var half = Curvature * s / 2;
        return 1 + half * half;
    }

    /// <summary>Parameter of the foot of the perpendicular from a point onto the whole line or circle.</summary>
    internal double Foot(Point point)
    {
        var offset = point - Middle;
        var x = Tangent.Dot(offset);
        var toCentre = 1 - Curvature * Normal.Dot(offset);
        var distance = double.Hypot(Curvature * x, toCentre);
        if (toCentre >= 0)
            return 2 * x / (toCentre + distance);
        // Past the centre the sum above cancels; times (distance - toCentre) on both sides it does not. Straight
        // opposite the middle the foot is at infinity, beyond either end.
        return 2 * (distance - toCentre) / (Curvature * Curvature * x);
    }

    /// <summary>
    /// Distance-like value of a point: 0 on the whole line or circle, its gradient of length 1 there, positive on the left.
    /// </summary>
    internal double Side(Point point)
    {
        var offset = point - Middle;
        return Normal.Dot(offset) - Curvature / 2 * offset.LengthSquared;
    }

    /// <summary>Distance in mm walked from the middle, negative towards the start.</summary>
    internal double Walked(double s)
    {
        var half = Curvature * s / 2;
        // atan(h)/h, whose series keeps its digits where the quotient would lose them.
        return Math.Abs(half) < Flat ? s * (1 - half * half / 3) : 2 / Curvature * Math.Atan(half);
    }

    /// <summary>The inverse of <see cref="Walked"/>.</summary>
    internal double Parameter(double walked)
    {
        var half = Curvature * walked / 2;
        return Math.Abs(half) < Flat
            ? walked * (1 + half * half / 3)
            : 2 / Curvature * Math.Tan(half);
    }

    internal Vector TangentAt(double s)
    {
        // Turned by ψ with tan(ψ/2) = k s/2.
        var half = Curvature * s / 2;
        var w = 1 + half * half;
        return Tangent * ((1 - half * half) / w) + Normal * (2 * half / w);
    }
}
