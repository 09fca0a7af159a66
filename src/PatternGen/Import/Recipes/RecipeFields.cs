using System.Text.Json;

namespace PatternGen;

/// <summary>The fields of an object in recipes.</summary>
/// <remarks>A field that is unknown, twice there or missing is an error, so that a slip of the pen never goes unnoticed.</remarks>
internal sealed class RecipeFields<TOwner>(params RecipeField<TOwner>[] fields)
{
    /// <summary>Reads all fields of an object.</summary>
    /// <param name="value">The object.</param>
    /// <param name="besides">Members that others read.</param>
    internal GivenFields Read(RecipeValue value, params ReadOnlySpan<string> besides)
    {
        var given = new Dictionary<object, object?>(ReferenceEqualityComparer.Instance);
        foreach (var (name, member) in Members(value))
        {
            if (Array.Find(fields, field => field.Name == name) is { } field)
                given[field] = field.Read(value.Member(name, member));
            else if (!besides.Contains(name))
                throw Unknown(value, name, [.. fields.Select(known => known.Name), .. besides]);
        }
        foreach (var field in fields)
            if (field.IsNeeded && !given.ContainsKey(field))
                throw value.Fail(
                    $"The field \"{field.Name}\" is missing.",
                    $"\"{field.Name}\": {field.About}"
                );
        return new(given);
    }

    internal IEnumerable<(string, JsonText)> Write(TOwner owner, RecipeWriting writing)
    {
        foreach (var field in fields)
            if (field.Write(owner, writing) is { } text)
                yield return (field.Name, text);
    }

    internal bool Has(string name) => Array.Exists(fields, field => field.Name == name);

    /// <summary>Names, whether each must be there, and their schemas.</summary>
    internal IEnumerable<(string Name, bool IsNeeded, JsonText Schema)> Schema(
        SchemaDefinitions schema
    ) =>
        fields.Select(field =>
            (field.Name, field.IsNeeded, SchemaText.About(field.About, field.Schema(schema)))
        );

    /// <summary>The members of an object, each name once.</summary>
    private static IEnumerable<(string Name, JsonElement Json)> Members(RecipeValue value)
    {
        if (value.Json.ValueKind != JsonValueKind.Object)
            throw value.Not("an object");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in value.Json.EnumerateObject())
        {
            var name = member.Name;
            if (!seen.Add(name))
                throw new ImportException(
                    $"The field \"{RecipeValue.Shown(name)}\" stands here twice.",
                    value.PathOf(name),
                    ["one of them"]
                );
            yield return (name, member.Value);
        }
    }

    private static ImportException Unknown(RecipeValue value, string name, string[] known)
    {
        var shown = RecipeValue.Shown(name);
        return new(
            $"There is no field \"{shown}\" here.",
            value.PathOf(name),
            [NearestName.Remedy(name, known, "a field that is known here")]
        );
    }
}

/// <summary>What an object in a recipe says.</summary>
internal sealed class GivenFields(Dictionary<object, object?> given)
{
    /// <summary>The value of a field, or what goes without saying.</summary>
    internal T Of<TOwner, T>(RecipeField<TOwner, T> field) =>
        given.TryGetValue(field, out var value) ? (T)value! : field.Usual;

    internal bool Has<TOwner>(RecipeField<TOwner> field) => given.ContainsKey(field);
}
