namespace PatternGen;

/// <summary>The arc that a level line becomes on a stretch of even curvature.</summary>
internal static class BentArc
{
    /// <summary>The parts of a level line, at most a half circle each: where each begins, and its bulge.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends, to the right or left of that.</param>
    /// <param name="turn">Angle in radians that the stretch turns through for each mm.</param>
    internal static IEnumerable<(double X, double Bulge)> Parts(double from, double to, double turn)
    {
        var sweep = (to - from) * turn;
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / Math.PI));
        for (var i = 0; i < count; i++)
            yield return (from + (to - from) * i / count, Math.Tan(sweep / count / 4));
    }
}
