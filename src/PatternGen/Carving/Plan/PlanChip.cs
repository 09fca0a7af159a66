using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip as the planning sees it.</summary>
internal sealed class PlanChip
{
    internal PlanChip(Chip chip, ChipShape shape, Knife knife, Stock stock)
    {
        Chip = chip;
        Shape = shape;
        Clearance = shape.Roof.Clearance * chip.Placement.Scale;
        Grain = Vector.Towards(chip.GrainOn(stock));
        if (chip.Cut.IsStabbed)
        {
            var stabbed = StabbedSolid(chip);
            (Solid, Unit, BladeAngle) = (stabbed, stabbed.Depth, stabbed.FloorSlope);
            return;
        }
        BladeAngle = chip.Cut.WallAngle ?? knife.WallAngleFor(Clearance);
        Solid = ChipSolid.Walled(shape.Roof, BladeAngle, chip.Placement);
        Unit = chip.Placement.Scale * Math.Tan(BladeAngle.Radians);
    }

    internal Chip Chip { get; }

    internal ChipShape Shape { get; }

    internal ChipSolid Solid { get; }

    /// <summary>Radius in mm of the largest circle in the chip.</summary>
    internal double Clearance { get; }

    /// <summary>Depth in mm of what is 1 deep in the units of the shape's cuts.</summary>
    internal double Unit { get; }

    /// <summary>The angle between the surface and the walls, or the floor of a stab-cut chip.</summary>
    internal Angle BladeAngle { get; }

    /// <summary>Direction of the grain, of length 1.</summary>
    internal Vector Grain { get; }

    private static StabCutChip StabbedSolid(Chip chip)
    {
        var (outline, apex) = (chip.Outline, chip.Cut.Apex ?? 0);
        if (chip.Cut.Depth is { } depth)
            return ChipSolid.StabCut(outline, apex, depth);
        // The slope needs the height over the base, which a chip of any depth tells.
        var height = 1 / Math.Tan(ChipSolid.StabCut(outline, apex, 1).FloorSlope.Radians);
        var slope = chip.Cut.Slope ?? Angle.Zero;
        return ChipSolid.StabCut(outline, apex, height * Math.Tan(slope.Radians));
    }
}
