using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace PatternGen.Tests.Output.Svg;

public partial class SvgStructureTests
{
    public static TheoryData<For> Purposes => [For.Viewing, For.Paper, For.Machine];

    [Theory]
    [MemberData(nameof(Purposes))]
    public void Every_layer_is_a_group_with_a_title_and_an_id_of_its_own(For purpose)
    {
        var file = WrittenSvg.Of(Samples.Board(), purpose);
        var groups = file.Root.Elements().Where(element => element.Name.LocalName == "g").ToArray();
        groups.Select(group => (string)group.Attribute("id")!).ShouldBeUnique();
        foreach (var id in new[] { "stock", "layout-lines", "line-cuts", "chips", "labels" })
            file.Group(id).ShouldNotBeNull(id).Elements().First().Name.LocalName.ShouldBe("title");
    }

    [Theory]
    [MemberData(nameof(Purposes))]
    public void Readers_are_told_what_the_drawing_is(For purpose)
    {
        var root = WrittenSvg.Of(Samples.Board(), purpose).Root;
        root.Attribute("role")!.Value.ShouldBe("img");
        root.Elements().First().Value.ShouldBe("Practice board");
        root.Elements().ElementAt(1).Value.ShouldContain("6 chips");
    }

    [Theory]
    [MemberData(nameof(Purposes))]
    public void A_file_stands_alone(For purpose)
    {
        var file = WrittenSvg.Of(Samples.Board(), purpose);
        file.Bytes[..5].ShouldBe("<?xml"u8.ToArray());
        file.Text.ShouldNotContain("href");
        file.Text.ShouldNotContain("url(");
        file.Text.ShouldNotContain("<script");
        file.Text.ShouldNotContain("font");
        file.Text.ShouldNotContain("<text");
        file.Text.ShouldNotContain("\r");
    }

    [Theory]
    [MemberData(nameof(Purposes))]
    public void Numbers_are_plain_decimals(For purpose)
    {
        foreach (var data in Attributes(WrittenSvg.Of(Samples.Board(), purpose).Root, "d"))
            data.ShouldMatch(@"^([MLAZ](-?\d+(\.\d*[1-9])?( |(?=[MLAZ]|$)))*)+$");
        var numbers = Attributes(WrittenSvg.Of(Samples.Board(), purpose).Root, "d")
            .SelectMany(data => Number().Matches(data))
            .Select(match => match.Value);
        numbers.ShouldNotContain("-0");
    }

    /// <summary>Nothing may reach over the edge of the sheet, or browsers shrink the print to make room for it.</summary>
    [Theory]
    [MemberData(nameof(Purposes))]
    public void Nothing_lies_beyond_the_sheet(For purpose)
    {
        var file = WrittenSvg.Of(Samples.Board(), purpose);
        foreach (var data in Attributes(file.Root, "d"))
        foreach (
            var point in SvgPathReader
                .Read(data)
                .SelectMany(run => run)
                .SelectMany(piece => piece.Sample(8))
        )
        {
            point.X.ShouldBeInRange(0.5, file.Width - 0.5);
            point.Y.ShouldBeInRange(0.5, file.Height - 0.5);
        }
    }

    [Fact]
    public void A_machine_gets_lines_only()
    {
        var file = WrittenSvg.Of(Samples.Board(), For.Machine);
        Attributes(file.Root, "fill").ShouldAllBe(fill => fill == "none");
        file.Group("check-bar").ShouldBeNull();
        file.Group("caption").ShouldBeNull();
        Attributes(file.Root, "stroke").ShouldBeUnique();
    }

    [Theory]
    [MemberData(nameof(Purposes))]
    public void Names_are_escaped(For purpose)
    {
        const string name = "<\"Rail\" & 'frame'> ]]> é ½";
        var root = WrittenSvg.Of(Samples.Board().Named(name), purpose).Root;
        root.Elements().First().Value.ShouldBe(name);
    }

    [Fact]
    public void Names_that_no_file_can_hold_are_refused()
    {
        // Not as the data of a theory: half a character can't be kept in an attribute either.
        foreach (var name in new[] { "bell \u0007", "two\nlines", "half \uD83D", "none \uFFFF" })
        {
            using var file = new MemoryStream();
            var board = Samples.Board().Named(name);
            Should
                .Throw<PatternException>(() => board.Save(file, FileFormat.Svg, For.Paper))
                .Message.ShouldContain("U+");
            file.Length.ShouldBe(0);
        }
    }

    [Fact]
    public void What_vanishes_in_the_decimals_is_named_with_its_place()
    {
        var speck = Contour.Polygon(new(50, 20), new(50.0001, 20), new(50, 20.0001));
        var error = Should.Throw<PatternException>(() =>
            WrittenSvg.Of(Pattern.OfChips(speck), For.Machine, SaveOptions.Default.WithDecimals(3))
        );
        error.Place.ShouldBe(new Point(50, 20));
        error.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void Corners_that_round_alike_are_one()
    {
        var chip = Contour.Polygon(new(0, 0), new(10, 0), new(10.00001, 0.00001), new(5, 8));
        WrittenSvg
            .Of(Pattern.OfChips(chip), For.Machine, SaveOptions.Default.WithDecimals(3))
            .Runs("chips")
            .Single()
            .Count.ShouldBe(3);
    }

    private static IEnumerable<string> Attributes(XElement root, string name) =>
        root.Descendants().Select(element => (string?)element.Attribute(name)).OfType<string>();

    [GeneratedRegex(@"-?[\d.]+")]
    private static partial Regex Number();
}
