using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.SnappedPattern>;

namespace PatternGen;

/// <summary>Patterns snapped to a grid.</summary>
internal static class SnappedKind
{
    private static readonly RecipeField<SnappedPattern, Pattern> Original = F.Needed(
        "pattern",
        "The pattern as it was.",
        PatternType.Instance,
        snapped => snapped.Original
    );

    private static readonly RecipeField<SnappedPattern, ISnapGrid> Onto = F.Needed(
        "grid",
        "The grid.",
        Grids.Type,
        snapped => snapped.SnapGrid
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, SnappedPattern>(
        "snapped",
        "A pattern whose corners are moved to the nearest places of a grid.",
        pattern => pattern as SnappedPattern,
        new(Original, Onto),
        given => new SnappedPattern(given.Of(Original), given.Of(Onto))
    );

    private static class Grids
    {
        private static readonly RecipeField<Grid, double> StepX = RecipeFieldOf<Grid>.Needed(
            "stepX",
            "Distance in mm between upright lines.",
            RecipeSizes.Positive,
            grid => grid.StepX
        );

        private static readonly RecipeField<Grid, double> StepY = RecipeFieldOf<Grid>.Needed(
            "stepY",
            "Distance in mm between level lines.",
            RecipeSizes.Positive,
            grid => grid.StepY
        );

        private static readonly RecipeField<Grid, Point> Origin = RecipeFieldOf<Grid>.Usually(
            "origin",
            Point.Origin,
            "A place where lines cross.",
            RecipeSizes.Point,
            grid => grid.Origin
        );

        private static readonly RecipeField<Grid, Angle> Turn = RecipeFieldOf<Grid>.Usually(
            "turn",
            Angle.Zero,
            "By how much the lines are turned.",
            RecipeSizes.Angle,
            grid => grid.Turn
        );

        private static readonly RecipeField<PolarGrid, double> RingStep =
            RecipeFieldOf<PolarGrid>.Needed(
                "ringStep",
                "Distance in mm between rings.",
                RecipeSizes.Positive,
                grid => grid.RingStep
            );

        private static readonly RecipeField<PolarGrid, int> Rays = RecipeFieldOf<PolarGrid>.Needed(
            "rays",
            "Number of rays.",
            new CountType(1),
            grid => grid.Rays
        );

        private static readonly RecipeField<PolarGrid, Point> Centre =
            RecipeFieldOf<PolarGrid>.Usually(
                "centre",
                Point.Origin,
                "The centre.",
                RecipeSizes.Point,
                grid => grid.Centre
            );

        private static readonly RecipeField<PolarGrid, double> FirstRay =
            RecipeFieldOf<PolarGrid>.Usually(
                "firstRay",
                90,
                "Direction of a ray in degrees.",
                RecipeSizes.Degrees,
                grid => AngleType.DegreesOf(grid.FirstRay) ?? grid.FirstRay.Degrees
            );

        internal static readonly RecipeChoice<ISnapGrid> Type = new(
            "grid",
            "a grid",
            "kind",
            new RecipeKind<ISnapGrid, Grid>(
                "rectangular",
                "Lines square to each other.",
                grid => grid as Grid,
                new(StepX, StepY, Origin, Turn),
                given =>
                    Grid.Rectangular(
                        given.Of(StepX),
                        given.Of(StepY),
                        given.Of(Origin),
                        given.Of(Turn)
                    )
            ),
            new RecipeKind<ISnapGrid, PolarGrid>(
                "polar",
                "Rings and rays.",
                grid => grid as PolarGrid,
                new(RingStep, Rays, Centre, FirstRay),
                given =>
                    PolarGrid.Of(
                        given.Of(RingStep),
                        given.Of(Rays),
                        given.Of(Centre),
                        given.Of(FirstRay)
                    )
            )
        );
    }
}
