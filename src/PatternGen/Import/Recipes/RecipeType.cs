namespace PatternGen;

/// <summary>A kind of value in recipes: how it is read, written and described in the schema, side by side.</summary>
internal abstract class RecipeType<T>
{
    /// <exception cref="ImportException">It is something else.</exception>
    internal abstract T Read(RecipeValue value);

    /// <summary>Counts how many of them a list will hold, before any is read.</summary>
    internal virtual void Count(RecipeValue list, int length) { }

    internal abstract JsonText Write(T value, RecipeWriting writing);

    internal abstract JsonText Schema(SchemaDefinitions schema);
}

/// <summary>A value that may be missing.</summary>
internal sealed class NullableType<T>(RecipeType<T> type) : RecipeType<T?>
    where T : struct
{
    internal override T? Read(RecipeValue value) => type.Read(value);

    // A field that is missing is not written at all.
    internal override JsonText Write(T? value, RecipeWriting writing) =>
        type.Write(value.GetValueOrDefault(), writing);

    internal override JsonText Schema(SchemaDefinitions schema) => type.Schema(schema);
}
