namespace PatternGen.Tests.Geometry;

/// <summary>Curves with a place where they stand still and turn back.</summary>
internal static class Cusps
{
    /// <summary>
    /// x = (2t - 1)², y = (2t - 1)³/2 as a Bézier: with u = 2t - 1 the blossoms u1 u2 + u1 u3 + u2 u3 over 3 and u1 u2 u3 over
    /// 2 at u = -1 and 1. The cusp is at (0, 0).
    /// </summary>
    internal static FreeCurve Semicubical { get; } =
        FreeCurve.Bezier(new(1, -0.5), new(-1.0 / 3, 0.5), new(-1.0 / 3, -0.5), new(1, 0.5));

    internal static Point SemicubicalAt(double t)
    {
        var u = 2 * t - 1;
        return new(u * u, u * u * u / 2);
    }
}
