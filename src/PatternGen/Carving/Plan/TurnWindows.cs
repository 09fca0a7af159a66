namespace PatternGen;

/// <summary>Gathers cuts that run nearly the same way, so that the board lies still for them: in as few groups as there can be.</summary>
internal sealed class TurnWindows
{
    /// <summary>Degrees that a group may span: the wrist swings as far to either side of its middle.</summary>
    private const double Span = 2 * CarverView.Swing;

    /// <summary>Turns that differ by less than this, in degrees, are one turn.</summary>
    private const double SameTurn = 1e-6;

    private readonly PlannedCut[] _sorted;

    /// <summary>For each turn that occurs, in order, the number of its first cut; and the number of cuts last.</summary>
    private readonly List<int> _firsts = [];

    private TurnWindows(IEnumerable<PlannedCut> cuts)
    {
        _sorted = [.. cuts.OrderBy(cut => cut.BestTurn)];
        for (var i = 0; i < _sorted.Length; i++)
            if (i == 0 || _sorted[i].BestTurn - _sorted[i - 1].BestTurn > SameTurn)
                _firsts.Add(i);
        Count = _firsts.Count;
        _firsts.Add(_sorted.Length);
    }

    /// <summary>Number of different turns.</summary>
    private int Count { get; }

    /// <summary>Returns the cuts in groups; each cut's turn is the middle of its group.</summary>
    internal static IReadOnlyList<List<PlannedCut>> Of(IReadOnlyList<PlannedCut> cuts) =>
        cuts.Count == 0 ? [] : new TurnWindows(cuts).FromBestStart();

    /// <summary>
    /// Round the circle, the fewest groups are found from one of the starts within one group: some group must begin there.
    /// </summary>
    private List<List<PlannedCut>> FromBestStart()
    {
        var first = AfterWidestGap();
        var best = From(first);
        for (var i = 1; i < Count && Ahead(first, first + i) <= Span; i++)
            if (From(first + i) is var other && other.Count < best.Count)
                best = other;
        return best.ConvertAll(group => GroupOf(group.First, group.Last));
    }

    /// <summary>The groups that begin with a turn, each as far as it reaches: numbers of turns, counted on beyond a whole round.</summary>
    private List<(int First, int Last)> From(int start)
    {
        var groups = new List<(int First, int Last)>();
        for (var first = start; first < start + Count; )
        {
            // The last turn that the group still reaches, by halving.
            var (last, beyond) = (first, start + Count);
            while (beyond - last > 1)
            {
                var middle = (last + beyond) / 2;
                if (Ahead(first, middle) <= Span + SameTurn)
                    last = middle;
                else
                    beyond = middle;
            }
            groups.Add((first, last));
            first = last + 1;
        }
        return groups;
    }

    private List<PlannedCut> GroupOf(int first, int last)
    {
        var turn = CarverView.Normal(TurnOf(first) + Ahead(first, last) / 2);
        var group = new List<PlannedCut>();
        for (var i = first; i <= last; i++)
        for (var cut = _firsts[i % Count]; cut < _firsts[i % Count + 1]; cut++)
            group.Add(_sorted[cut] with { Turn = turn });
        return group;
    }

    private double TurnOf(int number) => _sorted[_firsts[number % Count]].BestTurn;

    /// <summary>From one turn on to a later one, up to a whole round after it, in degrees.</summary>
    private double Ahead(int from, int to)
    {
        var ahead = TurnOf(to) - TurnOf(from);
        return ahead < 0 ? ahead + 360 : ahead;
    }

    private int AfterWidestGap()
    {
        var (best, widest) = (0, -1.0);
        for (var i = 0; i < Count; i++)
        {
            var gap = Count == 1 ? 360 : Ahead(i + Count - 1, i + Count);
            if (gap > widest + SameTurn)
                (best, widest) = (i, gap);
        }
        return best;
    }
}
