using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;

namespace PatternGen.Tests.Importing.Recipes;

/// <summary>Whatever a file says, reading it ends in a pattern or in one clear error.</summary>
public class HostileRecipeSpecs
{
    /// <summary>5,000 by default, shared by the two generators; PATTERNGEN_FUZZ asks for more.</summary>
    private static readonly int Cases = int.TryParse(
        Environment.GetEnvironmentVariable("PATTERNGEN_FUZZ"),
        out var asked
    )
        ? asked
        : 5000;

    private static readonly string[] Values =
    [
        "0",
        "-1",
        "1",
        "2",
        "0.5",
        "1e-9",
        "1e9",
        "-1e308",
        "1e999",
        "2147483647",
        "9223372036854775808",
        "null",
        "true",
        "\"\"",
        "\"up\"",
        "\"\\ud800\"",
        "[]",
        "{}",
        "[[]]",
        "[0, 0]",
        "[1e6, 1e6, 1e9]",
        "{ \"kind\": \"drawn\" }",
        "{ \"radians\": 1 }",
    ];

    [Fact]
    public void A_file_cut_off_anywhere_is_refused()
    {
        foreach (var recipe in RecipeSamples.All.Take(4))
        {
            var bytes = Encoding.UTF8.GetBytes(recipe.TrimEnd());
            for (var length = 0; length < bytes.Length; length++)
                Should.Throw<ImportException>(() => Recipe.Load(new MemoryStream(bytes[..length])));
        }
    }

    [Fact]
    public void Bytes_that_are_changed_anywhere_end_in_a_pattern_or_an_error() =>
        Gen.Select(
                Gen.Int[0, RecipeSamples.All.Count - 1],
                Gen.Select(Gen.Int[0, int.MaxValue], Gen.Byte).Array[1, 4]
            )
            .Sample(
                (number, changes) =>
                {
                    var bytes = Encoding.UTF8.GetBytes(RecipeSamples.All[number]);
                    foreach (var (place, value) in changes)
                        bytes[place % bytes.Length] = value;
                    EndsWell(bytes);
                },
                iter: Cases / 2
            );

    [Fact]
    public void Values_that_are_changed_anywhere_end_in_a_pattern_that_the_schema_allows_or_an_error() =>
        Gen.Select(
                Gen.Int[0, RecipeSamples.All.Count - 1],
                Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[0, int.MaxValue]).Array[1, 3]
            )
            .Sample(
                (number, changes) =>
                {
                    var root = JsonNode.Parse(RecipeSamples.All[number])!;
                    foreach (var (place, value) in changes)
                        Change(root, place, value);
                    EndsWell(Encoding.UTF8.GetBytes(Raw(root)));
                },
                iter: Cases / 2
            );

    [Theory]
    [MemberData(nameof(Bombs))]
    public Task A_bomb_is_refused_before_it_goes_off(string name, string json) =>
        Patience.WithinMinutes(() =>
        {
            var started = Environment.CpuUsage.TotalTime;
            Should.Throw<ImportException>(() => Recipe.Parse(json), name);
            TestContext.Current.TestOutputHelper?.WriteLine(
                $"{name}: {(Environment.CpuUsage.TotalTime - started).TotalMilliseconds:0} ms"
            );
        });

    public static TheoryData<string, string> Bombs()
    {
        const string start = """{ "patterngen": 1, """;
        var chip = """{ "kind": "drawn", "chips": [{ "outline": [[0, 0], [4, 0], [0, 4]] }] }""";
        var doubling = new StringBuilder(
            start
                + $$"""
                "shared": [{ "name": "0", "pattern": {{chip}} }
                """
        );
        for (var i = 1; i < 60; i++)
            doubling.Append(
                $$"""
                , { "name": "{{i}}", "pattern": { "kind": "combined", "parts": [{ "kind": "shared", "name": "{{i
                    - 1}}" }, { "kind": "shared", "name": "{{i - 1}}" }] } }
                """
            );
        doubling.Append("""], "kind": "shared", "name": "59" }""");
        var chain = new StringBuilder(
            start
                + $$"""
                "shared": [{ "name": "0", "pattern": {{chip}} }
                """
        );
        for (var i = 1; i < 20_000; i++)
            chain.Append(
                $$"""
                , { "name": "{{i}}", "pattern": { "kind": "shared", "name": "{{i
                    - 1}}", "then": [{ "do": "move", "by": [0, 0] }] } }
                """
            );
        chain.Append("""], "kind": "shared", "name": "19999" }""");
        return new()
        {
            { "brackets", new string('[', 1_000_000) },
            { "objects", string.Concat(Enumerable.Repeat("{\"a\":", 1_000_000)) },
            {
                "patterns in patterns",
                string.Concat(
                    Enumerable
                        .Repeat(start + "\"kind\": \"combined\", \"parts\": [", 1)
                        .Concat(Enumerable.Repeat("{ \"kind\": \"combined\", \"parts\": [", 70))
                        .Append(string.Concat(Enumerable.Repeat("]}", 71)))
                )
            },
            { "each twice the one before", doubling.ToString() },
            { "a long chain of names", chain.ToString() },
            {
                "moved a million times",
                start
                    + "\"kind\": \"drawn\", \"chips\": [{ \"outline\": [[0, 0], [4, 0], [0, 4]] }], \"then\": ["
                    + string.Join(',', Enumerable.Repeat("{\"do\":\"move\",\"by\":[0,0]}", 900_000))
                    + "]}"
            },
            {
                "repeats of repeats",
                start
                    + "\"kind\": \"drawn\", \"chips\": [{ \"outline\": [[0, 0], [4, 0], [0, 4]] }], \"then\": ["
                    + string.Join(
                        ',',
                        Enumerable.Repeat("{\"do\":\"repeat\",\"count\":1000,\"pitch\":0.001}", 5)
                    )
                    + "]}"
            },
            {
                "rows without chips",
                start
                    + "\"shared\": [{ \"name\": \"a\", \"pattern\": { \"kind\": \"drawn\", \"rows\": ["
                    + string.Join(',', Enumerable.Repeat("[]", 500_000))
                    + "] } }], \"kind\": \"combined\", \"parts\": ["
                    + string.Join(
                        ',',
                        Enumerable.Repeat("{\"kind\":\"shared\",\"name\":\"a\"}", 10_000)
                    )
                    + "]}"
            },
            {
                "more corners than allowed",
                start
                    + "\"kind\": \"drawn\", \"stock\": [["
                    + string.Join(',', Enumerable.Repeat("[0,0]", 4_100_000))
                    + "]]}"
            },
            {
                "a million fields",
                start
                    + string.Join(',', Enumerable.Range(0, 1_000_000).Select(i => $"\"x{i}\":0"))
                    + "}"
            },
            {
                "a name of ten million letters",
                start + "\"" + new string('x', 10_000_000) + "\": 1, \"kind\": \"drawn\" }"
            },
            {
                "a rail of a billion repeats",
                start
                    + "\"kind\": \"rail\", \"length\": 1e6, \"width\": 9, \"band\": { \"rules\": [1e-3] } }"
            },
        };
    }

    [Fact]
    public void Limits_can_be_set_lower()
    {
        var rail = Rail.Of(200, 30).Border(TriangleBand.Ruled(2, 4, 2)).ToRecipe().ToString();
        ImportLimits[] limits =
        [
            ImportLimits.Default.WithBytes(50),
            ImportLimits.Default.WithElements(10),
            ImportLimits.Default.WithSegments(1),
        ];

        Recipe.Parse(rail, ImportLimits.Default.WithElements(100)).Pattern.ChipCount.ShouldBe(25);
        foreach (var limit in limits)
            Should.Throw<ImportException>(() =>
                Recipe.Load(new MemoryStream(Encoding.UTF8.GetBytes(rail)), limit)
            );
    }

    private static void EndsWell(byte[] bytes)
    {
        try
        {
            _ = Recipe.Load(new MemoryStream(bytes));
        }
        catch (ImportException error)
        {
            error.Message.ShouldNotBeNullOrWhiteSpace();
            error.Message.Length.ShouldBeLessThan(3000);
            return;
        }
        using var json = JsonDocument.Parse(bytes);
        JsonSchema.OfRecipes.Errors(json.RootElement).ShouldBeEmpty(Encoding.UTF8.GetString(bytes));
    }

    /// <summary>Puts a value in the place of another, one of the list or one that stands elsewhere in the recipe.</summary>
    private static void Change(JsonNode root, int place, int value)
    {
        JsonNode[] nodes = [.. Below(root)];
        if (nodes.Length == 0)
            return;
        var with = value % (Values.Length + 10);
        var node =
            with < Values.Length
                ? JsonValue.Create(Mark + with)
                : nodes[value % nodes.Length].DeepClone();
        nodes[place % nodes.Length].ReplaceWith(node);
    }

    private const string Mark = "value number ";

    private static IEnumerable<JsonNode> Below(JsonNode? node) =>
        node switch
        {
            JsonObject found => found
                .Select(member => member.Value)
                .OfType<JsonNode>()
                .SelectMany(child => Below(child).Prepend(child)),
            JsonArray list => list.OfType<JsonNode>()
                .SelectMany(child => Below(child).Prepend(child)),
            _ => [],
        };

    private static string Raw(JsonNode root)
    {
        var text = root.ToJsonString();
        for (var i = Values.Length - 1; i >= 0; i--)
            text = text.Replace($"\"{Mark}{i}\"", Values[i]);
        return text;
    }
}
