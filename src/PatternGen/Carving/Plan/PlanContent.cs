namespace PatternGen;

/// <summary>The chips, cuts and steps of a plan as objects, made of an outcome.</summary>
internal sealed class PlanContent
{
    private readonly PlanBench _bench;
    private readonly PlannedChip[] _byPlace;
    private readonly CarvingStroke[] _strokes;
    private readonly IReadOnlyList<CarvingStroke>[] _strokesOfChips;

    internal PlanContent(PlanBench bench, PlanOutcome outcome, CarvingOrder order)
    {
        _bench = bench;
        Turns = outcome.CountTurns();
        _byPlace = new PlannedChip[bench.Source.Chips.Length];
        _strokesOfChips = new IReadOnlyList<CarvingStroke>[_byPlace.Length];
        Chips = NumberChips(outcome, order);
        _strokes = new CarvingStroke[outcome.Cuts.Count];
        for (var i = 0; i < _strokes.Length; i++)
            _strokes[i] = StrokeOf(outcome.Cuts[i]);
        foreach (var group in _strokes.ToLookup(stroke => stroke.Chip))
            _strokesOfChips[group.Key.Number - 1] = [.. group];
        Steps = MakeSteps(outcome);
        Totals = new(Chips, _strokes, bench.Source.Grooves());
    }

    internal PlannedChip[] Chips { get; }

    internal IReadOnlyList<CarvingStroke> Strokes => _strokes;

    internal PlanStep[] Steps { get; }

    internal int Turns { get; }

    internal PlanTotals Totals { get; }

    /// <summary>In the order of their last cuts.</summary>
    private PlannedChip[] NumberChips(PlanOutcome outcome, CarvingOrder order)
    {
        var last = new Dictionary<int, PlannedCut>();
        for (var i = outcome.Cuts.Count - 1; i >= 0; i--)
            last.TryAdd(outcome.Cuts[i].Chip, outcome.Cuts[i]);
        // Filled from the last on, and dictionaries without removals keep that order.
        var cuts = last.Values.Reverse().ToArray();
        var chips = new PlannedChip[cuts.Length];
        for (var i = 0; i < chips.Length; i++)
        {
            var reason =
                order == CarvingOrder.ByChip ? outcome.Reasons[cuts[i].Step] : cuts[i].Reason;
            chips[i] = new(_bench.Source.Chips[cuts[i].Chip], i + 1, reason, _strokesOfChips);
            _byPlace[cuts[i].Chip] = chips[i];
        }
        return chips;
    }

    private CarvingStroke StrokeOf(PlannedCut cut) =>
        new(
            _byPlace[cut.Chip],
            _bench.CutsOf(cut.Chip)[cut.Cut],
            _bench.Reverses(cut.Chip),
            cut,
            _bench.Turn(cut),
            _bench.GrainRunOf(cut)
        );

    private PlanStep[] MakeSteps(PlanOutcome outcome)
    {
        var steps = new PlanStep[outcome.Reasons.Count];
        for (var first = 0; first < _strokes.Length; )
        {
            var step = outcome.Cuts[first].Step;
            var end = first;
            while (end < _strokes.Length && outcome.Cuts[end].Step == step)
                end++;
            var turns = first > 0 && outcome.Cuts[first].Turn != outcome.Cuts[first - 1].Turn;
            steps[step] = new(step + 1, outcome.Reasons[step], turns, _strokes[first..end]);
            first = end;
        }
        return steps;
    }
}
