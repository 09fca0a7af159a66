using System.Text.Json;

namespace PatternGen;

/// <summary>Yes or no.</summary>
internal sealed class FlagType : RecipeType<bool>
{
    internal override bool Read(RecipeValue value) =>
        value.Json.ValueKind switch
        {
            JsonValueKind.True => true,
            JsonValueKind.False => false,
            _ => throw value.Not("true or false"),
        };

    internal override JsonText Write(bool value, RecipeWriting writing) => JsonText.Of(value);

    internal override JsonText Schema(SchemaDefinitions schema) => SchemaText.Typed("boolean");
}

/// <summary>Texts that are not blank.</summary>
internal sealed class TextType : RecipeType<string>
{
    internal override string Read(RecipeValue value)
    {
        var text = value.Text("a text");
        return string.IsNullOrWhiteSpace(text)
            ? throw value.Fail("The text is blank.", "a text with at least one letter")
            : text;
    }

    internal override JsonText Write(string value, RecipeWriting writing) => JsonText.Of(value);

    internal override JsonText Schema(SchemaDefinitions schema) =>
        SchemaText.Typed("string", ("pattern", JsonText.Of("\\S")));
}

/// <summary>Named values, written in small letters: <c>half-turn</c>.</summary>
internal sealed class WordType<T> : RecipeType<T>
    where T : struct, Enum
{
    private static readonly T[] Values = Enum.GetValues<T>();

    internal override T Read(RecipeValue value)
    {
        var text = value.Text("a word");
        var found = Array.FindIndex(Values, known => CodeNames.Of(known) == text);
        return found >= 0
            ? Values[found]
            : throw value.Fail(
                $"There is no \"{RecipeValue.Shown(text)}\" here.",
                NearestName.Remedy(text, [.. Values.Select(CodeNames.Of)], "one of these")
            );
    }

    internal override JsonText Write(T value, RecipeWriting writing) =>
        JsonText.Of(CodeNames.Of(value));

    internal override JsonText Schema(SchemaDefinitions schema) =>
        SchemaText.OneOfWords(Values.Select(CodeNames.Of));
}
