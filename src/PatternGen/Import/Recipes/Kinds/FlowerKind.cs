using F = PatternGen.RecipeFieldOf<PatternGen.Flower>;

namespace PatternGen;

/// <summary>Flowers.</summary>
internal static class FlowerKind
{
    private static readonly RecipeField<Flower, int> Petals = F.Needed(
        "petals",
        "Number of petals.",
        new CountType(1),
        flower => flower.Petals
    );

    private static readonly RecipeField<Flower, double> Radius = F.Needed(
        "radius",
        "Radius in mm.",
        RecipeSizes.Positive,
        flower => flower.Radius
    );

    private static readonly RecipeField<Flower, bool> Overlapping = F.Usually(
        "overlapping",
        false,
        "Whether each petal lies over the next.",
        RecipeSizes.Flag,
        flower => flower.IsOverlapping
    );

    private static readonly RecipeField<Flower, double?> Centre = F.Maybe(
        "centre",
        "Radius of the centre in mm, 0 for none; a fifth of the radius if left out.",
        RecipeSizes.NotNegative,
        flower =>
            flower.CentreRadius == Flower.Of(flower.Petals, flower.Radius).CentreRadius
                ? null
                : flower.CentreRadius
    );

    private static readonly RecipeField<Flower, bool> CarvedCentre = F.Usually(
        "carvedCentre",
        false,
        "Whether the centre is carved.",
        RecipeSizes.Flag,
        flower => flower.IsCentreCarved
    );

    private static readonly RecipeField<Flower, double?> Ridge = F.Maybe(
        "ridge",
        "Width in mm of the ridges between petals.",
        RecipeSizes.NotNegative,
        flower =>
            flower.Ridge == Flower.Of(flower.Petals, flower.Radius).Ridge ? null : flower.Ridge
    );

    private static readonly RecipeField<Flower, double?> PetalWidth = F.Maybe(
        "petalWidth",
        "Width of a petal in mm; what there is room for if left out.",
        RecipeSizes.Positive,
        flower => flower.PetalWidth
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Flower>(
        "flower",
        "A flower about (0, 0).",
        pattern => pattern as Flower,
        new(Petals, Radius, Overlapping, Centre, CarvedCentre, Ridge, PetalWidth),
        given =>
        {
            var flower = Flower.Of(given.Of(Petals), given.Of(Radius));
            if (given.Of(Overlapping))
                flower = flower.Overlapping();
            if (given.Of(Ridge) is { } ridge)
                flower = flower.WithRidge(ridge);
            if (given.Of(PetalWidth) is { } width)
                flower = flower.WithPetalWidth(width);
            if (given.Of(CarvedCentre))
                return flower.WithCarvedCentre(given.Of(Centre));
            return given.Of(Centre) is { } centre ? flower.WithCentre(centre) : flower;
        }
    );
}
