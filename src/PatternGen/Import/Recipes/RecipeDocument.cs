using F = PatternGen.RecipeFieldOf<PatternGen.RecipeDocument>;

namespace PatternGen;

/// <summary>The whole of a recipe: what stands besides the outermost pattern in its object.</summary>
internal sealed record RecipeDocument(IReadOnlyList<(string Name, JsonText Pattern)> Shared)
{
    internal const int Version = 1;

    private const string SharedName = "shared";

    private static readonly RecipeField<RecipeDocument, int> Format = F.Needed(
        "patterngen",
        "Version of the format: 1.",
        new CountType(1),
        _ => Version
    );

    private static readonly RecipeField<RecipeDocument, string?> Schema = F.Maybe(
        "$schema",
        "Where editors find this schema; not read.",
        RecipeSizes.Text,
        _ => null
    );

    private static readonly RecipeFields<RecipeDocument> Table = new(Schema, Format);

    private static readonly RecipeFields<SharedPattern> SharedTable = new(
        SharedPattern.Key,
        SharedPattern.Described
    );

    internal static JsonText Write(Pattern pattern)
    {
        // An impossible pattern is refused now, not when it is read.
        _ = pattern.Root;
        var writing = new RecipeWriting();
        var members = writing.Outermost(pattern);
        List<(string, JsonText)> all = [.. Table.Write(new(writing.Shared), writing)];
        if (writing.Shared.Count > 0)
            all.Add(
                (
                    SharedName,
                    JsonText.List(
                        writing.Shared.Select(shared =>
                            JsonText.Object(
                                (SharedPattern.Key.Name, JsonText.Of(shared.Name)),
                                (SharedPattern.Described.Name, shared.Pattern)
                            )
                        )
                    )
                )
            );
        return JsonText.Object([.. all, .. members]);
    }

    internal static Pattern Read(RecipeValue value)
    {
        if (value.Json.ValueKind != System.Text.Json.JsonValueKind.Object)
            throw value.Not("an object");
        ReadVersion(value);
        if (value.Json.TryGetProperty(SharedName, out var shared))
            ReadShared(value.Member(SharedName, shared));
        var pattern = PatternType.Instance.Read(value, [Schema.Name, Format.Name, SharedName]);
        // Placed too far away, its coordinates could not be written.
        Blame.On(value, _ => false, () => pattern.Extents);
        return pattern;
    }

    /// <summary>The schema of all recipes of this version.</summary>
    internal static JsonText WriteSchema()
    {
        var schema = new SchemaDefinitions();
        var pattern = PatternType.OpenSchema(schema);
        List<(string, JsonText)> members =
        [
            .. Table.Schema(schema).Select(field => (field.Name, field.Schema)),
            (
                SharedName,
                SchemaText.Typed(
                    "array",
                    (
                        "description",
                        JsonText.Of(
                            "Patterns that are used more than once, each by those after it and by the recipe."
                        )
                    ),
                    (
                        "items",
                        SchemaText.Object(
                            "A pattern and the name to use it by.",
                            [.. SharedTable.Schema(schema)],
                            isOpen: false
                        )
                    )
                )
            ),
        ];
        return JsonText.Object(
            ("$schema", JsonText.Of("https://json-schema.org/draft/2020-12/schema")),
            ("$id", JsonText.Of($"urn:patterngen:recipe:{Version}")),
            ("title", JsonText.Of("PatternGen recipe")),
            (
                "description",
                JsonText.Of(
                    "A chip-carving pattern. Lengths are millimetres, x to the right and y up; angles are degrees, counter-clockwise."
                )
            ),
            ("type", JsonText.Of("object")),
            ("properties", JsonText.Object(members)),
            ("required", JsonText.List(JsonText.Of(Format.Name))),
            ("$ref", JsonText.Of(pattern)),
            ("unevaluatedProperties", JsonText.Of(false)),
            ("$defs", JsonText.Object([.. schema.All]))
        );
    }

    private static void ReadVersion(RecipeValue value)
    {
        if (!value.Json.TryGetProperty(Format.Name, out var json))
            throw value.Fail(
                "This is no recipe: it does not say of which version it is.",
                $"\"{Format.Name}\": {Version}"
            );
        var place = value.Member(Format.Name, json);
        var version = (int)Format.Read(place)!;
        if (version != Version)
            throw place.Fail(
                $"The recipe is of version {version}, but this library reads version {Version}.",
                "a newer release of the library"
            );
        if (value.Json.TryGetProperty(Schema.Name, out var schema))
            Schema.Read(value.Member(Schema.Name, schema));
    }

    private static void ReadShared(RecipeValue list)
    {
        if (list.Json.ValueKind != System.Text.Json.JsonValueKind.Array)
            throw list.Not("a list of patterns with names");
        var number = 0;
        foreach (var json in list.Json.EnumerateArray())
        {
            var item = list.Item(number++, json);
            item.Reading.CountElement(item);
            var given = SharedTable.Read(item);
            var name = given.Of(SharedPattern.Key);
            if (!item.Reading.Share(name, given.Of(SharedPattern.Described)))
                throw item.Fail(
                    $"Two shared patterns have the name \"{RecipeValue.Shown(name)}\".",
                    "a name for each"
                );
        }
    }

    private sealed record SharedPattern(string Name, Pattern Pattern)
    {
        internal static readonly RecipeField<SharedPattern, string> Key =
            RecipeFieldOf<SharedPattern>.Needed(
                "name",
                "The name to use it by.",
                RecipeSizes.Text,
                shared => shared.Name
            );

        internal static readonly RecipeField<SharedPattern, Pattern> Described =
            RecipeFieldOf<SharedPattern>.Needed<Pattern>(
                "pattern",
                "The pattern; it may use those before it.",
                PatternType.Instance,
                shared => shared.Pattern
            );
    }
}
