namespace PatternGen;

/// <summary>The cuts of a plan in order, and for each step the rule that put it where it is.</summary>
internal sealed record PlanOutcome(
    IReadOnlyList<PlannedCut> Cuts,
    IReadOnlyList<PlanReason> Reasons
)
{
    /// <summary>How often the board is turned between two cuts.</summary>
    internal int CountTurns()
    {
        var turns = 0;
        for (var i = 1; i < Cuts.Count; i++)
            if (Cuts[i].Turn != Cuts[i - 1].Turn)
                turns++;
        return turns;
    }
}
