using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Placed chips as solids.</summary>
internal static class ChipSolids
{
    /// <summary>Returns the chip as it is cut: at its own angle, at the cutter's, or stabbed.</summary>
    /// <exception cref="PatternException">The chip can't be stab-cut.</exception>
    internal static ChipSolid Of(in PlacedChip chip, Cutter cutter)
    {
        if (chip.Shape.Cut.IsStabbed && StabFloor.Of(chip.Shape) is null)
            throw new PatternException(
                "A stab-cut chip has three sides, of which the one opposite the apex is straight, and no hole; this one has not.",
                chip.Outline[0].Point,
                [
                    "leaning walls for this chip: WithCut(ChipCut.Walls)",
                    "another corner as the apex",
                ]
            );
        return new Chip(chip).SolidFor(cutter);
    }

    /// <summary>The angle at which a chip's walls lean.</summary>
    internal static Angle WallAngleOf(ChipShape shape, Cutter cutter, double scale) =>
        shape.Cut.WallAngle ?? cutter.WallAngleFor(shape.Roof.Clearance * scale);
}
