namespace PatternGen;

/// <summary>Gathers cuts that run nearly the same way, so that the board lies still for them.</summary>
internal static class TurnWindows
{
    /// <summary>Gaps between directions, in degrees, that differ by less than this are equal.</summary>
    private const double SameGap = 1e-6;

    /// <summary>Returns the cuts in groups whose best turns lie within twice the wrist's swing; each cut's turn is the middle of its group.</summary>
    internal static IEnumerable<List<PlannedCut>> Of(IReadOnlyList<PlannedCut> cuts)
    {
        PlannedCut[] sorted = [.. cuts.OrderBy(cut => cut.BestTurn)];
        var first = AfterWidestGap(sorted);
        var window = new List<PlannedCut>();
        for (var i = 0; i < sorted.Length; i++)
        {
            var cut = sorted[(first + i) % sorted.Length];
            if (window.Count > 0 && Ahead(window[0], cut) > 2 * CarverView.Swing)
            {
                yield return Closed(window);
                window = [];
            }
            window.Add(cut);
        }
        if (window.Count > 0)
            yield return Closed(window);
    }

    private static List<PlannedCut> Closed(List<PlannedCut> window)
    {
        var turn = CarverView.Normal(window[0].BestTurn + Ahead(window[0], window[^1]) / 2);
        return window.ConvertAll(cut => cut with { Turn = turn });
    }

    /// <summary>From one cut's turn on to another's, from 0 to 360 degrees.</summary>
    private static double Ahead(PlannedCut from, PlannedCut to)
    {
        var ahead = to.BestTurn - from.BestTurn;
        return ahead < -SameGap ? ahead + 360 : Math.Max(0, ahead);
    }

    /// <summary>A window that starts after the widest gap cuts no run of directions in two that another start would leave whole.</summary>
    private static int AfterWidestGap(PlannedCut[] sorted)
    {
        var (best, widest) = (0, -1.0);
        for (var i = 0; i < sorted.Length; i++)
        {
            var before = sorted[(i + sorted.Length - 1) % sorted.Length];
            var gap = Ahead(before, sorted[i]);
            if (i == 0 && gap <= SameGap)
                gap = 360 - Ahead(sorted[0], sorted[^1]);
            if (gap > widest + SameGap)
                (best, widest) = (i, gap);
        }
        return best;
    }
}
