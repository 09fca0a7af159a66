namespace PatternGen.Tests.Gallery;

public class GallerySpecs
{
    [Fact]
    public void I_can_make_a_border_for_my_own_rail()
    {
        using var gallery = new GalleryProgram();

        var (exitCode, output, error) = gallery.Run([
            "rail",
            "--length",
            "742.5",
            "--width",
            "36",
            "--margin",
            "6",
            "--out",
            "mine",
        ]);

        error.ShouldBeEmpty();
        exitCode.ShouldBe(0);
        output.ShouldContain("91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike");
        gallery
            .Files()
            .ShouldBe([
                "mine/rail-lines.dxf",
                "mine/rail-print.svg",
                "mine/rail.dxf",
                "mine/rail.png",
                "mine/rail.svg",
            ]);
    }

    [Fact]
    public void Without_a_command_it_makes_everything_and_a_page_that_links_only_to_what_is_there()
    {
        using var gallery = new GalleryProgram();

        var (exitCode, output, _) = gallery.Run();

        exitCode.ShouldBe(0);
        output.ShouldContain("index.html");
        var files = gallery.Files();
        files.ShouldContain("gallery/out/index.html");
        files.ShouldContain("gallery/out/rail/rail.dxf");
        files.ShouldContain("gallery/out/bands/bands.svg");
        files.ShouldContain("gallery/out/rosettes/rosettes.svg");
        files.ShouldContain("gallery/out/grooves/grooves.dxf");
        files.ShouldContain("gallery/out/rosettes/designs.svg");
        files.ShouldContain("gallery/out/rosettes/key.svg");
        files.ShouldContain("gallery/out/carving/rosettes-carved.svg");
        files.ShouldContain("gallery/out/carving/petals-section.svg");
        files.ShouldContain("gallery/out/rosettes/twelve-petals-steps.svg");
        files.ShouldContain("gallery/out/inspection/faults.svg");
        files.ShouldContain("gallery/out/order/rosette-order.svg");
        files.ShouldContain("gallery/out/order/rail-order.md");
        files.ShouldContain("gallery/out/recipes/box-lid.svg");
        var page = File.ReadAllText(Path.Combine(gallery.Folder, "gallery/out/index.html"));
        foreach (var link in page.Split(["src=\"", "href=\""], StringSplitOptions.None).Skip(1))
            files.ShouldContain("gallery/out/" + link[..link.IndexOf('"')]);
    }

    [Theory]
    [InlineData("inspection", "faults.svg")]
    [InlineData("order", "rosette-order.md")]
    [InlineData("grooves", "grooves.dxf")]
    public void Each_topic_is_a_command_of_its_own(string topic, string file)
    {
        using var gallery = new GalleryProgram();

        var (exitCode, _, error) = gallery.Run(topic, "--out", "mine");

        error.ShouldBeEmpty();
        exitCode.ShouldBe(0);
        gallery.Files().ShouldContain($"mine/{file}");
    }

    [Fact]
    public void A_recipe_file_is_made_into_drawings_and_a_picture()
    {
        using var gallery = new GalleryProgram();
        Rail.Of(120, 30)
            .Border(TriangleBand.Ruled(2, 4, 2))
            .SaveRecipe(Path.Combine(gallery.Folder, "my-rail.json"));

        var (exitCode, output, error) = gallery.Run("recipe", "my-rail.json", "-o", "mine");

        error.ShouldBeEmpty();
        exitCode.ShouldBe(0);
        output.ShouldContain("my-rail.svg");
        gallery
            .Files()
            .ShouldBe(["mine/my-rail.dxf", "mine/my-rail.png", "mine/my-rail.svg", "my-rail.json"]);
    }

    [Fact]
    public void Of_a_folder_of_recipes_the_bad_ones_are_told_and_the_others_made()
    {
        using var gallery = new GalleryProgram();
        var folder = Directory.CreateDirectory(Path.Combine(gallery.Folder, "all")).FullName;
        Heart.Of(20, 20).SaveRecipe(Path.Combine(folder, "c.json"));
        Leaf.Of(20, 8).SaveRecipe(Path.Combine(folder, "a.json"));
        File.WriteAllText(
            Path.Combine(folder, "b.json"),
            """{ "patterngen": 1, "kind": "leaf", "length": 20, "width": "wide" }"""
        );

        var (exitCode, _, error) = gallery.Run("recipe", "all", "--out", "made");

        exitCode.ShouldBe(1);
        error.ShouldContain("b.json");
        error.ShouldContain("$.width");
        gallery.Files().ShouldContain("made/a.svg");
        gallery.Files().ShouldContain("made/c.dxf");
        gallery.Files().ShouldNotContain("made/b.svg");
    }

    [Fact]
    public void A_recipe_that_is_not_there_ends_with_1()
    {
        using var gallery = new GalleryProgram();

        var (exitCode, _, error) = gallery.Run("recipe", "nowhere.json");

        exitCode.ShouldBe(1);
        error.ShouldContain("nowhere.json");
    }

    [Fact]
    public void Lengths_in_inches_need_their_unit()
    {
        using var gallery = new GalleryProgram();

        var inches = gallery.Run("rail", "--length", "29 3/16 in", "--width", "1.5\"");
        // 29 3/16 in × 25.4 = 741.3625 mm; 1.5 in = 38.1 mm.
        inches.Output.ShouldContain("741.36 × 38.1 mm");

        var guess = gallery.Run("rail", "--length", "29 3/16", "--width", "36");
        guess.ExitCode.ShouldBe(2);
        guess.Error.ShouldContain("add the unit");
    }

    [Theory]
    [InlineData("required", "rail")]
    [InlineData("nonsense", "nonsense")]
    [InlineData("--help", "rail", "--length", "long", "--width", "36")]
    [InlineData("more than 0", "rail", "--length", "-5", "--width", "36")]
    [InlineData("more than 0", "rail", "--length", "100", "--width", "36", "--rules", "2,0,2")]
    public void A_wrong_command_line_says_why_and_ends_with_2(string why, params string[] args)
    {
        using var gallery = new GalleryProgram();

        var (exitCode, output, error) = gallery.Run(args);

        exitCode.ShouldBe(2);
        output.ShouldBeEmpty();
        error.ShouldContain(why);
        error.ShouldNotContain("   at "); // no stack trace
        gallery.Files().ShouldBeEmpty();
    }

    [Fact]
    public void An_impossible_fit_says_what_would_work_and_ends_with_1()
    {
        using var gallery = new GalleryProgram();

        var (exitCode, _, error) = gallery.Run("rail", "--length", "5", "--width", "36");

        exitCode.ShouldBe(1);
        error.ShouldContain("What would work");
        gallery.Files().ShouldBeEmpty();
    }

    [Fact]
    public void A_folder_that_can_not_be_made_ends_with_1()
    {
        using var gallery = new GalleryProgram();
        File.WriteAllText(Path.Combine(gallery.Folder, "taken"), "");

        var (exitCode, _, error) = gallery.Run(
            "rail",
            "--length",
            "80",
            "--width",
            "36",
            "--out",
            "taken/inside"
        );

        exitCode.ShouldBe(1);
        error.ShouldContain("--out");
    }

    [Fact]
    public void A_read_only_picture_stays_as_it_was()
    {
        using var gallery = new GalleryProgram();
        var picture = Path.Combine(gallery.Folder, "rail", "rail.png");
        Directory.CreateDirectory(Path.GetDirectoryName(picture)!);
        File.WriteAllText(picture, "mine");
        File.SetAttributes(picture, FileAttributes.ReadOnly);

        var (exitCode, _, error) = gallery.Run("rail", "--length", "80", "--width", "36");

        File.SetAttributes(picture, FileAttributes.Normal);
        exitCode.ShouldBe(1);
        error.ShouldContain("read-only");
        File.ReadAllText(picture).ShouldBe("mine");
    }

    [Fact]
    public void A_very_long_rail_gets_a_picture_of_one_end()
    {
        using var gallery = new GalleryProgram();

        gallery.Run("rail", "--length", "20000", "--width", "36").ExitCode.ShouldBe(0);

        using var picture = SkiaSharp.SKBitmap.Decode(
            Path.Combine(gallery.Folder, "rail", "rail.png")
        );
        picture.Height.ShouldBeGreaterThan(300);
        picture.Width.ShouldBeLessThanOrEqualTo(6000);
    }

    [Fact]
    public void Help_shows_examples()
    {
        using var gallery = new GalleryProgram();

        var (exitCode, output, _) = gallery.Run("--help");

        exitCode.ShouldBe(0);
        output.ShouldContain("rail --length 742.5 --width 36 --out my-rail");
    }

    [Theory]
    [InlineData("bands.svg")]
    [InlineData("rosettes.svg")]
    [InlineData("carved.svg")]
    [InlineData("layouts.svg")]
    public void The_pictures_of_the_README_are_those_it_draws(string file)
    {
        using var gallery = new GalleryProgram();

        gallery.Run("readme", "--out", "pictures").ExitCode.ShouldBe(0);

        var drawn = File.ReadAllText(Path.Combine(gallery.Folder, "pictures", file));
        drawn.ShouldBe(
            File.ReadAllText(Repository.File("gallery", "pictures", file)),
            "run 'dotnet run --project gallery -- readme' and commit the pictures"
        );
    }
}
