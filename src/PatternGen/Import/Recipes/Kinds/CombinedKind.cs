namespace PatternGen;

/// <summary>Patterns put together.</summary>
internal static class CombinedKind
{
    private static readonly RecipeField<CombinedOrigin, IReadOnlyList<Pattern>> Parts =
        RecipeFieldOf<CombinedOrigin>.Needed(
            "parts",
            "The patterns, in the order drawn.",
            new ListType<Pattern>(PatternType.Instance, "a list of patterns"),
            combined => combined.Parts
        );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, CombinedOrigin>(
        "combined",
        "Several patterns together, drawn in the order given.",
        pattern => (pattern as DrawnPattern)?.Origin as CombinedOrigin,
        new(Parts),
        (given, reading) =>
        {
            var parts = given.Of(Parts);
            reading.RefuseTooMany(parts);
            return Pattern.Combine(parts);
        }
    );
}
