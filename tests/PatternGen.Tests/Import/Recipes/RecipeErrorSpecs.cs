using System.Text;

namespace PatternGen.Tests.Importing.Recipes;

public class RecipeErrorSpecs
{
    private const string Band = """ "band": { "rules": [2, 4, 4, 2] } """;

    [Theory]
    // Names.
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "lenght": 100, "width": 30 }""",
        "$.lenght",
        "\"length\""
    )]
    [InlineData("""{ "patterngen": 1, "kind": "rial" }""", "$.kind", "\"rail\"")]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "width": 30 }""",
        "$",
        "\"length\" is missing"
    )]
    [InlineData("""{ "patterngen": 1 }""", "$", "\"kind\" is missing")]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 90, "width": 30, "length": 90 }""",
        "$.length",
        "twice"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "combined", "parts": [], "then": [{ "do": "trun", "degrees": 3 }] }""",
        "$.then[0].do",
        "\"turn\""
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "combined", "parts": [], "name": "x" }""",
        "$.name",
        "no field \"name\""
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "combined", "parts": [], "strange name": 1 }""",
        "$['strange name']",
        "no field"
    )]
    // Values.
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": "long", "width": 30 }""",
        "$.length",
        "a number is wanted"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": null, "width": 30 }""",
        "$.length",
        "null"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 1e999, "width": 30 }""",
        "$.length",
        "at most 1000000"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 0, "width": 30 }""",
        "$.length",
        "more than 0"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 90, "width": 30, "band": { "rules": [2, 4, -4] } }""",
        "$.band.rules[2]",
        "more than 0"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 90, "width": 30, "band": "Rised diamonds" }""",
        "$.band",
        "\"Raised diamonds\""
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "combined", "parts": [{ "kind": "rail", "length": 90, "width": 30, "band": { "rules": [3, 3, 3], "rows": [{ "between": [0, 1] }, { "between": [1, 2] }, { "between": [2, 3], "lean": 1.5 }] } }] }""",
        "$.parts[0].band.rows[2].lean",
        "from -1 to 1"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "carved", "drawing": { "kind": "petals", "count": 6.5, "radius": 20 }, "petals": true }""",
        "$.drawing.count",
        "whole number"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "chips": [{ "outline": [[0, 0], [1]] }] }""",
        "$.chips[0].outline[1]",
        "[x, y]"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "labels": [{ "text": "\ud800", "at": [0, 0], "height": 3 }] }""",
        "$.labels[0].text",
        "half a character"
    )]
    // What can't be made.
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 3, "width": 30, "band": "Single row" }""",
        "$",
        "mm"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "rail", "length": 90, "width": 8, "band": "Raised diamonds" }""",
        "$",
        "12 mm high"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "carved", "drawing": { "kind": "petals", "count": 6, "radius": 20 }, "orbits": [9] }""",
        "$.orbits",
        "between 1 and"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "carved", "drawing": { "kind": "petals", "count": 6, "radius": 20 } }""",
        "$.parts",
        "at least one"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "carved", "drawing": { "kind": "petals", "count": 6, "radius": 20 }, "petals": true, "fingerprint": "0123456789abcdef" }""",
        "$",
        "not the one whose parts were chosen"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "carved", "drawing": { "kind": "petals", "count": 6, "radius": 20 }, "petals": true, "joined": [[1, 2]] }""",
        "$",
        "can't be joined"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "chips": [{ "outline": [[0, 0], [4, 4], [4, 0], [0, 4]] }] }""",
        "$.chips[0]",
        "crosses itself"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "then": [{ "do": "scale", "factor": 2 }, { "do": "cut", "cuts": [{}] }] }""",
        "$.then[1]",
        "the 1 cuts"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "chips": [{ "outline": [[0, 0], [4, 0], [0, 4]] }], "then": [{ "do": "repeat", "count": 1000000000, "pitch": 0.001 }] }""",
        "$.then[0]",
        "fewer repeats"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "chips": [{ "outline": [[0, 0], [4, 0], [0, 4]] }], "then": [{ "do": "repeat", "count": 2000000, "pitch": 0.001 }] }""",
        "$.then[0]",
        "1000000 pieces"
    )]
    [InlineData(
        """{ "patterngen": 1, "kind": "drawn", "chips": [{ "outline": [[0, 0], [4, 0], [0, 4]] }], "then": [{ "do": "move", "by": [2000000, 0] }, { "do": "move", "by": [2000000, 0] }] }""",
        "$",
        "2,000,000"
    )]
    // Shared.
    [InlineData(
        """{ "patterngen": 1, "kind": "shared", "name": "leaf" }""",
        "$",
        "under the name \"leaf\""
    )]
    [InlineData(
        """{ "patterngen": 1, "shared": [{ "name": "a", "pattern": { "kind": "shared", "name": "a" } }], "kind": "shared", "name": "a" }""",
        "$.shared[0].pattern",
        "before this"
    )]
    [InlineData(
        """{ "patterngen": 1, "shared": [{ "name": "a", "pattern": { "kind": "drawn" } }, { "name": "a", "pattern": { "kind": "drawn" } }], "kind": "drawn" }""",
        "$.shared[1]",
        "the name \"a\""
    )]
    // The whole.
    [InlineData("""{ "kind": "drawn" }""", "$", "no recipe")]
    [InlineData("""{ "patterngen": 2, "kind": "drawn" }""", "$.patterngen", "newer release")]
    [InlineData("""[]""", "$", "an object is wanted")]
    public void A_mistake_is_told_with_its_path(string json, string where, string says)
    {
        var error = Should.Throw<ImportException>(() => Recipe.Parse(json));

        error.Where.ShouldBe(where, error.Message);
        error.Message.ShouldContain(says, Case.Insensitive);
        error.Message.ShouldNotContain("Parameter");
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("nonsense")]
    [InlineData("""{ "patterngen": 1, "kind": "drawn", }""")]
    [InlineData("""{ "patterngen": 1, "kind": "drawn" } { }""")]
    [InlineData("""{ "patterngen": 1, /* mine */ "kind": "drawn" }""")]
    [InlineData("""{ "patterngen": NaN, "kind": "drawn" }""")]
    public void What_is_no_JSON_is_told_with_its_line(string json)
    {
        var error = Should.Throw<ImportException>(() => Recipe.Parse("\n" + json));

        error.Where.ShouldNotBeNull().ShouldStartWith("line ");
        error.Message.ShouldContain("no JSON");
    }

    [Fact]
    public void A_hand_written_recipe_may_leave_out_what_goes_without_saying()
    {
        var json = $$"""
            { "$schema": "recipe-1.schema.json", "patterngen": 1, "kind": "rail", "length": 742.5, "width": 36,
              {{Band}}, "fromEdge": 6, "fitting": { "endMargins": [6, 6] } }
            """;
        json.ShouldMatchSchema();

        var border = Recipe.Parse(json).Pattern.ShouldBeOfType<RailBorder>();

        // 742.5 - 2 × 6 = 730.5 mm; 91 × 8 = 728 is nearer than 92 × 8 = 736.
        border.Fit.Repeats.ShouldBe(91);
    }

    [Fact]
    public void A_mark_before_the_text_does_no_harm_and_other_encodings_are_named()
    {
        var json = Encoding.UTF8.GetBytes("""{ "patterngen": 1, "kind": "drawn" }""");

        Load([0xEF, 0xBB, 0xBF, .. json]).Pattern.ChipCount.ShouldBe(0);
        foreach (
            var encoding in (Encoding[])
                [Encoding.Unicode, Encoding.BigEndianUnicode, Encoding.UTF32]
        )
        {
            var text = encoding.GetBytes("""{ "patterngen": 1, "kind": "drawn" }""");
            Should
                .Throw<ImportException>(() => Load([.. encoding.GetPreamble(), .. text]))
                .Message.ShouldContain("UTF-8");
            Should.Throw<ImportException>(() => Load(text)).Message.ShouldContain("UTF-8");
        }
    }

    [Fact]
    public void A_figure_that_comes_out_otherwise_is_refused()
    {
        var saved = Rosette.Petals(6, 20).Carve(part => part.IsPetal).ToRecipe().ToString();

        var changed = saved.Replace("\"radius\": 20", "\"radius\": 21");

        changed.ShouldNotBe(saved);
        Should
            .Throw<ImportException>(() => Recipe.Parse(changed))
            .Message.ShouldContain("fingerprint");
    }

    [Fact]
    public void An_impossible_pattern_is_not_saved()
    {
        var folder = Directory.CreateTempSubdirectory("patterngen");
        var path = Path.Combine(folder.FullName, "rail.json");
        try
        {
            Should.Throw<PatternException>(() =>
                Rail.Of(3, 36).Border(TriangleBand.Ruled(2, 4, 4, 2)).SaveRecipe(path)
            );
            File.Exists(path).ShouldBeFalse();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_recipe_goes_through_files_and_streams()
    {
        var folder = Directory.CreateTempSubdirectory("patterngen");
        var path = Path.Combine(folder.FullName, "rail.json");
        try
        {
            var border = Rail.Of(300, 36).Border(TriangleBand.Ruled(2, 4, 4, 2));
            border.SaveRecipe(path);
            using var stream = new MemoryStream();
            border.SaveRecipe(stream);
            stream.ToArray().ShouldBe(File.ReadAllBytes(path));
            stream.Position = 0;

            Recipe.Load(stream).ToString().ShouldBe(border.ToRecipe().ToString());
            Recipe.Load(path).Pattern.Caption().ShouldBe(border.Caption());
            Import.Recipe(path).Pattern.Caption().ShouldBe(border.Caption());
            Should.Throw<FileNotFoundException>(() => Recipe.Load(path + "x"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static Recipe Load(byte[] bytes) => Recipe.Load(new MemoryStream(bytes));
}
