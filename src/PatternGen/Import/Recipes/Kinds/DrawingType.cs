namespace PatternGen;

/// <summary>Compass drawings: rosettes by how they are made, others by their lines.</summary>
internal sealed class DrawingType : RecipeType<CompassDrawing>
{
    internal static readonly DrawingType Instance = new();

    internal override CompassDrawing Read(RecipeValue value) =>
        value.Reading.Drawing(value.Json.GetRawText(), () => Known.Kinds.Read(value));

    internal override JsonText Write(CompassDrawing value, RecipeWriting writing) =>
        Known.Kinds.Write(value, writing);

    internal override JsonText Schema(SchemaDefinitions schema) => Known.Kinds.Schema(schema);

    /// <summary>Made when first asked for, since rosettes hold rosettes.</summary>
    private static class Known
    {
        internal static readonly RecipeChoice<CompassDrawing> Kinds = new(
            "drawing",
            "a compass drawing",
            "kind",
            [.. RosetteKinds.All, LinesKind.Kind]
        );
    }
}
