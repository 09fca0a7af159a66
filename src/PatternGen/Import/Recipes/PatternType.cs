namespace PatternGen;

/// <summary>Patterns in recipes: a kind with its fields, and under "then" what is done to it, in order.</summary>
internal sealed class PatternType : RecipeType<Pattern>
{
    internal const string Key = "kind";

    internal static readonly PatternType Instance = new();

    internal override Pattern Read(RecipeValue value) => Read(value, []);

    /// <summary>Reads a pattern whose object holds other members too.</summary>
    internal Pattern Read(RecipeValue value, string[] besides) =>
        value.Reading.Within(
            value,
            besides.Length == 0,
            () =>
            {
                var drawn = value.Reading.Accept(
                    value,
                    () => Known.Kinds.Read(value, [Known.Then.Name, .. besides])
                );
                if (!value.Json.TryGetProperty(Known.Then.Name, out var json))
                    return drawn;
                var steps = value.Member(Known.Then.Name, json);
                var number = 0;
                foreach (var step in (IReadOnlyList<RecipeStep>)Known.Then.Read(steps)!)
                {
                    var place = steps.Item(number, json[number]);
                    var before = drawn;
                    drawn = value.Reading.Accept(
                        place,
                        () => Blame.On(place, _ => false, () => step.Do(before))
                    );
                    number++;
                }
                return drawn;
            }
        );

    internal override JsonText Write(Pattern value, RecipeWriting writing) =>
        writing.Use(value, () => JsonText.Object(Members(value, writing)));

    /// <summary>The members of a pattern's object.</summary>
    internal List<(string, JsonText)> Members(Pattern pattern, RecipeWriting writing)
    {
        var (drawn, steps) = RecipeStep.Apart(pattern, writing);
        var members =
            drawn != pattern && writing.NameOf(drawn) is { } name
                ? [(Key, JsonText.Of(SharedKind.Key)), (SharedKind.Name.Name, JsonText.Of(name))]
                : Known.Kinds.Members(drawn, writing);
        return [.. members, .. Known.Table.Write(steps, writing)];
    }

    internal override JsonText Schema(SchemaDefinitions schema) =>
        JsonText.Object(
            ("$ref", JsonText.Of(OpenSchema(schema))),
            ("unevaluatedProperties", JsonText.Of(false))
        );

    /// <summary>The definition of what all patterns have, to which other members may be added.</summary>
    internal static string OpenSchema(SchemaDefinitions schema)
    {
        schema.Define(
            "any-pattern",
            () =>
                JsonText.Object(
                    ("description", JsonText.Of("A pattern.")),
                    ("type", JsonText.Of("object")),
                    (
                        "properties",
                        JsonText.Object([
                            .. Known
                                .Table.Schema(schema)
                                .Select(field => (field.Name, field.Schema)),
                        ])
                    ),
                    ("allOf", JsonText.List(Known.Kinds.Schema(schema, isOpen: true)))
                )
        );
        return "#/$defs/any-pattern";
    }

    /// <summary>Made when first asked for, since kinds and steps hold patterns in their turn.</summary>
    private static class Known
    {
        internal static readonly RecipeChoice<Pattern> Kinds = new(
            "pattern",
            "a pattern",
            Key,
            [.. PatternKinds.All]
        );

        internal static readonly RecipeField<
            IReadOnlyList<RecipeStep>,
            IReadOnlyList<RecipeStep>?
        > Then = RecipeFieldOf<IReadOnlyList<RecipeStep>>.Maybe(
            "then",
            "What is done to the pattern, in this order.",
            new ListType<RecipeStep>(
                RecipeSteps.Type,
                "a list of steps",
                most: RecipeReading.HighestTree
            ),
            steps => steps.Count > 0 ? steps : null
        );

        internal static readonly RecipeFields<IReadOnlyList<RecipeStep>> Table = new(Then);
    }
}
