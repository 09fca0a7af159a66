namespace PatternGen;

public static partial class Import
{
    /// <inheritdoc cref="PatternGen.Recipe.Load(string, ImportLimits)"/>
    /// <returns>The recipe, whose <see cref="PatternGen.Recipe.Pattern"/> can be saved, inspected and planned like any.</returns>
    public static Recipe Recipe(string path, ImportLimits? limits = null) =>
        PatternGen.Recipe.Load(path, limits);
}
