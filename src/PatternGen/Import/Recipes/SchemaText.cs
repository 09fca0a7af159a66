namespace PatternGen;

/// <summary>Pieces of the JSON Schema, draft 2020-12.</summary>
/// <remarks>A. Wright, H. Andrews, B. Hutton: JSON Schema, draft-bhutton-json-schema-01 and -validation-01 (2022).</remarks>
internal static class SchemaText
{
    internal static JsonText Typed(string type, params (string, JsonText)[] rules) =>
        JsonText.Object([("type", JsonText.Of(type)), .. rules]);

    internal static JsonText Constant(string word) => JsonText.Object(("const", JsonText.Of(word)));

    internal static JsonText OneOfWords(IEnumerable<string> words) =>
        JsonText.Object(("enum", JsonText.List(words.Select(JsonText.Of))));

    internal static JsonText Reference(string definition) =>
        JsonText.Object(("$ref", JsonText.Of("#/$defs/" + definition)));

    /// <summary>What a field is, and what it may hold.</summary>
    internal static JsonText About(string about, JsonText schema) =>
        schema.WithFirst("description", JsonText.Of(about));

    internal static JsonText OneOf(string? about, params JsonText[] schemas) =>
        about is null
            ? JsonText.Object(("oneOf", JsonText.List(schemas)))
            : JsonText.Object(
                ("description", JsonText.Of(about)),
                ("oneOf", JsonText.List(schemas))
            );

    /// <summary>An object with fields.</summary>
    /// <param name="about">What it is.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="isOpen">Whether other fields are described, and closed, elsewhere.</param>
    internal static JsonText Object(
        string about,
        IReadOnlyList<(string Name, bool IsNeeded, JsonText Schema)> fields,
        bool isOpen
    )
    {
        List<(string, JsonText)> members =
        [
            ("description", JsonText.Of(about)),
            ("type", JsonText.Of("object")),
            (
                "properties",
                JsonText.Object([.. fields.Select(field => (field.Name, field.Schema))])
            ),
        ];
        var needed = fields.Where(field => field.IsNeeded).Select(field => JsonText.Of(field.Name));
        if (needed.Any())
            members.Add(("required", JsonText.List(needed)));
        if (!isOpen)
            members.Add(("additionalProperties", JsonText.Of(false)));
        return JsonText.Object(members);
    }

    /// <summary>A list whose first items each have a schema of their own, and that has no others.</summary>
    internal static JsonText Tuple(int least, params JsonText[] items) =>
        Typed(
            "array",
            ("prefixItems", JsonText.List(items)),
            ("items", JsonText.Of(false)),
            ("minItems", JsonText.Of(least))
        );
}
