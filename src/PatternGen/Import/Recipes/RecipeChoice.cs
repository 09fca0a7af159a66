namespace PatternGen;

/// <summary>Objects of several kinds, told apart by one field.</summary>
/// <param name="name">What its definition is called in the schema.</param>
/// <param name="about">What it is.</param>
/// <param name="key">The field that names the kind.</param>
/// <param name="options">The kinds; on writing, the first that can hold a value is taken.</param>
internal sealed class RecipeChoice<T>(
    string name,
    string about,
    string key,
    params RecipeKind<T>[] options
) : RecipeType<T>
{
    internal IReadOnlyList<RecipeKind<T>> Kinds => options;

    internal override T Read(RecipeValue value) => Read(value, []);

    /// <summary>Reads an object of which others read some members.</summary>
    internal T Read(RecipeValue value, params ReadOnlySpan<string> besides)
    {
        value.Reading.CountElement(value);
        if (value.Json.ValueKind != System.Text.Json.JsonValueKind.Object)
            throw value.Not(about);
        if (!value.Json.TryGetProperty(key, out var json))
            throw value.Fail(
                $"The field \"{key}\" is missing.",
                $"\"{key}\": one of {string.Join(", ", options.Select(known => $"\"{known.Name}\""))}"
            );
        var kind = value.Member(key, json);
        var text = kind.Text("the name of a kind");
        var option =
            Array.Find(options, known => known.Name == text)
            ?? throw kind.Fail(
                $"There is no \"{RecipeValue.Shown(text)}\" here.",
                NearestName.Remedy(text, [.. options.Select(known => known.Name)], "one of these")
            );
        return option.Read(value, [key, .. besides]);
    }

    internal override JsonText Write(T value, RecipeWriting writing) =>
        JsonText.Object(Members(value, writing));

    internal List<(string, JsonText)> Members(T value, RecipeWriting writing)
    {
        var option = Array.Find(options, known => known.Holds(value))!;
        return [(key, JsonText.Of(option.Name)), .. option.Write(value, writing)];
    }

    internal override JsonText Schema(SchemaDefinitions schema) => Schema(schema, isOpen: false);

    /// <param name="schema">The definitions.</param>
    /// <param name="isOpen">Whether other members are described elsewhere.</param>
    internal JsonText Schema(SchemaDefinitions schema, bool isOpen) =>
        schema.Define(
            name,
            () =>
                SchemaText.OneOf(
                    about,
                    [.. options.Select(option => option.Schema(schema, name, key, isOpen))]
                )
        );
}

/// <summary>One kind of a choice.</summary>
internal abstract class RecipeKind<T>(string name, string about)
{
    internal string Name { get; } = name;

    internal string About { get; } = about;

    /// <summary>Whether it can say a value exactly.</summary>
    internal abstract bool Holds(T value);

    internal abstract T Read(RecipeValue value, params ReadOnlySpan<string> besides);

    internal abstract IEnumerable<(string, JsonText)> Write(T value, RecipeWriting writing);

    internal abstract JsonText Schema(
        SchemaDefinitions schema,
        string family,
        string key,
        bool isOpen
    );
}

/// <inheritdoc/>
/// <typeparam name="T">What the choice is among.</typeparam>
/// <typeparam name="TOwner">What the fields are asked of.</typeparam>
/// <param name="name">What the file calls it.</param>
/// <param name="about">What it is.</param>
/// <param name="owner">What of a value the fields are asked of; null if this kind can't say the value.</param>
/// <param name="table">The fields.</param>
/// <param name="make">Makes it of what is given.</param>
internal sealed class RecipeKind<T, TOwner>(
    string name,
    string about,
    Func<T, TOwner?> owner,
    RecipeFields<TOwner> table,
    Func<GivenFields, RecipeReading, T> make
) : RecipeKind<T>(name, about)
    where TOwner : class
{
    internal RecipeKind(
        string name,
        string about,
        Func<T, TOwner?> owner,
        RecipeFields<TOwner> table,
        Func<GivenFields, T> make
    )
        : this(name, about, owner, table, (given, _) => make(given)) { }

    internal override bool Holds(T value) => owner(value) is not null;

    internal override T Read(RecipeValue value, params ReadOnlySpan<string> besides)
    {
        var given = table.Read(value, besides);
        return Blame.On(value, table.Has, () => make(given, value.Reading));
    }

    internal override IEnumerable<(string, JsonText)> Write(T value, RecipeWriting writing) =>
        table.Write(owner(value)!, writing);

    internal override JsonText Schema(
        SchemaDefinitions schema,
        string family,
        string key,
        bool isOpen
    ) =>
        schema.Define(
            $"{family}-{Name}",
            () =>
                SchemaText.Object(
                    About,
                    [(key, true, SchemaText.Constant(Name)), .. table.Schema(schema)],
                    isOpen
                )
        );
}
