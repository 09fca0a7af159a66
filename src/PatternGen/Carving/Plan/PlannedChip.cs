using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip in a plan: which it is in the order, and the cuts that take it out.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class PlannedChip
{
    private readonly PlanChip _chip;
    private readonly IReadOnlyList<CarvingStroke>[] _strokes;

    /// <param name="chip">The chip.</param>
    /// <param name="number">Its place in the order, from 1.</param>
    /// <param name="reason">The rule that put it there.</param>
    /// <param name="strokes">The cuts of all chips in order, filled in when they are made, before anybody sees a chip: each refers to the other.</param>
    internal PlannedChip(
        PlanChip chip,
        int number,
        PlanReason reason,
        IReadOnlyList<CarvingStroke>[] strokes
    )
    {
        _chip = chip;
        _strokes = strokes;
        Number = number;
        Reason = reason;
    }

    /// <summary>Its place in the order in which the chips come out, from 1: the number on the drawing.</summary>
    public int Number { get; }

    /// <summary>The chip in the pattern.</summary>
    public Chip Chip => _chip.Chip;

    /// <summary>The wood that is cut away.</summary>
    public ChipSolid Solid => _chip.Solid;

    /// <summary>Width in mm: diameter of the largest circle in it.</summary>
    public double Width => 2 * _chip.Clearance;

    /// <summary>Middle of the largest circle in it, as seen from above; of a chip with leaning walls its deepest point.</summary>
    public Point Middle => Chip.Placement.Apply(_chip.Shape.Roof.Deepest);

    /// <summary>Its size class.</summary>
    public ChipSize Size => ChipSizes.Of(Width);

    /// <summary>The rule that put it where it stands in the order.</summary>
    public PlanReason Reason { get; }

    /// <summary>Its cuts, in the order in which they are made.</summary>
    public IReadOnlyList<CarvingStroke> Strokes => _strokes[Number - 1];

    internal PlanChip Source => _chip;

    /// <summary>Returns number, id and depth, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Number}: chip {Chip.Id}, {Solid.Depth:0.###} mm deep");
}
