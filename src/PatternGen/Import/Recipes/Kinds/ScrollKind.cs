using F = PatternGen.RecipeFieldOf<PatternGen.Scroll>;

namespace PatternGen;

/// <summary>Scrolls.</summary>
internal static class ScrollKind
{
    private static readonly RecipeField<Scroll, double> Radius = F.Needed(
        "radius",
        "Radius in mm where it starts.",
        RecipeSizes.Positive,
        scroll => scroll.Radius
    );

    private static readonly RecipeField<Scroll, double> Turns = F.Usually(
        "turns",
        1.5,
        "Number of turns.",
        RecipeSizes.Positive,
        scroll => scroll.Turns
    );

    private static readonly RecipeField<Scroll, double?> Factor = F.Maybe(
        "factor",
        "Share of the radius that is left after a turn.",
        RecipeSizes.Share,
        scroll => scroll.Factor == Scroll.Of(scroll.Radius).Factor ? null : scroll.Factor
    );

    private static readonly RecipeField<Scroll, double?> Width = F.Maybe(
        "width",
        "Greatest width in mm; as much as leaves a ridge if left out.",
        RecipeSizes.Positive,
        scroll => scroll.Width
    );

    private static readonly RecipeField<Scroll, double?> Eye = F.Maybe(
        "eye",
        "Radius of the eye in mm, 0 for none; what there is room for if left out.",
        RecipeSizes.NotNegative,
        scroll => scroll.EyeRadius
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Scroll>(
        "scroll",
        "A spiral stroke round an eye.",
        pattern => pattern as Scroll,
        new(Radius, Turns, Factor, Width, Eye),
        given =>
        {
            var scroll = Scroll.Of(given.Of(Radius), given.Of(Turns));
            if (given.Of(Factor) is { } factor)
                scroll = scroll.WithFactor(factor);
            if (given.Of(Width) is { } width)
                scroll = scroll.WithWidth(width);
            return given.Of(Eye) is { } eye ? scroll.WithEye(eye) : scroll;
        }
    );
}
