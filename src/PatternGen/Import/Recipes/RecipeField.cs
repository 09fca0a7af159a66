namespace PatternGen;

/// <summary>A named value of an object in recipes: one declaration for reading, writing and the schema.</summary>
/// <typeparam name="TOwner">What the value is asked of when it is written.</typeparam>
internal abstract class RecipeField<TOwner>(string name, string about, bool isNeeded)
{
    internal string Name { get; } = name;

    /// <summary>What it is, for readers of the schema.</summary>
    internal string About { get; } = about;

    internal bool IsNeeded { get; } = isNeeded;

    internal abstract object? Read(RecipeValue value);

    /// <summary>Returns null if the owner has what goes without saying.</summary>
    internal abstract JsonText? Write(TOwner owner, RecipeWriting writing);

    internal abstract JsonText Schema(SchemaDefinitions schema);
}

/// <inheritdoc/>
/// <param name="name">The name in the file.</param>
/// <param name="about">What it is, for readers of the schema.</param>
/// <param name="type">What kind of value it is.</param>
/// <param name="get">Asks the owner for it.</param>
/// <param name="isNeeded">Whether it must be there.</param>
/// <param name="usual">What holds where it is left out.</param>
internal sealed class RecipeField<TOwner, T>(
    string name,
    string about,
    RecipeType<T> type,
    Func<TOwner, T> get,
    bool isNeeded,
    T usual
) : RecipeField<TOwner>(name, about, isNeeded)
{
    internal T Usual => usual;

    internal override object? Read(RecipeValue value) => type.Read(value);

    internal override JsonText? Write(TOwner owner, RecipeWriting writing)
    {
        var value = get(owner);
        if (!IsNeeded && EqualityComparer<T>.Default.Equals(value, usual))
            return null;
        var text = type.Write(value, writing);
        // An object that says nothing says what goes without saying.
        return !IsNeeded && text.IsEmptyObject ? null : text;
    }

    internal override JsonText Schema(SchemaDefinitions schema) => type.Schema(schema);
}

/// <summary>Declares fields.</summary>
/// <typeparam name="TOwner">What the values are asked of when they are written.</typeparam>
internal static class RecipeFieldOf<TOwner>
{
    internal static RecipeField<TOwner, T> Needed<T>(
        string name,
        string about,
        RecipeType<T> type,
        Func<TOwner, T> get
    ) => new(name, about, type, get, true, default!);

    /// <summary>A field that may be left out, with what then holds.</summary>
    internal static RecipeField<TOwner, T> Usually<T>(
        string name,
        T usual,
        string about,
        RecipeType<T> type,
        Func<TOwner, T> get
    ) => new(name, about, type, get, false, usual);

    /// <summary>A field that may be left out, which is null then.</summary>
    internal static RecipeField<TOwner, T?> Maybe<T>(
        string name,
        string about,
        RecipeType<T> type,
        Func<TOwner, T?> get
    )
        where T : class => new(name, about, type!, get, false, null);

    /// <inheritdoc cref="Maybe{T}(string, string, RecipeType{T}, Func{TOwner, T})"/>
    internal static RecipeField<TOwner, T?> Maybe<T>(
        string name,
        string about,
        RecipeType<T> type,
        Func<TOwner, T?> get
    )
        where T : struct => new(name, about, new NullableType<T>(type), get, false, null);
}
