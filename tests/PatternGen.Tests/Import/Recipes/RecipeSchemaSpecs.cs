using System.Text.Json;
using System.Text.Json.Nodes;

namespace PatternGen.Tests.Importing.Recipes;

public class RecipeSchemaSpecs
{
    private static readonly string PublishedPath = Repository.File(
        "src",
        "PatternGen",
        "Import",
        "Recipes",
        "recipe-1.schema.json"
    );

    [Fact]
    public void The_published_schema_is_the_one_that_the_library_hands_out()
    {
        if (File.Exists(PublishedPath) && File.ReadAllText(PublishedPath) == Recipe.Schema)
            return;
        var received = PublishedPath.Replace(".schema.json", ".received.json");
        File.WriteAllText(received, Recipe.Schema);
        Assert.Fail(
            $"""
            The schema of recipes differs from the published one. If the change only adds, approve it:
                mv {received} {PublishedPath}
            A field that goes or changes its meaning needs a new version of the format.
            """
        );
    }

    [Fact]
    public void Every_sample_matches_the_schema()
    {
        foreach (var recipe in RecipeSamples.All)
            recipe.ShouldMatchSchema();
    }

    [Fact]
    public void The_recipe_in_the_README_can_be_made()
    {
        var readme = File.ReadAllText(Repository.File("README.md"));
        var recipes = readme.Split("```json\n").Skip(1).Select(text => text.Split("```")[0]);

        recipes.ShouldNotBeEmpty();
        foreach (var recipe in recipes)
        {
            recipe.ShouldMatchSchema();
            Recipe.Parse(recipe).Pattern.ChipCount.ShouldBePositive();
        }
    }

    [Fact]
    public void Every_field_that_the_schema_names_stands_in_a_sample_but_those_that_are_only_read()
    {
        var used = RecipeSamples
            .All.SelectMany(recipe => Names(JsonNode.Parse(recipe)!))
            .Append("$schema")
            .ToHashSet();

        var named = PropertiesOf(JsonSchema.OfRecipes.Root)
            .SelectMany(properties => properties.EnumerateObject())
            .Select(property => property.Name);

        // Sizes that samples leave to the library, told here so that a new one is noticed.
        named
            .Distinct()
            .Except(used)
            .ShouldBeSubsetOf(["rows", "arcRadius", "plain", "radians", "ring"]);
    }

    [Fact]
    public void A_field_of_another_name_is_refused_by_the_schema_and_by_the_reader_alike()
    {
        foreach (var recipe in RecipeSamples.All)
        {
            var count = Objects(JsonNode.Parse(recipe)!).Sum(each => each.Count);
            for (var i = 0; i < count; i++)
            {
                var root = JsonNode.Parse(recipe)!;
                var renamed = Rename(root, i);
                var json = root.ToJsonString();

                var error = Should.Throw<ImportException>(() => Recipe.Parse(json), json);
                error.Message.ShouldContain(renamed);
                using var document = JsonDocument.Parse(json);
                JsonSchema.OfRecipes.Errors(document.RootElement).ShouldNotBeEmpty(json);
            }
        }
    }

    [Fact]
    public void Every_layout_and_everything_done_to_patterns_has_a_kind_of_its_own()
    {
        Type[] owners =
        [
            .. PatternKinds.All.Select(OwnerOf),
            .. RecipeSteps.Type.Kinds.Select(OwnerOf),
            // Said by several steps, each with an owner of its own.
            typeof(PlacedOrigin),
        ];
        var assembly = typeof(Pattern).Assembly;

        var needed = assembly
            .GetTypes()
            .Where(type =>
                !type.IsAbstract
                && (type.IsSubclassOf(typeof(Pattern)) || type.IsSubclassOf(typeof(PatternOrigin)))
            )
            // The tree itself, which "drawn" or its origin says.
            .Except([typeof(DrawnPattern)]);

        needed.Except(owners).ShouldBeEmpty();
    }

    [Fact]
    public void Every_family_of_rosettes_has_a_kind_of_its_own() =>
        RosetteKinds.All.Count.ShouldBe(Enum.GetValues<RosetteFamily>().Length);

    /// <summary>Seeded faults, so that the agreement above is no empty one.</summary>
    [Theory]
    [InlineData("""{ "patterngen": 1, "kind": "rail", "width": 30, "band": "Single row" }""")]
    [InlineData("""{ "patterngen": 1, "kind": "drawn", "length": 30 }""")]
    [InlineData("""{ "patterngen": 1, "kind": "drawn", "then": [{ "do": "turn" }] }""")]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "then": [{ "do": "turn", "degrees": "3" }] }"""
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 0, "width": 30, "band": "Single row" }"""
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "labels": [{ "text": " ", "at": [0, 0], "height": 3 }] }"""
    )]
    [InlineData("""{ "patterngen": 1, "kind": "drawn", "layoutLines": [[[0, 0]]] }""")]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "layoutLines": [[[0, 0], [1, 0, 0, 0]]] }"""
    )]
    public void The_schema_notices_faults(string json)
    {
        using var document = JsonDocument.Parse(json);
        JsonSchema.OfRecipes.Errors(document.RootElement).ShouldNotBeEmpty();
        Should.Throw<ImportException>(() => Recipe.Parse(json));
    }

    private static Type OwnerOf<T>(RecipeKind<T> kind) => kind.GetType().GetGenericArguments()[^1];

    private static IEnumerable<JsonElement> PropertiesOf(JsonElement schema)
    {
        if (schema.ValueKind == JsonValueKind.Array)
            return schema.EnumerateArray().SelectMany(PropertiesOf);
        if (schema.ValueKind != JsonValueKind.Object)
            return [];
        return schema
            .EnumerateObject()
            .SelectMany(member =>
                member.Name == "properties"
                    ? PropertiesOf(member.Value).Prepend(member.Value)
                    : PropertiesOf(member.Value)
            );
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) =>
        node switch
        {
            JsonObject found => found
                .Select(member => member.Value)
                .SelectMany(Objects)
                .Prepend(found),
            JsonArray list => list.SelectMany(Objects),
            _ => [],
        };

    private static IEnumerable<string> Names(JsonNode node) =>
        Objects(node).SelectMany(each => each.Select(member => member.Key));

    private static string Rename(JsonNode root, int number)
    {
        foreach (var each in Objects(root))
        {
            if (number >= each.Count)
            {
                number -= each.Count;
                continue;
            }
            var (name, value) = each.ElementAt(number);
            each.Remove(name);
            each["un" + name] = value;
            return name;
        }
        throw new ArgumentOutOfRangeException(nameof(number));
    }
}
