using F = PatternGen.RecipeFieldOf<PatternGen.Heart>;

namespace PatternGen;

/// <summary>Hearts.</summary>
internal static class HeartKind
{
    private static readonly RecipeField<Heart, double> Width = F.Needed(
        "width",
        "Width in mm.",
        RecipeSizes.Positive,
        heart => heart.Width
    );

    private static readonly RecipeField<Heart, double> Height = F.Needed(
        "height",
        "Height in mm.",
        RecipeSizes.Positive,
        heart => heart.Height
    );

    private static readonly RecipeField<Heart, double?> Ridge = F.Maybe(
        "ridge",
        "Width in mm of a ridge from the point to the notch, so that each half is a chip.",
        RecipeSizes.NotNegative,
        heart => heart.Ridge
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Heart>(
        "heart",
        "A heart with its point at (0, 0).",
        pattern => pattern as Heart,
        new(Width, Height, Ridge),
        given =>
        {
            var heart = Heart.Of(given.Of(Width), given.Of(Height));
            return given.Of(Ridge) is { } ridge ? heart.Halved(ridge) : heart;
        }
    );
}
