namespace PatternGen;

/// <summary>The rule that put something where it stands in a plan.</summary>
public enum PlanReason
{
    /// <summary>Of a chip: no chip that is left is larger.</summary>
    LargestFirst,

    /// <summary>Of a chip: as large as the one before, and next in the line; lines from top to bottom, in each from left to right, or from right to left with the left hand.</summary>
    NextInLine,

    /// <summary>Of chips: they come after larger neighbours, of which the ridge between is to be cut first.</summary>
    AfterLargerNeighbour,

    /// <summary>Of a stab: it comes before the slices, which it stops.</summary>
    StabFirst,

    /// <summary>Of a cut: the chip on the other side of the ridge is out already, so it comes first, and lightly, while the wood of this chip still backs the ridge.</summary>
    NextToRemoved,

    /// <summary>Of a cut: next on the way round the chip.</summary>
    RoundTheChip,

    /// <summary>Of a cut: the last of its chip, which runs with the grain better than those that could have been the last.</summary>
    WithTheGrain,

    /// <summary>Of a cut: it runs as the board lies.</summary>
    SameTurn,
}
