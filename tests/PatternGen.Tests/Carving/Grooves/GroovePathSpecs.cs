namespace PatternGen.Tests.Carving.Grooves;

public class GroovePathSpecs
{
    private static readonly VBit Bit = VBit.Of(60, 40);

    public static TheoryData<string> Names() => [.. GrooveShapes.All().Select(shape => shape.Name)];

    private static Pattern Named(string name) =>
        GrooveShapes.All().Single(shape => shape.Name == name).Pattern;

    /// <summary>Of the ends of lines that meet in a point, an odd one is the end of a run: half of them are the fewest (Euler).</summary>
    [Theory]
    [InlineData("triangle", 2)]
    [InlineData("square", 2)]
    [InlineData("rectangle", 3)]
    [InlineData("lens", 1)]
    [InlineData("petal", 1)]
    [InlineData("semicircle", 1)]
    [InlineData("hollow", 2)]
    [InlineData("stadium", 1)]
    [InlineData("drop", 1)]
    [InlineData("disc", 1)]
    [InlineData("ring", 1)]
    public void I_get_the_fewest_paths_that_pass_each_valley_once(string name, int paths) =>
        Named(name).GroovePaths(Bit).PathCount.ShouldBe(paths);

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_valley_is_passed_once_by_as_few_paths_as_can_be(string name)
    {
        var pattern = Named(name);
        var chip = pattern.Chips.Single();
        var roof = Roof.Over(new Region(chip.Holes.Prepend(chip.Outline)).Parts.Single());
        var odd = roof
            .Valleys.SelectMany(valley => new[] { valley.Start, valley.End })
            .GroupBy(node => node)
            .Count(ends => ends.Count() % 2 == 1);
        var paths = pattern.GroovePaths(Bit).Paths.ToList();
        paths.Count.ShouldBe(Math.Max(1, odd / 2));

        // Along the valleys, and down a wall where there is no tip: as long as that wall is wide there.
        var run = paths.Sum(path => Length(path.Places, path.Entry == GrooveEntry.Wall ? 1 : 0));
        run.ShouldBe(roof.Valleys.Sum(Length), 0.02);
    }

    [Theory]
    [InlineData("triangle")]
    [InlineData("square")]
    [InlineData("rectangle")]
    [InlineData("lens")]
    [InlineData("petal")]
    [InlineData("crescent")]
    [InlineData("semicircle")]
    [InlineData("hollow")]
    [InlineData("cusps")]
    [InlineData("ell")]
    [InlineData("sail")]
    [InlineData("drop")]
    [InlineData("holed")]
    public void Every_path_enters_at_depth_0_in_a_tip(string name)
    {
        var pattern = Named(name);
        var corners = pattern.Chips.Single().Outline.Vertices.Select(vertex => vertex.Point);
        var paths = pattern.GroovePaths(Bit);
        foreach (var path in paths.Paths)
        {
            path.Entry.ShouldBe(GrooveEntry.Tip);
            path.Places[0].Depth.ShouldBe(0);
            corners.ShouldContain(path.Places[0].Point);
        }
        paths.WallEntryCount.ShouldBe(0);
    }

    [Theory]
    [InlineData("stadium")]
    [InlineData("disc")]
    [InlineData("ring")]
    [InlineData("eccentric ring")]
    public void Without_a_tip_it_enters_at_depth_0_on_the_outline_and_goes_down_a_wall(string name)
    {
        var pattern = Named(name);
        var chip = pattern.Chips.Single();
        var paths = pattern.GroovePaths(Bit);
        paths.WallEntryCount.ShouldBe(1);
        var path = paths.Paths.Single();
        path.Entry.ShouldBe(GrooveEntry.Wall);
        path.Places[0].Depth.ShouldBe(0);
        var start = path.Places[0].Point;
        chip.Holes.Prepend(chip.Outline)
            .Min(ring => SweptCone.Distance(ring, start.X, start.Y))
            .ShouldBe(0, 1e-9);
        paths
            .Notes()
            .ShouldContain(note => note.Contains("1 without a tip", StringComparison.Ordinal));
    }

    /// <summary>The circle in a 3-4-5 triangle has the radius 1; tan 60° = 1.7320508, tan 65° = 2.1445069.</summary>
    [Fact]
    public void The_angle_of_the_bit_sets_the_depth_and_the_note_says_what_the_knife_would_make()
    {
        var paths = Pattern
            .OfChips(Contour.Polygon(new Point(0, 0), new(4, 0), new(0, 3)))
            .GroovePaths(VBit.Of(60, 12));
        paths.Deepest.ShouldBe(1.7320508, 1e-7);
        paths.DeepestWith(Knife.Held(65)).ShouldBe(2.1445069, 1e-7);
        paths.Paths.Max(path => path.Deepest).ShouldBe(1.7320508, 1e-7);
        paths.Notes()[1].ShouldContain("Deepest 1.732 mm, z = -1.732");
        paths.Notes()[1].ShouldContain("65° goes 2.145 mm");
        paths.Notes()[^1].ShouldContain("Guards and hold-downs");
    }

    [Fact]
    public void Straight_chips_need_a_corner_for_each_node_only()
    {
        var paths = Named("triangle").GroovePaths(Bit, 0.0001).Paths.ToList();
        paths.Select(path => path.Places.Count).ShouldBe([3, 2]);
    }

    [Fact]
    public void Finer_paths_have_more_corners()
    {
        // The distance of a chord from a curve goes with the square of its length: a hundredth of it takes ten times as many.
        var coarse = Named("petal").GroovePaths(Bit, 0.05).PlaceCount;
        var fine = Named("petal").GroovePaths(Bit, 0.0005).PlaceCount;
        ((double)fine / coarse).ShouldBeInRange(5, 20);
    }

    [Fact]
    public void Line_cuts_come_first_then_chips_in_their_order()
    {
        var pattern = Pattern
            .OfChips(GrooveShapes.Lens)
            .Repeated(3, 15)
            .With(Pattern.OfLineCuts(new LineCut(Chain.Line(new(0, 9), new(40, 9)), 1)));
        var paths = pattern.GroovePaths(Bit);
        paths.Paths.Select(path => path.LineCut).ShouldBe([1, null, null, null]);
        paths
            .Paths.Select(path => path.Chip)
            .ShouldBe([null, new ChipId(1, 1), new ChipId(1, 2), new ChipId(1, 3)]);
        paths.PathCount.ShouldBe(4);
    }

    [Fact]
    public void An_empty_pattern_has_no_paths()
    {
        var paths = Pattern.Empty.GroovePaths(Bit);
        paths.PathCount.ShouldBe(0);
        paths.Paths.ShouldBeEmpty();
        paths.Deepest.ShouldBe(0);
        Should.Throw<PatternException>(() => paths.Save(new MemoryStream()));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(0.00001)]
    [InlineData(2)]
    public void An_accuracy_out_of_range_is_refused(double accuracy) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Named("lens").GroovePaths(Bit, accuracy));

    [Fact]
    public void Ten_thousand_repeats_share_the_paths_of_one()
    {
        var one = Pattern.OfChips(GrooveShapes.Crescent);
        var many = one.Repeated(10_000, 16).GroovePaths(Bit);
        many.PathCount.ShouldBe(10_000 * one.GroovePaths(Bit).PathCount);
        var last = many.Paths.Last();
        last.Chip.ShouldBe(new ChipId(1, 10_000));
        var first = one.GroovePaths(Bit).Paths.Single();
        last.Places[^1].Point.X.ShouldBe(first.Places[^1].Point.X + 9_999 * 16, 1e-9);
    }

    /// <summary>Scaled by 3, three times as deep; and the accuracy is still that of the wood, so its square root more corners.</summary>
    [Fact]
    public void Depth_scales_with_the_chip_and_the_accuracy_does_not()
    {
        var one = Named("petal").GroovePaths(Bit);
        var large = Named("petal").Scaled(3).GroovePaths(Bit);
        large.Deepest.ShouldBe(3 * one.Deepest, 3 * 0.005);
        large.PlaceCount.ShouldBeGreaterThan(one.PlaceCount * 3 / 2);
    }

    private static double Length(IReadOnlyList<GroovePlace> places, int from)
    {
        double length = 0;
        for (var i = from + 1; i < places.Count; i++)
            length += places[i - 1].Point.DistanceTo(places[i].Point);
        return length;
    }

    private static double Length(Valley valley)
    {
        double length = 0;
        for (var i = 1; i <= 1000; i++)
            length += valley
                .PlaceAt((i - 1) / 1000.0)
                .Point.DistanceTo(valley.PlaceAt(i / 1000.0).Point);
        return length;
    }
}
