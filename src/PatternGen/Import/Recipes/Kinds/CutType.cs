using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.ChipCut>;

namespace PatternGen;

/// <summary>How chips are cut.</summary>
internal static class CutType
{
    private static readonly RecipeField<ChipCut, Angle?> WallAngle = F.Maybe(
        "wallAngle",
        "Angle of the walls from the surface, 20 to 85 degrees, whatever the cutter's.",
        RecipeSizes.Angle,
        cut => cut.WallAngle
    );

    private static readonly RecipeField<ChipCut, int?> Corner = F.Maybe(
        "corner",
        "Of a stab-cut chip: number of the corner that is its apex, counted from 0.",
        new CountType(0),
        cut => cut.Apex
    );

    private static readonly RecipeField<ChipCut, Angle?> Slope = F.Maybe(
        "slope",
        "Of a stab-cut chip: angle between floor and surface, 5 to 70 degrees; 30 if no depth is given.",
        RecipeSizes.Angle,
        cut => cut.Slope
    );

    private static readonly RecipeField<ChipCut, double?> Depth = F.Maybe(
        "depth",
        "Of a stab-cut chip: depth in mm at its apex, in place of a slope.",
        RecipeSizes.Positive,
        cut => cut.Depth
    );

    internal static readonly ObjectType<ChipCut> Instance = new(
        "cut",
        "How a chip is cut: {} with walls at the cutter's angle, with walls at an angle of their own, or stabbed.",
        new(WallAngle, Corner, Slope, Depth),
        Make
    );

    private static ChipCut Make(GivenFields given)
    {
        var (angle, corner) = (given.Of(WallAngle), given.Of(Corner));
        var (slope, depth) = (given.Of(Slope), given.Of(Depth));
        if (corner is null && (slope ?? (object?)depth) is not null)
            throw new ArgumentException("A slope or a depth is that of a stab; name its corner.");
        if (corner is not { } apex)
            return angle is { } walls ? ChipCut.WallsAt(walls) : ChipCut.Walls;
        if (angle is not null)
            throw new ArgumentException("A stab has upright walls; give a wall angle or a corner.");
        if (slope is not { } floor)
            return ChipCut.Stabbed(apex, depth: depth);
        return depth is null
            ? ChipCut.Stabbed(apex, floor)
            : throw new ArgumentException("A stab cut has a slope or a depth, not both.");
    }
}
