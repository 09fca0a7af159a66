using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Saves patterns as recipes.</summary>
public static class RecipeSaving
{
    /// <summary>Returns the pattern as a recipe.</summary>
    /// <remarks>
    /// A pattern with chips of its own is said by their outlines; what a lambda chose, by what it chose. Caption and files of
    /// the rebuilt pattern are the same to the byte.
    /// </remarks>
    public static Recipe ToRecipe(this Pattern pattern) => new(Guard.NotNull(pattern));

    /// <summary>Saves the pattern as a recipe: <c>border.SaveRecipe("rail.json")</c>, to be read by <see cref="Recipe.Load(string, ImportLimits)"/>.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="path">The file, usually .json.</param>
    /// <exception cref="PatternException">The pattern is impossible as designed.</exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static void SaveRecipe(this Pattern pattern, string path) =>
        pattern.ToRecipe().Save(path);

    /// <inheritdoc cref="SaveRecipe(Pattern, string)"/>
    /// <param name="pattern">The pattern.</param>
    /// <param name="stream">Any writable stream; it stays open.</param>
    public static void SaveRecipe(this Pattern pattern, Stream stream) =>
        pattern.ToRecipe().Save(stream);
}
