using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What both orders of a plan work with: the chips in reading order, their cuts and their neighbours, and how the board lies.</summary>
internal sealed class PlanBench
{
    private readonly CarverView _view;
    private readonly Technique _technique;

    internal PlanBench(PlanSource source, Technique technique, Hand hand)
    {
        Source = source;
        _technique = technique;
        _view = new(hand);
        Order = new(source, _view);
        Neighbours = new(source, technique);
    }

    internal PlanSource Source { get; }

    internal ReadingOrder Order { get; }

    internal SideNeighbours Neighbours { get; }

    internal ShapeCuts CutsOf(int chip) => Source.CutsOf(Source.Chips[chip].Shape, _technique);

    internal bool Reverses(int chip) => _view.Reverses(Source.Chips[chip].Chip.Placement);

    /// <summary>The direction in which a cut is drawn as a whole, of length 1.</summary>
    internal Vector DirectionOf(int chip, int number)
    {
        var cut = CutsOf(chip)[number];
        var placed = Source.Chips[chip].Chip.Placement.Apply(cut.Direction).Unit();
        return cut.Kind != CutKind.Stab && Reverses(chip) ? -placed : placed;
    }

    internal GrainRun GrainRunOf(PlannedCut cut) =>
        GrainRuns.Of(DirectionOf(cut.Chip, cut.Cut), Source.Chips[cut.Chip].Grain, cut.WithGrain);

    /// <summary>The turn as it is on the wood.</summary>
    internal Angle Turn(PlannedCut cut) => _view.Turn(cut.Turn);

    /// <summary>Returns a cut of a chip with the turn that suits it best.</summary>
    internal PlannedCut Cut(int chip, int number)
    {
        var cut = CutsOf(chip)[number];
        var direction = DirectionOf(chip, number);
        return new(chip, number)
        {
            BestTurn = _view.TurnFor(direction),
            WithGrain =
                cut.Kind == CutKind.Stab ? 0 : _view.WithGrain(direction, Source.Chips[chip].Grain),
        };
    }

    /// <summary>The numbers of a chip's cuts along its sides, in the order in which the knife comes round: with the chip on its right, as seen.</summary>
    internal IEnumerable<int> SidesRound(int chip)
    {
        var cuts = CutsOf(chip);
        var (first, count) = (cuts.Stabs.Length, cuts.Sides.Length);
        if (!Reverses(chip))
            return Enumerable.Range(first, count);
        // From ring to ring as drawn, and within each the other way.
        return Enumerable
            .Range(first, count)
            .GroupBy(number => cuts[number].Ring)
            .SelectMany(ring => ring.Reverse());
    }

    /// <summary>Whether a neighbour beyond the side that a cut runs along is out already.</summary>
    internal bool IsNextToRemoved(PlannedCut cut, bool[] removed)
    {
        var side = CutsOf(cut.Chip)[cut.Cut].Side;
        if (side < 0)
            return false;
        foreach (var other in Neighbours.Beyond(cut.Chip, side))
            if (removed[other])
                return true;
        return false;
    }
}
