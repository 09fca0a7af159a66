using System.Text.Json;

namespace PatternGen;

/// <summary>Lists of values of one type.</summary>
/// <param name="item">The type.</param>
/// <param name="wanted">What it is a list of, for messages: "a list of rows".</param>
/// <param name="least">The fewest items.</param>
/// <param name="most">The most.</param>
internal sealed class ListType<T>(
    RecipeType<T> item,
    string wanted,
    int least = 0,
    int most = int.MaxValue
) : RecipeType<IReadOnlyList<T>>
{
    internal override IReadOnlyList<T> Read(RecipeValue value)
    {
        if (value.Json.ValueKind != JsonValueKind.Array)
            throw value.Not(wanted);
        var length = value.Json.GetArrayLength();
        if (length < least || length > most)
            throw value.Fail(
                $"The list has {length} items.",
                most == int.MaxValue ? $"{least} or more" : $"{least} to {most} items"
            );
        item.Count(value, length);
        var items = new List<T>(length);
        foreach (var json in value.Json.EnumerateArray())
            items.Add(item.Read(value.Item(items.Count, json)));
        return items;
    }

    internal override JsonText Write(IReadOnlyList<T> value, RecipeWriting writing) =>
        JsonText.List(value.Select(each => item.Write(each, writing)));

    internal override JsonText Schema(SchemaDefinitions schema)
    {
        List<(string, JsonText)> rules = [("items", item.Schema(schema))];
        if (least > 0)
            rules.Add(("minItems", JsonText.Of(least)));
        if (most < int.MaxValue)
            rules.Add(("maxItems", JsonText.Of(most)));
        return SchemaText.Typed("array", [.. rules]);
    }
}
