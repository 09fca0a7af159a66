using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Placed chips as solids.</summary>
internal static class ChipSolids
{
    /// <inheritdoc cref="Chip.SolidFor"/>
    internal static ChipSolid Of(in PlacedChip chip, Cutter cutter) =>
        new Chip(chip).SolidFor(cutter);

    /// <summary>The angle at which a chip's walls lean.</summary>
    internal static Angle WallAngleOf(ChipShape shape, Cutter cutter, double scale) =>
        shape.Cut.WallAngleWith(cutter, shape.Roof.Clearance * scale);
}
