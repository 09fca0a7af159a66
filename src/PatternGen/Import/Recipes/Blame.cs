namespace PatternGen;

/// <summary>Tells errors of the library with the place in the recipe that asked for the impossible.</summary>
internal static class Blame
{
    /// <param name="value">The object that is being made.</param>
    /// <param name="isField">Whether it has a field of a name.</param>
    /// <param name="make">Makes it.</param>
    /// <exception cref="ImportException">It can't be made so.</exception>
    internal static T On<T>(RecipeValue value, Func<string, bool> isField, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (PatternException error)
        {
            throw new ImportException(error.Problem, value.Path, error.Remedies, error);
        }
        catch (InvalidOperationException error)
        {
            // What no rule foresees of sizes far from any wood, such as a vector that rounding leaves without a length.
            throw new ImportException(error.Message, value.Path, inner: error);
        }
        catch (ArgumentException error)
        {
            var where =
                error.ParamName is { } name && isField(name) ? value.PathOf(name) : value.Path;
            throw new ImportException(Plain(error), where, inner: error);
        }
    }

    /// <summary>The message as its author wrote it, without what the framework adds.</summary>
    private static string Plain(ArgumentException error)
    {
        var line = error.Message.Split('\n', 2)[0].TrimEnd();
        var added = $" (Parameter '{error.ParamName}')";
        return line.EndsWith(added, StringComparison.Ordinal) ? line[..^added.Length] : line;
    }
}
