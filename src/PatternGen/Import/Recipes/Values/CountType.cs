using System.Text.Json;

namespace PatternGen;

/// <summary>Whole numbers within limits.</summary>
internal sealed class CountType(int least, int most = int.MaxValue) : RecipeType<int>
{
    internal override int Read(RecipeValue value)
    {
        if (value.Json.ValueKind != JsonValueKind.Number)
            throw value.Not("a whole number");
        // As a double first: 5.0 and 5e0 are whole numbers too.
        if (
            !value.Json.TryGetDouble(out var number)
            || number != Math.Floor(number)
            || number < least
            || number > most
        )
            throw value.Fail(
                $"The number is {RecipeValue.Shown(value.Json.GetRawText())}.",
                $"a whole number from {least} to {most}"
            );
        return (int)number;
    }

    internal override JsonText Write(int value, RecipeWriting writing) => JsonText.Of(value);

    internal override JsonText Schema(SchemaDefinitions schema) =>
        SchemaText.Typed(
            "integer",
            ("minimum", JsonText.Of(least)),
            ("maximum", JsonText.Of(most))
        );
}
