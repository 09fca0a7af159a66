using F = PatternGen.RecipeFieldOf<PatternGen.Stroke>;

namespace PatternGen;

/// <summary>Tapered strokes along a line.</summary>
internal static class StrokeKind
{
    private static readonly RecipeField<Stroke, Geometry.Chain> Path = F.Needed(
        "path",
        "The line that it follows.",
        RecipeSizes.Line,
        stroke => stroke.Path
    );

    private static readonly RecipeField<Stroke, double> Width = F.Needed(
        "width",
        "Greatest width in mm.",
        RecipeSizes.Positive,
        stroke => stroke.Width
    );

    private static readonly RecipeField<Stroke, double> WidestAt = F.Usually(
        "widestAt",
        0.5,
        "Where it is widest, as a share of its length; 0 for a round head.",
        RecipeSizes.Share,
        stroke => stroke.WidestAt
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Stroke>(
        "stroke",
        "A stroke along a line, tapering to its ends.",
        pattern => pattern as Stroke,
        new(Path, Width, WidestAt),
        given =>
        {
            var stroke = Stroke.Along(given.Of(Path), given.Of(Width));
            return given.Of(WidestAt) is var share && share == 0
                ? stroke.WithRoundHead()
                : stroke.WithWidestAt(share);
        }
    );
}
