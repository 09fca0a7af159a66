using System.Globalization;
using System.Xml.Linq;
using PatternGen.Tests.Output.Svg;

namespace PatternGen.Tests.Output.Reports;

public class ReportSheetSpecs
{
    private static readonly Knife Knife = Knife.Held(degrees: 65);

    private static readonly Stock Wood = Stock.Thick(20);

    /// <summary>What is lost by writing 4 decimals, in mm.</summary>
    private const double Written = 1e-4;

    /// <summary>Two squares of side 6: at 65 degrees 3 tan 65° = 6.43 mm deep, over the comfortable 4, in their middles.</summary>
    private static readonly Pattern TwoSquares = Board(
        60,
        30,
        Square(10, 10, 6),
        Square(30, 10, 6)
    );

    /// <summary>
    /// Slender triangles one over the other in the corner of the wood: overlaps, sharp tips, thin ridges and edges in so little
    /// room that numbers have to give way to each other, as far as beyond the wood.
    /// </summary>
    private static readonly Pattern Crowded = Board(
        40,
        40,
        [.. Enumerable.Range(0, 16).Select(i => Sliver(0.5 + 2 * (i % 4), 0.5 + 2 * (i / 4), i))]
    );

    [Fact]
    public void Every_place_is_ringed_where_it_lies_on_the_wood()
    {
        var svg = Draw(TwoSquares);

        var rings = Rings(svg, "places-warning");
        rings.Length.ShouldBe(2);
        rings[0].DistanceTo(new(13, 13)).ShouldBeLessThan(2 * Written);
        rings[1].DistanceTo(new(33, 13)).ShouldBeLessThan(2 * Written);
    }

    [Fact]
    public void Every_finding_has_its_number_beside_its_first_place_and_before_its_words()
    {
        var report = Inspect(Crowded);
        report.Findings.Count.ShouldBeGreaterThan(5);
        var svg = Draw(Crowded);

        var numbers = svg.Paths("numbers")
            .Select(path => (string?)path.Attribute("aria-label"))
            .OfType<string>()
            .ToArray();
        var all = Enumerable.Range(1, report.Findings.Count).Select(number => $"{number}");
        numbers.ShouldBe(all.Concat(all));

        // Lines that lead from the ring to the number are those that say nothing.
        var leaders = svg.Paths("numbers")
            .Where(path => path.Attribute("aria-label") is null)
            .Select(path => SvgPathReader.Read((string)path.Attribute("d")!)[0][0])
            .ToArray();
        var badges = Badges(svg);
        var frame = Frame(svg);
        for (var i = 0; i < report.Findings.Count; i++)
        {
            var start = OnWood(leaders[i].Start, frame);
            start.DistanceTo(report.Findings[i].Place).ShouldBe(RingRadius(svg), 3 * Written);
            OnWood(leaders[i].End, frame).DistanceTo(badges[i]).ShouldBe(0, 3 * Written);
        }
    }

    [Fact]
    public void The_words_are_those_of_the_findings_in_their_order()
    {
        var report = Inspect(Crowded);

        var text = string.Join(' ', Lines(Draw(Crowded)));

        text.ShouldContain(report.Summary);
        text.ShouldContain(
            string.Join(' ', report.Findings.Select(finding => finding.Message)),
            Case.Sensitive
        );
    }

    [Fact]
    public void Numbers_cover_neither_each_other_nor_a_ring()
    {
        var svg = Draw(Crowded);
        var badges = Badges(svg);
        var rings = ((string[])["places-error", "places-warning", "places-note"])
            .SelectMany(group => Rings(svg, group))
            .ToArray();
        var radius = BadgeRadius(svg);

        for (var i = 0; i < badges.Length; i++)
        {
            for (var j = i + 1; j < badges.Length; j++)
                badges[i].DistanceTo(badges[j]).ShouldBeGreaterThan(2 * radius);
            foreach (var ring in rings)
                badges[i].DistanceTo(ring).ShouldBeGreaterThan(radius + RingRadius(svg));
        }
    }

    [Fact]
    public void Nothing_reaches_out_of_the_sheet_nor_into_the_words()
    {
        var svg = Draw(Crowded);
        var lowest = 0.0;
        foreach (var circle in Circles(svg))
        {
            var radius = WrittenSvg.Number(circle, "r");
            WrittenSvg.Number(circle, "cx").ShouldBeInRange(radius, svg.Width - radius);
            WrittenSvg.Number(circle, "cy").ShouldBeInRange(radius, svg.Height - radius);
        }
        foreach (var circle in svg.Circles("numbers").Take(Inspect(Crowded).Findings.Count))
            lowest = Math.Max(lowest, WrittenSvg.Number(circle, "cy") + BadgeRadius(svg));
        foreach (var place in svg.Runs("text").SelectMany(run => run).Select(piece => piece.Start))
        {
            place.X.ShouldBeInRange(0, svg.Width);
            place.Y.ShouldBeInRange(lowest, svg.Height);
        }
    }

    /// <summary>A square 10 mm wide in wood 12 mm thick is 5 tan 65° = 10.7 mm deep: an error, and a warning at the same place.</summary>
    [Fact]
    public void An_error_is_drawn_over_a_warning_at_its_place_and_stronger()
    {
        var svg = WrittenSvg.Of(
            Board(60, 60, Square(20, 20, 10)).Inspect(Knife, Stock.Thick(12)).Sheet().Save
        );

        var groups = svg
            .Root.Elements()
            .Select(element => (string?)element.Attribute("id"))
            .ToList();
        groups.ShouldContain("places-warning");
        groups.IndexOf("places-error").ShouldBeGreaterThan(groups.IndexOf("places-warning"));
        Width("places-error").ShouldBeGreaterThan(Width("places-warning"));

        double Width(string group) => WrittenSvg.Number(svg.Group(group)!, "stroke-width");
    }

    [Fact]
    public void What_would_clear_a_whole_pattern_stands_below_the_findings()
    {
        var report = Inspect(TwoSquares);
        report.Suggestions.ShouldNotBeEmpty();

        var lines = string.Join(' ', Lines(Draw(TwoSquares)));

        foreach (var suggestion in report.Suggestions)
            lines
                .IndexOf(suggestion.Text, StringComparison.Ordinal)
                .ShouldBeGreaterThan(
                    lines.IndexOf(report.Findings[^1].Message, StringComparison.Ordinal)
                );
    }

    /// <summary>A square of side 3 is 1.5 tan 65° = 3.2 mm deep, and far from everything.</summary>
    [Fact]
    public void A_report_that_found_nothing_says_so_and_marks_nothing()
    {
        var clean = Board(40, 40, Square(18, 18, 3));
        Inspect(clean).Findings.ShouldBeEmpty();

        var svg = Draw(clean);

        Lines(svg).ShouldContain("nothing found");
        Circles(svg).ShouldBeEmpty();
        svg.Group("numbers").ShouldBeNull();
        svg.Paths("chips").Count().ShouldBe(1);
    }

    /// <summary>A groove far deeper than the wood is not looked at: that nothing was found must not be taken for more.</summary>
    [Fact]
    public void A_report_says_that_line_cuts_are_not_looked_at()
    {
        const string Unseen = "Line cuts are not inspected.";
        var chips = Board(40, 40, Square(18, 18, 3));
        var groove = Pattern.OfLineCuts(new LineCut(Chain.Line(new(5, 5), new(35, 5)), width: 30));

        Lines(Draw(chips)).ShouldNotContain(Unseen);
        Inspect(chips).ToString().ShouldNotContain(Unseen);
        Lines(Draw(chips.With(groove))).ShouldContain(Unseen);
        Inspect(chips.With(groove)).ToString().ShouldContain(Unseen);
    }

    [Fact]
    public void An_empty_pattern_cannot_be_drawn()
    {
        var error = Should.Throw<PatternException>(() => Draw(Pattern.Empty));

        error.Message.ShouldContain("empty");
        error.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void The_same_report_gives_the_same_bytes_in_any_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var texts = ((string[])["", "de-DE", "ar-SA"]).Select(culture =>
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                return Draw(Crowded).Text;
            });
            texts.Distinct().Count().ShouldBe(1);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task It_is_saved_as_a_picture_only()
    {
        using var folder = new TemporaryFolder();
        var sheet = Inspect(TwoSquares).Sheet();

        Should
            .Throw<ArgumentException>(() => sheet.Save(folder.File("report.dxf")))
            .Message.ShouldContain(".svg");
        await Should.ThrowAsync<ArgumentException>(() =>
            sheet.SaveAsync(folder.File("report"), TestContext.Current.CancellationToken)
        );
        folder.Names.ShouldBeEmpty();

        sheet.Save(folder.File("report.svg"));
        await sheet.SaveAsync(folder.File("later.SVG"), TestContext.Current.CancellationToken);
        File.ReadAllBytes(folder.File("later.SVG"))
            .ShouldBe(File.ReadAllBytes(folder.File("report.svg")));
    }

    [Fact]
    public void A_stream_that_cannot_be_written_to_is_refused()
    {
        using var stream = new MemoryStream([], writable: false);

        Should
            .Throw<ArgumentException>(() => Inspect(TwoSquares).Sheet().Save(stream))
            .Message.ShouldContain("can't be written to");
    }

    [Fact]
    public void Another_wording_speaks_in_the_title()
    {
        var svg = WrittenSvg.Of(Inspect(TwoSquares).Sheet(new Other()).Save);

        Lines(svg)[0].ShouldStartWith("Prüfung");
    }

    private sealed class Other : Wording
    {
        public override string ReportTitle(string title) => $"Prüfung: {title}";
    }

    private static InspectionReport Inspect(Pattern pattern) => pattern.Inspect(Knife, Wood);

    private static WrittenSvg Draw(Pattern pattern) => WrittenSvg.Of(Inspect(pattern).Sheet().Save);

    /// <summary>Wood with its lower left corner at the origin.</summary>
    private static Pattern Board(double width, double height, params Contour[] chips) =>
        Pattern.Combine(
            Pattern.OfChips(chips),
            Pattern.OfStock(Contour.Rectangle(Point.Origin, new(width, height)))
        );

    private static Contour Square(double x, double y, double side) =>
        Contour.Rectangle(new(x, y), new(x + side, y + side));

    /// <summary>A triangle 5 mm long, a little wider each, with a tip of at most 12 degrees.</summary>
    private static Contour Sliver(double x, double y, int number) =>
        Contour.Polygon(new(x, y), new(x + 4.6, y + 0.1 * number), new(x, y + 0.6 + 0.04 * number));

    /// <summary>Lower left corner of the wood on the sheet: what turns places of the sheet into those of the pattern.</summary>
    private static (double Left, double Bottom) Frame(WrittenSvg svg)
    {
        var corners = svg.Runs("stock")
            .SelectMany(run => run)
            .Select(piece => piece.Start)
            .ToArray();
        return (corners.Min(corner => corner.X), corners.Max(corner => corner.Y));
    }

    private static Point OnWood(Point sheet, (double Left, double Bottom) frame) =>
        new(sheet.X - frame.Left, frame.Bottom - sheet.Y);

    private static Point Middle(XElement circle, WrittenSvg svg) =>
        OnWood(new(WrittenSvg.Number(circle, "cx"), WrittenSvg.Number(circle, "cy")), Frame(svg));

    private static Point[] Rings(WrittenSvg svg, string group) =>
        [.. svg.Circles(group).Select(circle => Middle(circle, svg))];

    /// <summary>The numbers on the wood: the first half, those in front of the words are the second.</summary>
    private static Point[] Badges(WrittenSvg svg)
    {
        var all = svg.Circles("numbers").ToArray();
        return [.. all[..(all.Length / 2)].Select(circle => Middle(circle, svg))];
    }

    private static IEnumerable<XElement> Circles(WrittenSvg svg) =>
        svg.Root.Descendants().Where(element => element.Name.LocalName == "circle");

    private static double RingRadius(WrittenSvg svg) =>
        WrittenSvg.Number(svg.Circles("places-warning").First(), "r");

    private static double BadgeRadius(WrittenSvg svg) =>
        WrittenSvg.Number(svg.Circles("numbers").First(), "r");

    private static string[] Lines(WrittenSvg svg) =>
        [.. svg.Paths("text").Select(path => (string)path.Attribute("aria-label")!)];
}
