namespace PatternGen.Geometry;

/// <summary>Follows a curve by lines and arcs that run smoothly into each other, to a given accuracy.</summary>
/// <remarks>
/// The curve is parted where it has corners or cusps. Along each smooth run, biarcs that start and end on the curve in its own
/// direction are laid one after another, each as far as the accuracy lets it; then the accuracy is tightened as far as the
/// same number of biarcs allows, so that all are about equally far off and the last one is no remnant. The error of a biarc
/// is that of the curvature it cannot follow: (change of curvature over its length) × length² / 324, which is Meek and
/// Walton's order h³ (Approximating smooth planar curves by arc splines, 1995).
/// </remarks>
internal static class BiarcFitter
{
    /// <summary>Most biarcs for one curve. Far more than a carver's drawing has; without a limit, a wrong accuracy fills the memory.</summary>
    private const int MostBiarcs = 50_000;

    /// <summary>Share of the accuracy that is used, so that what lies between the places measured stays within it.</summary>
    private const double Used = 0.92;

    /// <summary>More biarcs than this are not evened out, which takes as long as laying them several times.</summary>
    private const int MostEvened = 2_000;

    /// <summary>Halvings of the range in which the evened accuracy is looked for.</summary>
    private const int Evenings = 4;

    /// <summary>Returns the lines and arcs, each starting exactly where the one before ends.</summary>
    /// <param name="curve">The curve: its point and derivative at each parameter from first to last.</param>
    /// <param name="from">The first parameter.</param>
    /// <param name="to">The last parameter, above the first.</param>
    /// <param name="accuracy">How far, in mm, the arcs may lie off the curve and the curve off the arcs.</param>
    /// <param name="breaks">Parameters in between where the curvature jumps, as at the joints of a spline; in order.</param>
    /// <exception cref="PatternException">Too many arcs would be needed.</exception>
    internal static IReadOnlyList<Segment> Fit(
        Func<double, CurvePlace> curve,
        double from,
        double to,
        double accuracy,
        params double[] breaks
    )
    {
        double[] ends = [from, .. breaks, to];
        return Fit(
            curve,
            ends.Zip(ends.Skip(1), (start, end) => new CurveStretch(curve, start, end)).ToArray(),
            accuracy
        );
    }

    /// <summary>Returns the lines and arcs along stretches between which there may be corners.</summary>
    internal static IReadOnlyList<Segment> Fit(
        Func<double, CurvePlace> curve,
        IReadOnlyList<CurveStretch> stretches,
        double accuracy
    )
    {
        var segments = new List<Segment>();
        foreach (var run in RunFinder.Find(curve, stretches, accuracy))
            Follow(run, accuracy, segments);
        return segments;
    }

    private static void Follow(SmoothRun run, double accuracy, List<Segment> segments)
    {
        var best = Lay(run, accuracy, MostBiarcs) ?? throw TooMany(run, accuracy);
        if (best.Count is > 1 and <= MostEvened)
        {
            // The error goes with the cube of the length: what would fit one biarc fewer bounds the evened accuracy below.
            var share = (best.Count - 1.0) / best.Count;
            var (low, high) = (accuracy * share * share * share / 2, accuracy);
            for (var i = 0; i < Evenings; i++)
            {
                var middle = (low + high) / 2;
                if (Lay(run, middle, best.Count) is { } evened)
                    (best, high) = (evened, middle);
                else
                    low = middle;
            }
        }
        foreach (var biarc in best)
        {
            segments.Add(biarc.First);
            if (biarc.Second is { } second)
                segments.Add(second);
        }
    }

    /// <summary>Lays biarcs from the start of a run to its end; null if that takes more than the given number, or cannot be.</summary>
    private static List<Biarc>? Lay(SmoothRun run, double accuracy, int most)
    {
        var biarcs = new List<Biarc>();
        var reach = new BiarcReach(run, Used * accuracy);
        for (var at = run.Start; at.T < run.End.T; )
        {
            if (biarcs.Count == most || reach.From(at) is not { } reached)
                return null;
            biarcs.Add(reached.Biarc);
            at = reached.End;
        }
        return biarcs;
    }

    private static PatternException TooMany(SmoothRun run, double accuracy) =>
        new(
            $"The curve from {run.Start.Point} to {run.End.Point} cannot be followed to {Guard.Text(accuracy)} mm by {2 * MostBiarcs:0} arcs.",
            run.Start.Point,
            [
                // The number goes with the cube root: a thousandth of it is a tenth as many.
                $"a coarser accuracy, such as {Guard.Text(Math.Min(1000 * accuracy, 1e3))} mm",
                "a shorter curve, or one in several pieces",
            ]
        );
}
