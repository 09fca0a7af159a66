namespace PatternGen;

/// <summary>A pattern that is described once, under "shared", and used by name.</summary>
internal static class SharedKind
{
    internal const string Key = "shared";

    internal static readonly RecipeField<Pattern, string> Name = RecipeFieldOf<Pattern>.Needed(
        "name",
        "The name under which it stands in the list \"shared\".",
        RecipeSizes.Text,
        pattern => pattern.Name ?? ""
    );

    /// <summary>Written by <see cref="RecipeWriting"/>, which knows the names; so no pattern is of this kind by itself.</summary>
    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Pattern>(
        Key,
        "A pattern that the list \"shared\" of the recipe describes, and that may be used many times.",
        _ => null,
        new(Name),
        (given, reading) => reading.Used(given.Of(Name))
    );
}
