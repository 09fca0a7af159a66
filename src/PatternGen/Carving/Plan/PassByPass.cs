namespace PatternGen;

/// <summary>Plans all cuts that run one way, then those that run the next way.</summary>
/// <remarks>
/// Chips with a larger neighbour wait until that is out; all others share their passes. So a pattern needs as many positions
/// of the board as its chips have directions, however many chips there are. Of the passes, those along removed
/// chips come first, and those that run best with the grain last.
/// </remarks>
internal sealed class PassByPass(PlanBench bench)
{
    /// <summary>Decimals by which passes are told apart; the rest is rounding.</summary>
    private const int Decimals = 6;

    private readonly PlanChip[] _chips = bench.Source.Chips;
    private readonly bool[] _removed = new bool[bench.Source.Chips.Length];
    private readonly int[] _left = new int[bench.Source.Chips.Length];
    private readonly double[] _leastWithGrain = new double[bench.Source.Chips.Length];
    private readonly List<PlannedCut> _cuts = [];
    private readonly List<PlanReason> _reasons = [];

    internal PlanOutcome Make()
    {
        var tiers = Tiers();
        foreach (
            var tier in Enumerable
                .Range(0, _chips.Length)
                .GroupBy(chip => tiers[chip])
                .OrderBy(t => t.Key)
        )
            AddTier([.. tier], tier.Key);
        return new(_cuts, _reasons);
    }

    /// <summary>For each chip how many larger neighbours, each the next one's, it waits for.</summary>
    private int[] Tiers()
    {
        var sizes = bench.Source.SizeRanks;
        var larger = bench
            .Neighbours.Pairs.Where(pair => sizes[pair.Other] < sizes[pair.Chip])
            .ToLookup(pair => pair.Chip, pair => pair.Other);
        var tiers = new int[_chips.Length];
        foreach (var chip in bench.Order.Order)
        foreach (var other in larger[chip])
            tiers[chip] = Math.Max(tiers[chip], tiers[other] + 1);
        return tiers;
    }

    private void AddTier(int[] chips, int tier)
    {
        List<PlannedCut> stabs = [];
        List<PlannedCut> cuts = [];
        foreach (var chip in chips)
        {
            var all = bench.CutsOf(chip);
            _left[chip] = all.Count;
            _leastWithGrain[chip] = double.PositiveInfinity;
            for (var number = 0; number < all.Count; number++)
                (all[number].Kind == CutKind.Stab ? stabs : cuts).Add(bench.Cut(chip, number));
        }
        foreach (var cut in cuts)
            _leastWithGrain[cut.Chip] = Math.Min(_leastWithGrain[cut.Chip], cut.WithGrain);
        foreach (var part in (List<PlannedCut>[])[stabs, cuts])
        foreach (var pass in InOrder(TurnWindows.Of(part)))
            AddPass(pass, tier);
    }

    private IEnumerable<List<PlannedCut>> InOrder(IEnumerable<List<PlannedCut>> passes) =>
        passes
            .Select(pass => (Pass: pass, Lies: pass[0].Turn))
            .OrderBy(item => IsMostlyNextToRemoved(item.Pass) ? 0 : 1)
            .ThenBy(item => Math.Round(item.Pass.Average(cut => cut.WithGrain), Decimals))
            .ThenBy(item => Math.Round(item.Lies, Decimals))
            .Select(item => item.Pass);

    private bool IsMostlyNextToRemoved(List<PlannedCut> pass) =>
        2 * pass.Count(cut => bench.IsNextToRemoved(cut, _removed)) > pass.Count;

    /// <summary>Adds the cuts row by row, those alike together; where they are to be pressed alike for one reason, they are one step.</summary>
    private void AddPass(List<PlannedCut> pass, int tier)
    {
        var places = bench.Order.Place;
        var rows = pass.OrderBy(cut => places[cut.Chip])
            .ThenBy(cut => cut.Cut)
            .GroupBy(KeyOf)
            .OrderBy(row => row.Key.Size)
            .ThenBy(row => places[row.First().Chip]);
        foreach (var row in rows)
        {
            PlannedCut? before = null;
            foreach (var planned in row)
            {
                var cut = Judged(planned);
                if (cut.Pressure != before?.Pressure || cut.Reason != before.Reason)
                    _reasons.Add(tier > 0 ? PlanReason.AfterLargerNeighbour : PlanReason.SameTurn);
                before = cut with { Step = _reasons.Count - 1 };
                _cuts.Add(before);
            }
        }
    }

    /// <summary>Cuts with one key are told in one line of the schedule.</summary>
    private RowKey KeyOf(PlannedCut planned)
    {
        var chip = _chips[planned.Chip];
        var cut = bench.CutsOf(planned.Chip)[planned.Cut];
        return new(
            bench.Source.SizeRanks[planned.Chip],
            chip.Chip.Id.Row,
            cut.Kind,
            cut.Ring,
            cut.FacingOn(chip.Chip.Placement),
            bench.GrainRunOf(planned),
            Math.Round(cut.Depth * chip.Unit, Decimals)
        );
    }

    /// <summary>Says how hard to press and why the cut comes here, and takes the chip out if it is its last.</summary>
    private PlannedCut Judged(PlannedCut cut)
    {
        var isStab = bench.CutsOf(cut.Chip)[cut.Cut].Kind == CutKind.Stab;
        var isThin = bench.IsNextToRemoved(cut, _removed);
        var isLast = --_left[cut.Chip] == 0;
        if (isLast)
            _removed[cut.Chip] = true;
        var isWithGrain = isLast && cut.WithGrain > _leastWithGrain[cut.Chip] + ChipByChip.Better;
        return cut with
        {
            Pressure = isThin ? Pressure.Light : Pressure.Full,
            Reason =
                isThin ? PlanReason.NextToRemoved
                : isStab ? PlanReason.StabFirst
                : isWithGrain ? PlanReason.WithTheGrain
                : PlanReason.SameTurn,
        };
    }

    private readonly record struct RowKey(
        int Size,
        int Row,
        CutKind Kind,
        int Hole,
        SideFacing Facing,
        GrainRun Grain,
        double Depth
    );
}
