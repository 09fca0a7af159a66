using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What the edge of a field leaves of a chip.</summary>
/// <param name="Cell">The number of its cell.</param>
/// <param name="Chip">The chip.</param>
/// <param name="Part">What is left, on the wood.</param>
/// <param name="Clearance">Radius of nearly the largest circle in it, in mm: too small by a share of <see cref="InsidePlace.Accuracy"/> at most.</param>
internal sealed record ClippedChip(int Cell, StampChip Chip, RegionPart Part, double Clearance)
{
    /// <summary>Whether the largest circle in it is narrower than a width in mm.</summary>
    internal bool IsNarrowerThan(double width)
    {
        if (2 * Clearance >= width)
            return false;
        // Only where it is close the exact answer is worth its time.
        return 2 * Clearance * (1 + 2 * InsidePlace.Accuracy) < width
            || 2 * ToShape().Roof.Clearance < width;
    }

    /// <summary>A corner that was to be stabbed may be gone, and no wall is where it was: it gets walls all round.</summary>
    internal ChipShape ToShape() =>
        new ChipShape(Part.Outer, [.. Part.Holes]).WithCut(
            Chip.Shape.Cut.IsStabbed ? ChipCut.Walls : Chip.Shape.Cut
        );
}
