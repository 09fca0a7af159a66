using System.Globalization;
using PatternGen.Tests.Geometry;
using PatternGen.Tests.Output.Saving;
using PatternGen.Tests.Output.Svg;

namespace PatternGen.Tests.Output.Preview;

public class CarvedPictureSpecs
{
    private static readonly Knife Knife = Knife.Held(degrees: 65);

    /// <summary>Walls in the order of the sides: below, right, above, left; they face up, left, down, right.</summary>
    private static readonly Pattern Square = Pattern.OfChips(
        Contour.Rectangle(new(0, 0), new(6, 6))
    );

    [Fact]
    public void A_wall_that_faces_the_light_is_bright_and_its_opposite_dark()
    {
        var tones = Tones(Square.Preview(Knife).LitFrom(direction: 90, height: 45));

        tones.Length.ShouldBe(4);
        // The light is on the right: the left wall looks there.
        tones[3].ShouldBe(tones.Max());
        tones[1].ShouldBe(tones.Min());
        tones[0].ShouldBe(tones[2]);
    }

    [Theory]
    [InlineData(0, 180)]
    [InlineData(90, 270)]
    [InlineData(45, 225)]
    [InlineData(300, 120)]
    public void Under_light_from_the_other_side_bright_and_dark_swap(double one, double other)
    {
        var before = Tones(Square.Preview(Knife).LitFrom(one, 40));
        var after = Tones(Square.Preview(Knife).LitFrom(other, 40));

        after.ShouldBe([before[2], before[3], before[0], before[1]]);
        before.Distinct().Count().ShouldBeGreaterThan(1);
    }

    /// <summary>
    /// Lambert: brightness goes with the cosine between the normal and the light. Here the normal comes from the three
    /// corners of each facet, two on the side at depth 0 and one at the deepest point.
    /// </summary>
    [Fact]
    public void Walls_are_the_brighter_the_nearer_their_normal_is_to_the_light()
    {
        double[][] corners =
        [
            [0, 0],
            [9, -1],
            [11, 3],
            [5, 7],
            [1, 5],
        ];
        var points = corners.Select(c => new Point(c[0], c[1])).ToArray();
        var chip = Contour.Polygon(points);
        foreach (var (direction, height) in ((double, double)[])[(315, 45), (20, 30), (200, 70)])
        {
            var tones = Tones(Pattern.OfChips(chip).Preview(Knife).LitFrom(direction, height));
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(height));
            var compass = double.DegreesToRadians(direction);
            double[] light = [Math.Sin(compass) * cos, Math.Cos(compass) * cos, sin];
            var cosines = points.Select((start, i) => Cosine(start, points[(i + 1) % 5], light));

            var byCosine = cosines.Zip(tones).OrderBy(wall => wall.First).ToArray();
            byCosine.Select(wall => wall.Second).ShouldBeInOrder();
            byCosine.Select(wall => wall.Second).Distinct().Count().ShouldBeGreaterThan(2);
        }

        // The wall falls by tan(65°) for each mm to the left of its side.
        static double Cosine(Point start, Point end, double[] light)
        {
            var inward = (end - start).Left.Unit();
            var slope = Math.Tan(double.DegreesToRadians(65));
            double[] normal = [slope * inward.X, slope * inward.Y, 1];
            var length = Math.Sqrt(normal.Sum(part => part * part));
            return normal.Zip(light, (a, b) => a * b).Sum() / length;
        }
    }

    [Fact]
    public void Under_high_light_a_flatter_wall_is_lighter()
    {
        double Tone(double slope) =>
            Tones(Square.WithCut(ChipCut.WallsAt(slope)).Preview(Knife).LitFrom(0, 85))[0];

        double[] tones = [Tone(80), Tone(65), Tone(50), Tone(35), Tone(20)];
        tones.ShouldBeInOrder();
        tones.ShouldBeUnique();
    }

    [Fact]
    public void Under_light_from_straight_above_all_walls_of_one_angle_look_alike() =>
        Tones(Square.Preview(Knife).LitFrom(0, 90)).Distinct().ShouldHaveSingleItem();

    [Fact]
    public void A_wide_chip_that_the_knife_cuts_flatter_looks_flatter()
    {
        // Clearance 3: at 65 degrees 6.4 mm deep, within 4 mm at atan(4/3) = 53.13 degrees.
        var flatter = Tones(Square.Preview(Knife.NoDeeperThan(4)).LitFrom(0, 85));
        var asHeld = Tones(Square.WithCut(ChipCut.WallsAt(53.13)).Preview(Knife).LitFrom(0, 85));
        flatter.ShouldBe(asHeld);
        flatter[0].ShouldBeGreaterThan(Tones(Square.Preview(Knife).LitFrom(0, 85))[0]);
    }

    [Fact]
    public void The_light_stays_where_it_is_when_a_chip_is_turned()
    {
        var turned = Tones(Square.Turned(90).Preview(Knife).LitFrom(90, 45));
        var tones = Tones(Square.Preview(Knife).LitFrom(90, 45));
        // The side that was below is on the right now.
        turned.ShouldBe([tones[1], tones[2], tones[3], tones[0]]);
    }

    [Theory]
    [InlineData(-1, 45)]
    [InlineData(361, 45)]
    [InlineData(double.NaN, 45)]
    [InlineData(315, 0)]
    [InlineData(315, -10)]
    [InlineData(315, 91)]
    [InlineData(315, double.NaN)]
    public void A_light_that_can_not_be_is_refused(double direction, double height) =>
        Should.Throw<ArgumentOutOfRangeException>(() =>
            Square.Preview(Knife).LitFrom(direction, height)
        );

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Depth_lines_need_a_step(double step) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Square.Preview(Knife).WithDepthLines(step));

    [Fact]
    public void Changes_make_copies()
    {
        var plain = Square.Preview(Knife);
        plain.LitFrom(10, 20).WithDepthLines(1).WithDepthColours();
        plain.LightDirection.ShouldBe(315);
        plain.LightHeight.ShouldBe(45);
        plain.DepthLineStep.ShouldBeNull();
        plain.IsInDepthColours.ShouldBeFalse();
    }

    /// <summary>
    /// A line at depth d lies at the distance d / tan(angle) from the outline: NetTopologySuite's distance to the outline cut
    /// into short lines.
    /// </summary>
    [Theory]
    [InlineData(65)]
    [InlineData(40)]
    public void Depth_lines_lie_as_far_from_the_outline_as_the_walls_take_to_get_so_deep(
        double angle
    )
    {
        var petal = new Contour(new Vertex(0, 0, 0.35), new Vertex(28, 4, 0.2));
        var notched = Contour.Polygon(
            new(40, 0),
            new(54, 0),
            new(54, 6),
            new(46, 6),
            new(46, 14),
            new(40, 14)
        );
        foreach (var chip in (Contour[])[petal, notched])
        {
            var picture = Written(
                Pattern.OfChips(chip).Preview(Knife.Held(angle)).WithDepthLines(0.7)
            );
            var (left, top) = (
                chip.Extents.Centre.X - picture.Width / 2,
                chip.Extents.Centre.Y + picture.Height / 2
            );
            var outline = Flat.Polygon(chip, 1e-4).ExteriorRing;
            var count = 0;
            for (var line = 1; picture.Group($"depth-line-{line}") is not null; line++, count++)
                foreach (var piece in picture.Runs($"depth-line-{line}").SelectMany(run => run))
                foreach (var point in piece.Sample(10))
                    outline
                        .Distance(Flat.At(left + point.X, top - point.Y))
                        // Three decimals are written, and an arc's radius is rounded too.
                        .ShouldBe(0.7 * line / Math.Tan(double.DegreesToRadians(angle)), 0.003);
            count.ShouldBeGreaterThan(2);
        }
    }

    /// <summary>Deepest: a circle of radius 3 at 65 degrees, 3 × 2.14450692 = 6.4335 mm.</summary>
    [Fact]
    public void The_scale_of_depth_colours_ends_at_the_deepest_chip()
    {
        var pattern = Pattern.Combine(
            Square.Scaled(0.5),
            Pattern.OfChips(new Circle(new(20, 3), 3).ToContour())
        );
        var picture = Written(pattern.Preview(Knife).WithDepthColours());

        var scale = picture.Group("depth-scale").ShouldNotBeNull();
        scale.Elements().First().Value.ShouldBe("Depth from 0 to 6.43 mm");
        var numbers = scale
            .Elements()
            .Select(element => (string?)element.Attribute("aria-label"))
            .Select(text => double.TryParse(text, CultureInfo.InvariantCulture, out var n) ? n : 0);
        numbers.Max().ShouldBe(6.43);
        // And a picture in wood has none.
        Written(pattern.Preview(Knife)).Group("depth-scale").ShouldBeNull();
    }

    [Fact]
    public void The_scale_knows_how_flat_the_knife_cuts_wide_chips() =>
        Written(Square.Preview(Knife.NoDeeperThan(4)).WithDepthColours())
            .Text.ShouldContain("Depth from 0 to 4 mm");

    [Fact]
    public void A_stab_cut_chip_is_as_deep_as_it_is_said_to_be() =>
        Written(
            Pattern
                .OfChips(Contour.Polygon(new(0, 0), new(6, 0), new(3, 4)))
                .WithCut(ChipCut.Stabbed(2, depth: 3))
                .Preview(Knife)
                .WithDepthColours()
        )
            .Text.ShouldContain("Depth from 0 to 3 mm");

    [Fact]
    public void Holes_grooves_and_stab_cut_chips_are_drawn()
    {
        var ring = new Region(
            new Circle(Point.Origin, 8).ToContour(),
            new Circle(Point.Origin, 5).ToContour()
        );
        Chain[] paths =
        [
            Chain.Line(new(20, 0), new(50, 0)),
            new(new Vertex(20, 10, 0.3), new Vertex(40, 10), new Vertex(50, 18)),
        ];
        var pattern = Pattern.Combine(
            Pattern.OfChips(ring.Parts),
            Pattern.OfLineCuts(
                new LineCut(paths[0], 1.5),
                new LineCut(paths[1], 1.5),
                LineCut.Tapering(paths[1].Transformed(Transform.Move(0, 12)), 2)
            ),
            Pattern
                .OfChips(Contour.Polygon(new(0, 0), new(6, 0), new(3, 4)))
                .WithCut(ChipCut.Stabbed(2))
                .Moved(0, 12)
        );
        var picture = Written(pattern.Preview(Knife).WithDepthLines(0.3));

        picture.Paths("walls").Count().ShouldBeGreaterThan(100);
        picture.Paths("groove-edges").Count().ShouldBe(3);
        foreach (var run in picture.Runs("walls").Concat(picture.Runs("depth-line-1")))
        foreach (var point in run.SelectMany(piece => piece.Sample(4)))
        {
            point.X.ShouldBeInRange(1, picture.Width - 1);
            point.Y.ShouldBeInRange(1, picture.Height - 1);
        }
    }

    [Fact]
    public void Readers_are_told_what_it_is_and_no_font_is_needed()
    {
        var picture = Written(Samples.Board().Preview(Knife).WithDepthColours());
        picture.Root.Attribute("role")!.Value.ShouldBe("img");
        picture.Root.Elements().First().Value.ShouldBe("Practice board, as carved");
        picture.Root.Elements().ElementAt(1).Value.ShouldContain("deepest cut");
        picture.Text.ShouldNotContain("font");
        picture.Text.ShouldNotContain("<text");
        picture.Group("layout-lines").ShouldBeNull();
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_same_picture_gives_the_same_bytes_in_any_culture(string culture)
    {
        var expected = Bytes();
        Bytes().ShouldBe(expected);
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

        static byte[] Bytes() =>
            Written(Samples.Board().Preview(Knife).WithDepthColours().WithDepthLines(0.5)).Bytes;
    }

    [Fact]
    public void Many_threads_draw_the_same()
    {
        var picture = Samples.Board().Preview(Knife);
        var expected = Written(picture).Bytes;
        Parallel.For(0, 8, _ => Written(picture).Bytes.ShouldBe(expected));
    }

    [Fact]
    public async Task Saving_without_waiting_gives_the_same_file()
    {
        using var folder = new TemporaryFolder();
        var stop = TestContext.Current.CancellationToken;
        var picture = Samples.Board().Preview(Knife);
        var (now, later) = (folder.File("now.svg"), folder.File("later.svg"));
        picture.Save(now);
        await picture.SaveAsync(later, stop);
        using var taken = new MemoryStream();
        using var stream = new OneWayStream(taken, refusesSynchronous: true);
        await picture.SaveAsync(stream, stop);

        var expected = await File.ReadAllBytesAsync(now, stop);
        (await File.ReadAllBytesAsync(later, stop)).ShouldBe(expected);
        taken.ToArray().ShouldBe(expected);
    }

    [Fact]
    public void What_can_not_be_shown_leaves_nothing_half_written()
    {
        var picture = Pattern.Empty.Preview(Knife);
        using var folder = new TemporaryFolder();
        var path = folder.File("square.svg");
        File.WriteAllText(path, "before");
        using var stream = new MemoryStream();

        Should.Throw<PatternException>(() => picture.Save(path)).Remedies.ShouldNotBeEmpty();
        Should.Throw<PatternException>(() => picture.Save(stream));
        File.ReadAllText(path).ShouldBe("before");
        folder.Names.ShouldBe(["square.svg"]);
        stream.Length.ShouldBe(0);
    }

    [Fact]
    public void An_empty_pattern_and_another_format_are_refused()
    {
        Should.Throw<PatternException>(() => Pattern.Empty.Preview(Knife).Save(Stream.Null));
        Should.Throw<ArgumentException>(() => Square.Preview(Knife).Save("square.dxf"));
        Should.Throw<ArgumentNullException>(() => Square.Preview(null!));
    }

    private static WrittenSvg Written(CarvedPicture picture) => WrittenSvg.Of(picture.Save);

    /// <summary>How light each wall is: the sum of its colour's parts.</summary>
    private static double[] Tones(CarvedPicture picture) =>
        [
            .. Written(picture)
                .Paths("walls")
                .Select(path => (string)path.Attribute("fill")!)
                .Select(fill =>
                    Enumerable
                        .Range(0, 3)
                        .Sum(part => (double)Convert.ToInt32(fill.Substring(1 + 2 * part, 2), 16))
                ),
        ];
}
