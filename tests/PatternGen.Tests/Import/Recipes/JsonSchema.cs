using System.Text.Json;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Importing.Recipes;

/// <summary>
/// A validator for the part of JSON Schema, draft 2020-12, that the schema of recipes uses, written from the
/// specification (draft-bhutton-json-schema-01, -validation-01); a keyword that it does not know is an error.
/// </summary>
internal sealed class JsonSchema(JsonElement root)
{
    private static readonly JsonElement Published = JsonDocument.Parse(Recipe.Schema).RootElement;

    internal static JsonSchema OfRecipes { get; } = new(Published);

    internal JsonElement Root => root;

    /// <summary>What is wrong with a value; nothing if it is valid.</summary>
    internal IReadOnlyList<string> Errors(JsonElement value) => Check(root, value, "$").Errors;

    private (List<string> Errors, HashSet<string> Evaluated) Check(
        JsonElement schema,
        JsonElement value,
        string path
    )
    {
        var errors = new List<string>();
        var evaluated = new HashSet<string>();
        if (schema.ValueKind == JsonValueKind.False)
            return ([$"{path}: nothing may stand here"], evaluated);
        foreach (var keyword in schema.EnumerateObject())
            Apply(keyword, schema, value, path, errors, evaluated);
        // After all others, because it asks what they have looked at.
        if (
            schema.TryGetProperty("unevaluatedProperties", out _)
            && value.ValueKind == JsonValueKind.Object
        )
            foreach (var member in value.EnumerateObject())
                if (evaluated.Add(member.Name))
                    errors.Add($"{path}: unknown {member.Name}");
        return (errors, evaluated);
    }

    private void Apply(
        JsonProperty keyword,
        JsonElement schema,
        JsonElement value,
        string path,
        List<string> errors,
        HashSet<string> evaluated
    )
    {
        var rule = keyword.Value;
        switch (keyword.Name)
        {
            case "$schema" or "$id" or "title" or "description" or "$defs":
            case "unevaluatedProperties" when rule.ValueKind == JsonValueKind.False:
                return;
            case "$ref":
                Take(Check(Definition(rule.GetString()!), value, path), errors, evaluated);
                return;
            case "allOf":
                foreach (var part in rule.EnumerateArray())
                    Take(Check(part, value, path), errors, evaluated);
                return;
            case "oneOf":
                var results = rule.EnumerateArray()
                    .Select(part => Check(part, value, path))
                    .ToArray();
                var valid = results.Where(result => result.Errors.Count == 0).ToArray();
                if (valid.Length == 1)
                    evaluated.UnionWith(valid[0].Evaluated);
                else
                    errors.Add(
                        $"{path}: {valid.Length} alternatives hold: {string.Join(" | ", results.Select(result => string.Join("; ", result.Errors.Take(2))))}"
                    );
                return;
            case "const":
                Rule(value.GetRawText() == rule.GetRawText());
                return;
            case "enum":
                Rule(rule.EnumerateArray().Any(one => one.GetRawText() == value.GetRawText()));
                return;
            case "type":
                Rule(IsOfType(value, rule.GetString()!));
                return;
        }
        // A keyword asks nothing of values of another type.
        var asked = TypeOf(keyword.Name);
        if (asked != value.ValueKind)
            return;
        switch (asked)
        {
            case JsonValueKind.Object:
                ApplyToObject();
                break;
            case JsonValueKind.Array:
                ApplyToArray();
                break;
            case JsonValueKind.Number:
                ApplyToNumber();
                break;
            default:
                Rule(Regex.IsMatch(value.GetString()!, rule.GetString()!));
                break;
        }

        void Rule(bool holds)
        {
            if (!holds)
                errors.Add($"{path}: {keyword.Name} {rule.GetRawText()}");
        }

        void ApplyToObject()
        {
            switch (keyword.Name)
            {
                case "properties":
                    foreach (var member in value.EnumerateObject())
                        if (rule.TryGetProperty(member.Name, out var of))
                        {
                            evaluated.Add(member.Name);
                            errors.AddRange(
                                Check(of, member.Value, $"{path}.{member.Name}").Errors
                            );
                        }
                    break;
                case "required":
                    foreach (var name in rule.EnumerateArray())
                        if (!value.TryGetProperty(name.GetString()!, out _))
                            errors.Add($"{path}: {name} is missing");
                    break;
                case "additionalProperties" when rule.ValueKind == JsonValueKind.False:
                    foreach (var member in value.EnumerateObject())
                        if (!schema.GetProperty("properties").TryGetProperty(member.Name, out _))
                            errors.Add($"{path}: unknown {member.Name}");
                    break;
                default:
                    throw new NotSupportedException(keyword.Name);
            }
        }

        void ApplyToArray()
        {
            var length = value.GetArrayLength();
            switch (keyword.Name)
            {
                case "prefixItems":
                    for (var i = 0; i < Math.Min(length, rule.GetArrayLength()); i++)
                        errors.AddRange(Check(rule[i], value[i], $"{path}[{i}]").Errors);
                    break;
                case "items":
                    var first = schema.TryGetProperty("prefixItems", out var prefix)
                        ? prefix.GetArrayLength()
                        : 0;
                    for (var i = first; i < length; i++)
                        errors.AddRange(Check(rule, value[i], $"{path}[{i}]").Errors);
                    break;
                case "minItems":
                    Rule(length >= rule.GetInt32());
                    break;
                case "maxItems":
                    Rule(length <= rule.GetInt32());
                    break;
                default:
                    throw new NotSupportedException(keyword.Name);
            }
        }

        void ApplyToNumber()
        {
            var (number, limit) = (value.GetDouble(), rule.GetDouble());
            switch (keyword.Name)
            {
                case "minimum":
                    Rule(number >= limit);
                    break;
                case "exclusiveMinimum":
                    Rule(number > limit);
                    break;
                case "maximum":
                    Rule(number <= limit);
                    break;
                default:
                    throw new NotSupportedException(keyword.Name);
            }
        }
    }

    private static JsonValueKind TypeOf(string keyword) =>
        keyword switch
        {
            "properties" or "required" or "additionalProperties" => JsonValueKind.Object,
            "prefixItems" or "items" or "minItems" or "maxItems" => JsonValueKind.Array,
            "minimum" or "exclusiveMinimum" or "maximum" => JsonValueKind.Number,
            "pattern" => JsonValueKind.String,
            _ => throw new NotSupportedException(keyword),
        };

    private static void Take(
        (List<string> Errors, HashSet<string> Evaluated) result,
        List<string> errors,
        HashSet<string> evaluated
    )
    {
        errors.AddRange(result.Errors);
        evaluated.UnionWith(result.Evaluated);
    }

    private JsonElement Definition(string reference)
    {
        const string start = "#/$defs/";
        reference.ShouldStartWith(start);
        return root.GetProperty("$defs").GetProperty(reference[start.Length..]);
    }

    private static bool IsOfType(JsonElement value, string type) =>
        type switch
        {
            "object" => value.ValueKind == JsonValueKind.Object,
            "array" => value.ValueKind == JsonValueKind.Array,
            "string" => value.ValueKind == JsonValueKind.String,
            "number" => value.ValueKind == JsonValueKind.Number,
            "integer" => value.ValueKind == JsonValueKind.Number
                && value.GetDouble() == Math.Floor(value.GetDouble()),
            "boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
            _ => throw new NotSupportedException(type),
        };
}

internal static class SchemaMatching
{
    internal static void ShouldMatchSchema(this string recipe)
    {
        using var json = JsonDocument.Parse(recipe);
        JsonSchema.OfRecipes.Errors(json.RootElement).ShouldBeEmpty(recipe);
    }
}
