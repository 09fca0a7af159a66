using System.Globalization;
using PatternGen.Tests.Geometry;
using PatternGen.Tests.Output.Svg;

namespace PatternGen.Tests.Output.Section;

public class SectionSpecs
{
    private static readonly Knife Knife = Knife.Held(degrees: 65);

    private static readonly Stock Board = Stock.Thick(20);

    /// <summary>tan 65° from trigonometric tables.</summary>
    private const double Tan65 = 2.14450692050956;

    /// <summary>Chips with a line through where they are deepest, and their depth at 65 degrees.</summary>
    public static TheoryData<string> Published => [.. Chips.Keys];

    private static Dictionary<
        string,
        (Contour Chip, Point From, Point To, double Depth)
    > Chips { get; } =
        new()
        {
            // Inradius 1 (Euclid IV.4).
            ["3-4-5"] = (
                Contour.Polygon(new(0, 0), new(4, 0), new(0, 3)),
                new(-2, 1),
                new(5, 1),
                Tan65
            ),
            // Inradius of an equilateral triangle of side 10: 10 / (2 √3) = 2.886751.
            ["equilateral"] = (
                Contour.Polygon(new(0, 0), new(10, 0), new(5, 5 * Math.Sqrt(3))),
                new(5, -1),
                new(5, 10),
                6.19065823917605
            ),
            ["square"] = (
                Contour.Rectangle(new(0, 0), new(6, 6)),
                new(-1, 3),
                new(7, 3),
                6.43352076152868
            ),
            // Hip roof over a rectangle: the bottom line is 6 long, at half the width times the slope.
            ["rectangle"] = (
                Contour.Rectangle(new(0, 0), new(10, 4)),
                new(-1, 2),
                new(11, 2),
                4.28901384101912
            ),
            ["circle"] = (new Circle(Point.Origin, 1).ToContour(), new(-2, 0), new(2, 0), Tan65),
            // Circles round (0, 0) and (6, 0) of radius 5: the largest circle in their lens has radius 2 (Codeforces Gym 102215 L).
            ["lens"] = (
                new Contour(new Vertex(3, -4, LensBulge), new Vertex(3, 4, LensBulge)),
                new(0, 0),
                new(6, 0),
                4.28901384101912
            ),
            // Equidistance from diameter and arc: half the radius.
            ["semicircle"] = (
                new Contour(new Vertex(-1, 0), new Vertex(1, 0, 1)),
                new(0, -1),
                new(0, 2),
                1.07225346025478
            ),
        };

    /// <summary>Bulge of an arc of radius 5 over a chord of 8: sagitta 2, so 2 · 2 / 8.</summary>
    private const double LensBulge = 0.5;

    [Theory]
    [MemberData(nameof(Published))]
    public void A_section_through_the_deepest_point_is_as_deep_as_the_chip(string name)
    {
        var (chip, from, to, depth) = Chips[name];
        var section = Pattern.OfChips(chip).Section(from, to, Board, Knife);

        section.Cuts.Single().Depth.ShouldBe(depth, 1e-6);
        section.Cuts.Single().Chip.ShouldBe(new ChipId(1, 1));
        section.Profile.Max(place => place.Depth).ShouldBe(depth, 1e-6);
        Written(section)
            .Text.ShouldContain(
                $"aria-label=\"{depth.ToString("0.##", CultureInfo.InvariantCulture)}\""
            );
    }

    [Fact]
    public void The_profile_has_its_corners_where_walls_meet()
    {
        var (chip, from, to, depth) = Chips["rectangle"];
        var profile = Pattern.OfChips(chip).Section(from, to, Board, Knife).Profile;

        // From -1 to 11: in at 0, down to the bottom line from 2 to 8, out at 10.
        double[] along = [0, 1, 3, 9, 11, 12];
        double[] depths = [0, 0, depth, depth, 0, 0];
        profile.Count.ShouldBe(6);
        for (var i = 0; i < 6; i++)
        {
            profile[i].Along.ShouldBe(along[i], 1e-7);
            profile[i].Depth.ShouldBe(depths[i], 1e-6);
        }
    }

    [Fact]
    public void The_depth_of_a_level_bottom_is_measured_in_its_middle()
    {
        var (chip, from, to, _) = Chips["rectangle"];
        Pattern.OfChips(chip).Section(from, to, Board, Knife).Cuts.Single().Along.ShouldBe(6, 1e-6);
    }

    /// <summary>A pyramid with its point below the apex: the floor falls evenly, and stands upright there.</summary>
    [Fact]
    public void A_stab_cut_chip_has_a_slope_and_an_upright_wall()
    {
        var section = Pattern
            .OfChips(Contour.Polygon(new(0, 0), new(6, 0), new(3, 4)))
            .WithCut(ChipCut.Stabbed(2, depth: 3))
            .Section(new(3, -2), new(3, 6), Board, Knife);

        section
            .Profile.Select(place => (Math.Round(place.Along, 6), Math.Round(place.Depth, 6)))
            .ShouldBe([(0, 0), (2, 0), (6, 3), (6, 0), (8, 0)]);
        section.Cuts.Single().Depth.ShouldBe(3, 1e-6);
    }

    /// <summary>
    /// Depth anywhere is the distance from the outline times the tangent: NetTopologySuite's distance to the outline cut into
    /// short lines, at many places of lines in all directions.
    /// </summary>
    [Fact]
    public void The_profile_is_as_deep_as_the_distance_from_the_outline_says()
    {
        Region[] regions =
        [
            new(new Contour(new Vertex(0, 0, 0.35), new Vertex(28, 4, 0.2))),
            new(
                Contour.Polygon(
                    new(0, 0),
                    new(14, 0),
                    new(14, 5),
                    new(5, 5),
                    new(5, 14),
                    new(0, 14)
                )
            ),
            new(
                Contour.Polygon(
                    Enumerable
                        .Range(0, 10)
                        .Select(i =>
                            Point.Origin.Polar(i % 2 == 0 ? 9 : 4, Angle.FromDegrees(36 * i + 7))
                        )
                )
            ),
            new(new Circle(Point.Origin, 8).ToContour(), new Circle(new(1, 0), 4).ToContour()),
            new(
                new Contour(new Vertex(0, 0, -0.2), new Vertex(14, 0, 0.4), new Vertex(7, 12, -0.1))
            ),
        ];
        foreach (var region in regions)
        {
            var pattern = Pattern.OfChips(region.Parts);
            var flat = Flat.Of(region, 1e-5);
            var centre = region.Extents.Centre;
            for (var turn = 0; turn < 12; turn++)
            {
                var along = Vector.Towards(Angle.FromDegrees(15 * turn + 1.3));
                var offset = along.Left * (0.4 * (turn - 6));
                var from = centre + offset - along * 20;
                var section = pattern.Section(from, centre + offset + along * 20, Board, Knife);
                for (var i = 0; i <= 400; i++)
                {
                    var point = Flat.At((from + along * (0.1 * i)).X, (from + along * (0.1 * i)).Y);
                    var expected = flat.Contains(point) ? flat.Boundary.Distance(point) * Tan65 : 0;
                    // Chords may miss by 0.005 mm, the reference by 1e-5 × tan.
                    DepthAt(section, 0.1 * i)
                        .ShouldBe(expected, 0.0052, $"{point} on {region.Extents}");
                }
            }
        }
    }

    [Fact]
    public void A_ring_is_cut_twice_and_its_middle_stands()
    {
        var ring = new Region(
            new Circle(Point.Origin, 8).ToContour(),
            new Circle(Point.Origin, 4).ToContour()
        );
        var cuts = Pattern.OfChips(ring.Parts).Section(new(-9, 0), new(9, 0), Board, Knife).Cuts;
        cuts.Select(cut => Math.Round(cut.Along, 6)).ShouldBe([3, 15]);
        cuts.ShouldAllBe(cut => Math.Abs(cut.Depth - 2 * Tan65) < 1e-6);
    }

    [Fact]
    public void A_groove_is_as_deep_as_half_its_width_times_the_slope()
    {
        var groove = Pattern.OfLineCuts(new LineCut(Chain.Line(new(5, 0), new(5, 10)), 1));
        var section = groove.Section(new(0, 5), new(10, 5), Board, Knife);
        section.Cuts.Single().Chip.ShouldBeNull();
        section.Cuts.Single().Depth.ShouldBe(Tan65 / 2, 1e-6);
        section.Profile.Select(place => Math.Round(place.Along, 6)).ShouldBe([0, 4.5, 5, 5.5, 10]);
    }

    [Fact]
    public void Where_chips_overlap_the_deeper_one_is_what_is_seen()
    {
        var two = Pattern.OfChips(
            Contour.Rectangle(new(0, 0), new(6, 6)),
            Contour.Rectangle(new(4, 0), new(10, 6))
        );
        var section = two.Section(new(-1, 3), new(11, 3), Board, Knife);
        // Both slopes meet in the middle of what they share, 1 mm from either outline.
        DepthAt(section, 6).ShouldBe(Tan65, 0.006);
    }

    [Fact]
    public void Flatter_walls_of_wide_chips_are_seen()
    {
        var (chip, from, to, _) = Chips["square"];
        var section = Pattern.OfChips(chip).Section(from, to, Board, Knife.NoDeeperThan(4));
        section.Cuts.Single().Depth.ShouldBe(4, 1e-6);
    }

    [Fact]
    public void It_is_drawn_true_to_size_unless_asked_otherwise_and_says_so()
    {
        var (chip, from, to, depth) = Chips["square"];
        var section = Pattern.OfChips(chip).Section(from, to, Board, Knife);

        var plain = Written(section);
        Size(plain).Width.ShouldBe(8, 1e-3);
        Size(plain).Height.ShouldBe(20, 1e-3);
        plain.Text.ShouldContain("true size");

        var large = Written(section.WithDepthExaggerated(3));
        Size(large).Width.ShouldBe(8, 1e-3);
        Size(large).Height.ShouldBe(60, 1e-3);
        large.Text.ShouldNotContain("true size");
        large.Text.ShouldContain("depths drawn 3 times as large as they are");
        large.Text.ShouldContain($"aria-label=\"{depth:0.##}\"");

        static (double Width, double Height) Size(WrittenSvg file)
        {
            var points = file.Runs("profile")
                .SelectMany(run => run)
                .Select(piece => piece.Start)
                .ToArray();
            return (
                points.Max(point => point.X) - points.Min(point => point.X),
                points.Max(point => point.Y) - points.Min(point => point.Y)
            );
        }
    }

    [Theory]
    [InlineData(3)]
    [InlineData(1.2)]
    public void Numbers_stand_clear_of_each_other_however_near_the_chips_are(double pitch)
    {
        var row = Pattern
            .OfChips(Contour.Polygon(new(0, 0), new(pitch, 0), new(pitch / 2, 2)))
            .Repeated(25, pitch);
        var section = row.Section(new(0, 0.5), new(25 * pitch, 0.5), Board, Knife);
        var boxes = new DepthDimensions(section).Numbers.Select(number => number.Box()).ToArray();
        boxes.Length.ShouldBe(25);
        for (var i = 0; i < boxes.Length; i++)
        for (var j = 0; j < i; j++)
            boxes[i].Touches(boxes[j]).ShouldBeFalse($"{i} and {j}");
    }

    [Fact]
    public void A_line_without_length_off_the_wood_or_through_nothing_is_refused()
    {
        var pattern = Pattern.Combine(
            Pattern.OfStock(Contour.Rectangle(new(0, 0), new(60, 30))),
            Pattern.OfChips(Contour.Rectangle(new(10, 10), new(16, 16)))
        );
        SectionDrawing Section(Point from, Point to) => pattern.Section(from, to, Board, Knife);

        Should
            .Throw<ArgumentException>(() => Section(new(1, 1), new(1, 1)))
            .ParamName.ShouldBe("to");
        Should.Throw<ArgumentOutOfRangeException>(() => Section(new(double.NaN, 1), new(1, 1)));
        var off = Should.Throw<PatternException>(() => Section(new(0, -5), new(60, -5)));
        off.Message.ShouldContain("does not meet the wood");
        off.Remedies.ShouldNotBeEmpty();
        var nothing = Should.Throw<PatternException>(() => Section(new(0, 25), new(60, 25)));
        nothing.Message.ShouldContain("no chip");
        // What it names would work.
        nothing.Remedies.Single().ShouldContain("(13, 13)");
        Section(new(0, 13), new(60, 13)).Cuts.Count.ShouldBe(1);
        Should.Throw<PatternException>(() =>
            Pattern
                .OfStock(Contour.Rectangle(new(0, 0), new(9, 9)))
                .Section(new(0, 1), new(9, 1), Board, Knife)
        );
    }

    [Fact]
    public void A_section_that_reaches_over_the_wood_shows_the_wood_only()
    {
        var pattern = Pattern.Combine(
            Pattern.OfStock(Contour.Rectangle(new(0, 0), new(60, 30))),
            Pattern.OfChips(Contour.Rectangle(new(10, 10), new(16, 16)))
        );
        var file = Written(pattern.Section(new(-20, 13), new(100, 13), Board, Knife));
        var points = file.Runs("profile")
            .SelectMany(run => run)
            .Select(piece => piece.Start.X)
            .ToArray();
        (points.Max() - points.Min()).ShouldBe(60, 1e-3);
    }

    [Fact]
    public void A_chip_deeper_than_the_wood_goes_through_and_says_so()
    {
        var (chip, from, to, _) = Chips["square"];
        Written(Pattern.OfChips(chip).Section(from, to, Stock.Thick(5), Knife))
            .Text.ShouldContain("through the wood");
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void The_same_section_gives_the_same_bytes_in_any_culture(string culture)
    {
        var expected = Bytes();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Bytes().ShouldBe(expected);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static byte[] Bytes()
        {
            var file = Written(Samples.Board().Section(new(3, 60.3), new(127, 62.8), Board, Knife));
            file.Text.ShouldNotContain("<text");
            file.Root.Elements().First().Value.ShouldBe("Practice board, section");
            return file.Bytes;
        }
    }

    private static WrittenSvg Written(SectionDrawing section) => WrittenSvg.Of(section.Save);

    private static double DepthAt(SectionDrawing section, double along)
    {
        var profile = section.Profile;
        for (var i = 1; i < profile.Count; i++)
            if (along <= profile[i].Along)
            {
                var (a, b) = (profile[i - 1], profile[i]);
                return a.Depth + (b.Depth - a.Depth) * (along - a.Along) / (b.Along - a.Along);
            }
        return profile[^1].Depth;
    }
}
