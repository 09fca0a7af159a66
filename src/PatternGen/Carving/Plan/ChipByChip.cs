namespace PatternGen;

/// <summary>Plans one chip after the other.</summary>
internal sealed class ChipByChip(PlanBench bench)
{
    /// <summary>How much better a cut must run with the grain, or rounding would choose.</summary>
    internal const double Better = 1e-9;

    private readonly bool[] _removed = new bool[bench.Source.Chips.Length];
    private readonly List<PlannedCut> _cuts = [];
    private readonly List<PlanReason> _reasons = [];

    internal PlanOutcome Make()
    {
        var before = -1;
        foreach (var chip in bench.Order.Order)
        {
            var size = bench.Source.SizeRanks[chip];
            _reasons.Add(size == before ? PlanReason.NextInLine : PlanReason.LargestFirst);
            before = size;
            Add(chip);
            _removed[chip] = true;
        }
        return new(_cuts, _reasons);
    }

    private void Add(int chip)
    {
        var all = bench.CutsOf(chip);
        for (var number = 0; number < all.Stabs.Length; number++)
            Add(bench.Cut(chip, number) with { Reason = PlanReason.StabFirst });
        PlannedCut[] sides =
        [
            .. bench
                .SidesRound(chip)
                .Select(number => bench.Cut(chip, number))
                .Select(cut =>
                    bench.IsNextToRemoved(cut, _removed)
                        ? cut with
                        {
                            Pressure = Pressure.Light,
                        }
                        : cut
                ),
        ];
        // The upright walls of a stab-cut chip are stabbed before it is sliced.
        var stabs = sides.Where(cut => all[cut.Cut].Kind == CutKind.Stab);
        foreach (var cut in stabs.OrderBy(cut => cut.Pressure == Pressure.Light ? 0 : 1))
            Add(
                cut with
                {
                    Reason =
                        cut.Pressure == Pressure.Light
                            ? PlanReason.NextToRemoved
                            : PlanReason.StabFirst,
                }
            );
        foreach (var cut in InOrder([.. sides.Where(cut => all[cut.Cut].Kind != CutKind.Stab)]))
            Add(cut);
    }

    /// <summary>Those next to removed chips first, the one that runs best with the grain last, the others on the way round from it.</summary>
    private static IEnumerable<PlannedCut> InOrder(PlannedCut[] sides)
    {
        if (sides.Length == 0)
            yield break;
        var isFree = Array.Exists(sides, cut => cut.Pressure == Pressure.Full);
        var candidates = isFree
            ? Array.FindAll(sides, cut => cut.Pressure == Pressure.Full)
            : sides;
        var last = candidates[0];
        foreach (var cut in candidates)
            if (cut.WithGrain > last.WithGrain + Better)
                last = cut;
        var isChosen = Array.Exists(candidates, cut => cut.WithGrain < last.WithGrain - Better);
        var at = Array.FindIndex(sides, cut => cut.Cut == last.Cut);
        PlannedCut[] round = [.. sides[(at + 1)..], .. sides[..at]];
        foreach (var cut in round)
            if (cut.Pressure == Pressure.Light)
                yield return cut with
                {
                    Reason = PlanReason.NextToRemoved,
                };
        foreach (var cut in round)
            if (cut.Pressure == Pressure.Full)
                yield return cut with
                {
                    Reason = PlanReason.RoundTheChip,
                };
        var reason = isChosen ? PlanReason.WithTheGrain : PlanReason.RoundTheChip;
        yield return last with
        {
            Reason = isChosen || isFree ? reason : PlanReason.NextToRemoved,
        };
    }

    /// <summary>Turns the board only if the cut runs too far from how it lies.</summary>
    private void Add(PlannedCut cut)
    {
        var turn = cut.BestTurn;
        if (_cuts.Count > 0)
        {
            var lies = _cuts[^1].Turn;
            if (Math.Abs(CarverView.Normal(turn - lies)) <= CarverView.Swing)
                turn = lies;
        }
        _cuts.Add(cut with { Turn = turn, Step = _reasons.Count - 1 });
    }
}
