using F = PatternGen.RecipeFieldOf<PatternGen.Stem>;

namespace PatternGen;

/// <summary>Stems with leaves.</summary>
internal static class StemKind
{
    private static readonly RecipeField<Stem, Geometry.Chain> Path = F.Needed(
        "path",
        "The line of the stem, from its base to its tip.",
        RecipeSizes.Line,
        stem => stem.Path
    );

    private static readonly RecipeField<Stem, double> Width = F.Needed(
        "width",
        "Width of the stem in mm.",
        RecipeSizes.Positive,
        stem => stem.Width
    );

    private static readonly RecipeField<Stem, Leaf?> OneLeaf = F.Maybe(
        "leaf",
        "The leaves near the base.",
        LeafKind.Type,
        stem => stem.Leaf
    );

    private static readonly RecipeField<Stem, double?> Spacing = F.Maybe(
        "spacing",
        "Distance along the stem in mm from one leaf or pair to the next, near the base.",
        RecipeSizes.Positive,
        stem => stem.Spacing
    );

    private static readonly RecipeField<Stem, LeafPlacing> Placing = F.Usually(
        "placing",
        LeafPlacing.Alternating,
        "How leaves stand on the stem.",
        new WordType<LeafPlacing>(),
        stem => stem.Placing
    );

    private static readonly RecipeField<Stem, double> LeafAngle = F.Usually(
        "leafAngle",
        40,
        "Angle between leaf and stem in degrees.",
        RecipeSizes.Degrees,
        stem => stem.LeafAngle
    );

    private static readonly RecipeField<Stem, double> TipScale = F.Usually(
        "diminishing",
        0.5,
        "Size of the leaves at the tip, as a share of those at the base.",
        RecipeSizes.Share,
        stem => stem.TipScale
    );

    private static readonly RecipeField<Stem, double?> BareBase = F.Maybe(
        "bareBase",
        "Length in mm at the base without leaves.",
        RecipeSizes.NotNegative,
        stem => stem.BareBase
    );

    private static readonly RecipeField<Stem, bool> TipLeaf = F.Usually(
        "tipLeaf",
        true,
        "Whether there is a leaf at the tip.",
        RecipeSizes.Flag,
        stem => stem.HasTipLeaf
    );

    private static readonly RecipeField<Stem, double?> Gap = F.Maybe(
        "gap",
        "Ground in mm between leaves and stem.",
        RecipeSizes.NotNegative,
        stem => stem.Gap == Stem.Along(stem.Path, stem.Width).Gap ? null : stem.Gap
    );

    private static readonly RecipeField<Stem, int> Seed = F.Usually(
        "seed",
        0,
        "The seed of the variation: the same gives the same leaves.",
        new CountType(int.MinValue),
        stem => stem.Seed
    );

    private static readonly RecipeField<Stem, double> Variation = F.Usually(
        "variation",
        0,
        "How much leaves vary, from 0 to 1.",
        RecipeSizes.Share,
        stem => stem.Variation
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Stem>(
        "stem",
        "A stem with leaves along a line.",
        pattern => pattern as Stem,
        new(
            Path,
            Width,
            OneLeaf,
            Spacing,
            Placing,
            LeafAngle,
            TipScale,
            BareBase,
            TipLeaf,
            Gap,
            Seed,
            Variation
        ),
        given =>
        {
            var stem = Stem.Along(given.Of(Path), given.Of(Width));
            stem = stem.WithLeaves(
                    given.Of(OneLeaf) ?? stem.Leaf,
                    given.Of(Spacing) ?? stem.Spacing
                )
                .WithPlacing(given.Of(Placing))
                .WithLeafAngle(given.Of(LeafAngle))
                .Diminishing(given.Of(TipScale))
                .WithBareBase(given.Of(BareBase) ?? stem.BareBase)
                .WithGap(given.Of(Gap) ?? stem.Gap)
                .Varied(given.Of(Seed), given.Of(Variation));
            return given.Of(TipLeaf) ? stem : stem.WithoutTipLeaf();
        }
    );
}
