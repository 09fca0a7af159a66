using F = PatternGen.RecipeFieldOf<PatternGen.BentStyle>;

namespace PatternGen;

/// <summary>How bands are bent.</summary>
internal static class BendingType
{
    private static readonly RecipeField<BentStyle, BentSides> Sides = F.Usually(
        "sides",
        BentSides.Straight,
        "Whether slanted sides stay straight or follow the curve.",
        new WordType<BentSides>(),
        style => style.Sides
    );

    private static readonly RecipeField<BentStyle, double> Accuracy = F.Usually(
        "accuracy",
        BentStyle.Default.Accuracy,
        "How far sides that follow the curve may lie off it, in mm.",
        RecipeSizes.Accuracy,
        style => style.Accuracy
    );

    private static readonly RecipeField<BentStyle, BandLine> PitchLine = F.Usually(
        "pitchOn",
        BandLine.Middle,
        "The line of the band on which the pitch is measured.",
        new WordType<BandLine>(),
        style => style.PitchLine
    );

    internal static readonly ObjectType<BentStyle> Instance = new(
        "bending",
        "How a band is bent along a curve.",
        new(Sides, Accuracy, PitchLine),
        given =>
            BentStyle.Default.With(given.Of(Sides), given.Of(Accuracy)) with
            {
                PitchLine = given.Of(PitchLine),
            }
    );
}
