using System.Text.Json;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Angles: a number of degrees, or an object with radians where no number of degrees is the same angle to the last digit.</summary>
internal sealed class AngleType : RecipeType<Angle>
{
    private const string Wanted = "a number of degrees";

    private static readonly NumberType Number = new(-1e9, 1e9);

    private static readonly RecipeFields<Exact> Table = new(Exact.Radians);

    internal override Angle Read(RecipeValue value) =>
        value.Json.ValueKind switch
        {
            JsonValueKind.Number => Angle.FromDegrees(Number.Read(value)),
            JsonValueKind.Object => Angle.FromRadians(Table.Read(value).Of(Exact.Radians)),
            _ => throw value.Not(Wanted),
        };

    internal override JsonText Write(Angle value, RecipeWriting writing) =>
        DegreesOf(value) is { } degrees
            ? JsonText.Of(degrees)
            : JsonText.Object([.. Table.Write(new(value), writing)]);

    internal override JsonText Schema(SchemaDefinitions schema) =>
        schema.Define(
            "angle",
            () =>
                SchemaText.OneOf(
                    "Degrees, counter-clockwise; or an object with radians.",
                    Number.Schema(schema),
                    SchemaText.Object("Radians.", [.. Table.Schema(schema)], isOpen: false)
                )
        );

    /// <summary>The degrees that give the same angle to the last digit: round ones if there are, else those next to the quotient.</summary>
    internal static double? DegreesOf(Angle angle)
    {
        var near = angle.Degrees;
        if (Math.Abs(near) > 1e9)
            return null;
        if (Angle.FromDegrees(Math.Round(near, 9)) == angle)
            return Math.Round(near, 9);
        // There and back rounds four times, by half a unit of the last place each.
        var degrees = Math.BitDecrement(Math.BitDecrement(near));
        for (var i = 0; i < 5; i++, degrees = Math.BitIncrement(degrees))
            if (Angle.FromDegrees(degrees) == angle)
                return degrees;
        return null;
    }

    private sealed record Exact(Angle Angle)
    {
        internal static readonly RecipeField<Exact, double> Radians = RecipeFieldOf<Exact>.Needed(
            "radians",
            "The angle in radians.",
            new NumberType(-1e9, 1e9),
            exact => exact.Angle.Radians
        );
    }
}
