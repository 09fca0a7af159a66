namespace PatternGen;

/// <summary>The arc that a level line becomes on a stretch of even curvature.</summary>
internal static class BentArc
{
    /// <summary>A half circle may come out this share larger by rounding.</summary>
    private const double Noise = 1e-9;

    /// <summary>The bulge of an arc that rounding may have made more than a half circle, which contours would split.</summary>
    internal static double AtMostHalf(double bulge) => Math.Clamp(bulge, -1, 1);

    /// <summary>The parts of a level line, at most a half circle each: where each begins, and its bulge.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends, to the right or left of that.</param>
    /// <param name="turn">Angle in radians that the stretch turns through for each mm.</param>
    internal static IEnumerable<(double X, double Bulge)> Parts(double from, double to, double turn)
    {
        var sweep = (to - from) * turn;
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / Math.PI - Noise));
        for (var i = 0; i < count; i++)
            yield return (from + (to - from) * i / count, AtMostHalf(Math.Tan(sweep / count / 4)));
    }
}
