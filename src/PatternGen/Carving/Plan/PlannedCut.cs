namespace PatternGen;

/// <summary>A cut of a chip as it is planned, by numbers.</summary>
/// <param name="Chip">Number of the chip in the pattern.</param>
/// <param name="Cut">Number of the cut in the chip.</param>
internal sealed record PlannedCut(int Chip, int Cut)
{
    /// <summary>The turn of the board that would be best, in degrees, as seen.</summary>
    internal double BestTurn { get; init; }

    /// <summary>The turn of the board in degrees, as seen.</summary>
    internal double Turn { get; init; }

    /// <summary>How well it runs with the grain, from -1 to 1; 0 of stabs.</summary>
    internal double WithGrain { get; init; }

    internal Pressure Pressure { get; init; }

    internal PlanReason Reason { get; init; }

    /// <summary>Number of the step that it belongs to.</summary>
    internal int Step { get; init; }
}
