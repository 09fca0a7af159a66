using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A line of the schedule: one chip, or in passes a row of cuts that are alike.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class PlanStep
{
    private readonly CarvingStroke[] _strokes;

    internal PlanStep(int number, PlanReason reason, bool turnsBoard, CarvingStroke[] strokes)
    {
        (Number, Reason, TurnsBoard) = (number, reason, turnsBoard);
        _strokes = strokes;
    }

    /// <summary>Its place in the plan, from 1.</summary>
    public int Number { get; }

    /// <summary>The rule that put it where it stands.</summary>
    public PlanReason Reason { get; }

    /// <summary>Whether the board is turned before its first cut; not so before the first cut of all, for which it is laid.</summary>
    public bool TurnsBoard { get; }

    /// <summary>The turn of the board for the first cut.</summary>
    public Angle BoardTurn => _strokes[0].BoardTurn;

    /// <summary>Its cuts, in order.</summary>
    public IReadOnlyList<CarvingStroke> Strokes => _strokes;

    /// <summary>Its chips, each once, in the order in which they are cut.</summary>
    public IReadOnlyList<PlannedChip> Chips =>
        [.. _strokes.Select(stroke => stroke.Chip).Distinct()];

    /// <summary>Returns number and cuts, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Number}: {_strokes.Length} cuts, first {_strokes[0]}");
}
