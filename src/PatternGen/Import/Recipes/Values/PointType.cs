using System.Text.Json;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Corners: x and y in mm, and the bulge of the side that starts there unless it is straight.</summary>
internal sealed class CornerType : RecipeType<Vertex>
{
    internal override Vertex Read(RecipeValue value)
    {
        var numbers = RecipeList.Of(value, 2, 3, "a corner: [x, y] or [x, y, bulge]");
        var x = RecipeSizes.Coordinate.Read(numbers[0]);
        var y = RecipeSizes.Coordinate.Read(numbers[1]);
        return new(x, y, numbers.Length > 2 ? RecipeSizes.Bulge.Read(numbers[2]) : 0);
    }

    internal override void Count(RecipeValue list, int length) =>
        list.Reading.CountSegments(list, length);

    internal override JsonText Write(Vertex value, RecipeWriting writing)
    {
        var (x, y) = (JsonText.Of(value.Point.X), JsonText.Of(value.Point.Y));
        return value.Bulge == 0
            ? JsonText.List(x, y)
            : JsonText.List(x, y, JsonText.Of(value.Bulge));
    }

    internal override JsonText Schema(SchemaDefinitions schema) =>
        schema.Define(
            "corner",
            () =>
                SchemaText.About(
                    "x and y in mm; then, unless the side to the next corner is straight, its bulge: the tangent of a quarter of its sweep, positive counter-clockwise.",
                    SchemaText.Tuple(
                        2,
                        RecipeSizes.Coordinate.Schema(schema),
                        RecipeSizes.Coordinate.Schema(schema),
                        RecipeSizes.Bulge.Schema(schema)
                    )
                )
        );
}

/// <summary>Points: x and y in mm.</summary>
internal sealed class PointType : RecipeType<Point>
{
    internal override Point Read(RecipeValue value)
    {
        var numbers = RecipeList.Of(value, 2, 2, "a point: [x, y]");
        return new(
            RecipeSizes.Coordinate.Read(numbers[0]),
            RecipeSizes.Coordinate.Read(numbers[1])
        );
    }

    internal override JsonText Write(Point value, RecipeWriting writing) =>
        JsonText.List(JsonText.Of(value.X), JsonText.Of(value.Y));

    internal override JsonText Schema(SchemaDefinitions schema) =>
        SchemaText.Tuple(
            2,
            RecipeSizes.Coordinate.Schema(schema),
            RecipeSizes.Coordinate.Schema(schema)
        );
}

/// <summary>Two numbers that belong together.</summary>
internal sealed class PairType(RecipeType<double> each, string wanted)
    : RecipeType<(double First, double Second)>
{
    internal override (double, double) Read(RecipeValue value)
    {
        var numbers = RecipeList.Of(value, 2, 2, wanted);
        return (each.Read(numbers[0]), each.Read(numbers[1]));
    }

    internal override JsonText Write((double First, double Second) value, RecipeWriting writing) =>
        JsonText.List(each.Write(value.First, writing), each.Write(value.Second, writing));

    internal override JsonText Schema(SchemaDefinitions schema) =>
        SchemaText.Tuple(2, each.Schema(schema), each.Schema(schema));
}

/// <summary>Reads short lists.</summary>
internal static class RecipeList
{
    internal static RecipeValue[] Of(RecipeValue value, int least, int most, string wanted)
    {
        if (value.Json.ValueKind != JsonValueKind.Array)
            throw value.Not(wanted);
        var length = value.Json.GetArrayLength();
        if (length < least || length > most)
            throw value.Fail($"The list has {length} items.", wanted);
        return [.. value.Json.EnumerateArray().Select((json, i) => value.Item(i, json))];
    }
}
