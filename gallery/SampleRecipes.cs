namespace PatternGen.Gallery;

/// <summary>The recipes that come with the program.</summary>
internal static class SampleRecipes
{
    internal static IReadOnlyList<string> Files =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "recipes"), "*.json")
                .Order(StringComparer.Ordinal),
        ];
}
