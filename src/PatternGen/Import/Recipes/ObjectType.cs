namespace PatternGen;

/// <summary>Objects with fields.</summary>
/// <param name="name">What its definition is called in the schema.</param>
/// <param name="about">What it is.</param>
/// <param name="table">Its fields.</param>
/// <param name="make">Makes it of what is given; what it throws is told with the place in the file.</param>
internal sealed class ObjectType<T>(
    string name,
    string about,
    RecipeFields<T> table,
    Func<GivenFields, T> make
) : RecipeType<T>
{
    internal override T Read(RecipeValue value)
    {
        value.Reading.CountElement(value);
        var given = table.Read(value);
        return Blame.On(value, table.Has, () => make(given));
    }

    internal override JsonText Write(T value, RecipeWriting writing) =>
        JsonText.Object([.. table.Write(value, writing)]);

    internal override JsonText Schema(SchemaDefinitions schema) =>
        schema.Define(
            name,
            () => SchemaText.Object(about, [.. table.Schema(schema)], isOpen: false)
        );
}
