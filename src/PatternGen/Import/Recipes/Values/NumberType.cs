using System.Text.Json;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Numbers within limits.</summary>
internal sealed class NumberType : RecipeType<double>
{
    private readonly double _least;
    private readonly double _most;
    private readonly bool _isAbove;

    /// <param name="least">The smallest.</param>
    /// <param name="most">The largest.</param>
    /// <param name="isAbove">Whether the smallest itself is excluded.</param>
    internal NumberType(double least, double most, bool isAbove = false) =>
        (_least, _most, _isAbove) = (least, most, isAbove);

    internal override double Read(RecipeValue value)
    {
        if (value.Json.ValueKind != JsonValueKind.Number)
            throw value.Not("a number");
        // A number beyond what a double holds is read as infinite.
        if (!value.Json.TryGetDouble(out var number) || !IsWithin(number))
            throw value.Fail(
                $"The number is {RecipeValue.Shown(value.Json.GetRawText())}.",
                $"a number {(_isAbove ? "more than" : "from")} {Guard.Text(_least)} {(_isAbove ? "and at most" : "to")} {Guard.Text(_most)}"
            );
        return number;
    }

    internal override JsonText Write(double value, RecipeWriting writing) => JsonText.Of(value);

    internal override JsonText Schema(SchemaDefinitions schema) =>
        SchemaText.Typed(
            "number",
            (_isAbove ? "exclusiveMinimum" : "minimum", JsonText.Of(_least)),
            ("maximum", JsonText.Of(_most))
        );

    private bool IsWithin(double number) =>
        number <= _most && (_isAbove ? number > _least : number >= _least);
}
