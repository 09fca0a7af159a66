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
        Solid = chip.SolidFor(knife);
        (BladeAngle, Unit) = Solid is WalledChip walled
            ? (walled.WallAngle, chip.Placement.Scale * Math.Tan(walled.WallAngle.Radians))
            : (((StabCutChip)Solid).FloorSlope, Solid.Depth);
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
}
