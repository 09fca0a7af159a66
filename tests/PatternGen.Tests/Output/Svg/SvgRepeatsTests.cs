using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace PatternGen.Tests.Output.Svg;

/// <summary>Chips that are written once and referred to.</summary>
public partial class SvgRepeatsTests
{
    private static readonly SaveOptions ByReference = SaveOptions.Default.WithRepeats(
        Repeats.ByReference
    );

    public static TheoryData<string, For> Ways =>
        [
            .. from name in RepeatSamples.All.Keys
            from purpose in Enum.GetValues<For>()
            select (name, purpose),
        ];

    [Theory]
    [MemberData(nameof(Ways))]
    public void The_references_lead_to_the_chips_of_the_pattern(string name, For purpose)
    {
        var pattern = RepeatSamples.All[name];
        var file = WrittenSvg.Of(pattern, purpose, ByReference);
        var toPattern = ToPattern(file, pattern);

        var written = Chips(file).ToList();

        var drawn = pattern.Chips.Select(chip => chip.Holes.Prepend(chip.Outline)).ToList();
        written.Count.ShouldBe(drawn.Count);
        foreach (var (element, rings) in written.Zip(drawn))
        {
            var points = SvgReferences.Points(file, element).Select(toPattern).ToList();
            foreach (var point in points)
                // An arc is as far off as its ends and its radius, which are rounded each.
                rings.Min(ring => ring.DistanceTo(point)).ShouldBeLessThan(1.5e-6);
            foreach (var corner in rings.SelectMany(ring => ring.Vertices))
                points.ShouldContain(point => IsNear(point, corner.Point));
        }
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_reference_names_a_shape_of_the_file(string name, For purpose)
    {
        var root = WrittenSvg.Of(RepeatSamples.All[name], purpose, ByReference).Root;

        var ids = root.Descendants().Attributes("id").Select(id => id.Value).ToList();
        var references = root.Descendants().Attributes("href").Select(href => href.Value);

        ids.ShouldBeUnique();
        ids.ShouldAllBe(id => XmlName().IsMatch(id));
        references.ShouldBeSubsetOf(ids.Select(id => $"#{id}"));
    }

    [Fact]
    public void A_petal_turned_a_hundred_times_is_written_once()
    {
        var file = WrittenSvg.Of(RepeatSamples.Rosette, For.Machine, ByReference);

        Chips(file).Count(element => element.Name.LocalName == "use").ShouldBe(100);
        Definitions(file).Count().ShouldBe(1);
    }

    [Fact]
    public void Mirrored_copies_and_chips_that_are_there_once_are_written_out()
    {
        var file = WrittenSvg.Of(RepeatSamples.Alone, For.Machine, ByReference);

        Chips(file).Select(element => element.Name.LocalName).ShouldBe(["path", "path"]);
        Definitions(file).ShouldBeEmpty();
    }

    /// <summary>A scaled reference would have a thinner line.</summary>
    [Theory]
    [MemberData(nameof(Ways))]
    public void No_reference_is_scaled_or_mirrored(string name, For purpose) =>
        WrittenSvg
            .Of(RepeatSamples.All[name], purpose, ByReference)
            .Root.Descendants()
            .Attributes("transform")
            .ShouldAllBe(transform => !Distorting().IsMatch(transform.Value));

    [Fact]
    public void Sides_drawn_once_are_no_repeats()
    {
        var lines = SaveOptions.Default.WithSharedSides(SharedSides.Once);

        WrittenSvg
            .Of(RepeatSamples.Rosette, For.Machine, lines.WithRepeats(Repeats.ByReference))
            .Bytes.ShouldBe(WrittenSvg.Of(RepeatSamples.Rosette, For.Machine, lines).Bytes);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void In_full_is_the_default(string name, For purpose)
    {
        var pattern = RepeatSamples.All[name];
        var inFull = SaveOptions.Default.WithRepeats(Repeats.InFull);

        var file = WrittenSvg.Of(pattern, purpose);

        file.Bytes.ShouldBe(WrittenSvg.Of(pattern, purpose, inFull).Bytes);
        file.Root.Descendants().Attributes("href").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("rail")]
    [InlineData("rosette")]
    public void The_file_is_smaller(string name)
    {
        var pattern = RepeatSamples.All[name];
        foreach (var purpose in Enum.GetValues<For>())
            WrittenSvg
                .Of(pattern, purpose, ByReference)
                .Bytes.Length.ShouldBeLessThan(WrittenSvg.Of(pattern, purpose).Bytes.Length);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void Bytes_depend_neither_on_the_run_nor_on_the_culture(string culture)
    {
        var here = WrittenSvg.Of(RepeatSamples.Mixed, For.Paper, ByReference).Bytes;
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            WrittenSvg.Of(RepeatSamples.Mixed, For.Paper, ByReference).Bytes.ShouldBe(here);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>What is drawn of the chips: neither their title nor their shapes.</summary>
    private static IEnumerable<XElement> Chips(WrittenSvg file) =>
        file.Group("chips")!
            .Elements()
            .Where(element => element.Name.LocalName is not ("title" or "defs"));

    private static IEnumerable<XElement> Definitions(WrittenSvg file) =>
        file.Root.Descendants().Where(element => element.Parent?.Name.LocalName == "defs");

    /// <summary>The board shows where the sheet's points lie in the pattern.</summary>
    private static Func<Point, Point> ToPattern(WrittenSvg file, Pattern pattern)
    {
        var shown = file.Runs("stock").SelectMany(run => run).Select(side => side.Start).ToList();
        var board = pattern.Stock.Single().Extents;
        var (left, top) = (shown.Min(corner => corner.X), shown.Min(corner => corner.Y));
        return at => new(board.Min.X + at.X - left, board.Max.Y - (at.Y - top));
    }

    private static bool IsNear(Point a, Point b) =>
        Math.Abs(a.X - b.X) < 1e-6 && Math.Abs(a.Y - b.Y) < 1e-6;

    [GeneratedRegex("^[A-Za-z][A-Za-z0-9-]*$")]
    private static partial Regex XmlName();

    [GeneratedRegex("scale|matrix|skew")]
    private static partial Regex Distorting();
}
