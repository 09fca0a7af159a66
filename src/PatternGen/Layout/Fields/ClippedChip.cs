using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What the edge of a field leaves of a chip.</summary>
/// <param name="Cell">The number of its cell.</param>
/// <param name="Chip">The chip.</param>
/// <param name="Part">What is left, on the wood.</param>
internal sealed record ClippedChip(int Cell, StampChip Chip, RegionPart Part)
{
    /// <summary>The shape of what is left. A corner that was to be stabbed may be gone: it gets walls all round then.</summary>
    internal ChipShape Shape { get; } =
        new ChipShape(Part.Outer, [.. Part.Holes]).WithCut(
            Chip.Shape.Cut.IsStabbed ? ChipCut.Walls : Chip.Shape.Cut
        );

    /// <summary>Whether the largest circle in it is narrower than a width in mm.</summary>
    /// <remarks>
    /// An area without holes is at most the radius of that circle × the length round it (Bonnesen's inequality), a ring
    /// exactly that; twice as much leaves room for any holes. Only below it the walls need to be worked out.
    /// </remarks>
    internal bool IsNarrowerThan(double width)
    {
        var length = Part.Outer.Length + Part.Holes.Sum(hole => hole.Length);
        return Part.Area < width * length && 2 * Shape.Roof.Clearance < width;
    }
}
