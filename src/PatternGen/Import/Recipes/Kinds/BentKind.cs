using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.BentPattern>;

namespace PatternGen;

/// <summary>Patterns bent along paths.</summary>
internal static class BentKind
{
    private static readonly RecipeField<BentPattern, SegmentRun> Path = F.Needed(
        "path",
        "The path.",
        PathFields.Type,
        bent => bent.Path
    );

    private static readonly RecipeField<BentPattern, Pattern> Motif = F.Needed(
        "motif",
        "The pattern; its x axis is laid along the path.",
        PatternType.Instance,
        bent => bent.Motif
    );

    private static readonly RecipeField<BentPattern, double?> Spacing = F.Maybe(
        "spacing",
        "Length of one repeat in mm to aim at; bent once if left out.",
        RecipeSizes.Positive,
        bent => bent.Spacing
    );

    private static readonly RecipeField<BentPattern, double> Offset = F.Usually(
        "offset",
        0,
        "How far left of the path the x axis is laid, in mm.",
        RecipeSizes.Signed,
        bent => bent.Offset
    );

    private static readonly RecipeField<BentPattern, double> Accuracy = F.Usually(
        "accuracy",
        0.01,
        "How far sides may lie off where they bend to, in mm.",
        RecipeSizes.Accuracy,
        bent => bent.Accuracy
    );

    private static readonly RecipeField<BentPattern, double> Start = F.Usually(
        "startingAt",
        0,
        "Where on a closed path it starts, in mm from its first corner.",
        RecipeSizes.Coordinate,
        bent => bent.Start
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, BentPattern>(
        "bent",
        "A pattern bent along a path, once or in whole repeats.",
        pattern => pattern as BentPattern,
        new(Path, Motif, Spacing, Offset, Accuracy, Start),
        given =>
        {
            var bent = given
                .Of(Path)
                .Bend(given.Of(Motif), given.Of(Spacing), given.Of(Offset))
                .WithAccuracy(given.Of(Accuracy));
            PathFields.RefuseStart(bent.Path, given.Of(Start));
            return given.Of(Start) == 0 ? bent : bent.StartingAt(given.Of(Start));
        }
    );
}
