using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Placed chips as solids.</summary>
internal static class ChipSolids
{
    /// <summary>Returns the chip as it is cut: at its own angle, at the cutter's, or stabbed.</summary>
    /// <exception cref="PatternException">The chip can't be stab-cut.</exception>
    internal static ChipSolid Of(in PlacedChip chip, Cutter cutter)
    {
        if (chip.Cut.Apex is not { } apex)
            return ChipSolid.Walled(
                chip.Shape.Roof,
                WallAngleOf(chip.Shape, cutter, chip.Placement.Scale),
                chip.Placement
            );
        var outline = chip.ToOutline();
        if (StabFloor.Of(chip.Shape) is not { } floor)
            throw new PatternException(
                "A stab-cut chip has three sides, of which the one opposite the apex is straight, and no hole; this one has not.",
                outline.Vertices[0].Point,
                [
                    "leaning walls for this chip: WithCut(ChipCut.Walls)",
                    "another corner as the apex",
                ]
            );
        var height = floor.Height * chip.Placement.Scale;
        return ChipSolid.StabCut(
            outline,
            apex,
            chip.Cut.Depth ?? height * Math.Tan(floor.Slope(chip.Cut).Radians)
        );
    }

    /// <summary>The angle at which a chip's walls lean.</summary>
    internal static Angle WallAngleOf(ChipShape shape, Cutter cutter, double scale) =>
        shape.Cut.WallAngle ?? cutter.WallAngleFor(shape.Roof.Clearance * scale);
}
