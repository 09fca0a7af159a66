namespace PatternGen.Tests.Patterns;

public class PatternSpecs
{
    private static readonly Contour Triangle = Contour.Polygon(new(0, 0), new(4, 0), new(1, 3));
    private static readonly Contour Lens = new(new(0, 0, 0.3), new Vertex(6, 0, 0.3));

    [Fact]
    public void Repeats_share_one_shape_in_memory()
    {
        var chips = Pattern.OfChips(Triangle).Repeated(1000, 4).Chips.ToArray();

        chips.Length.ShouldBe(1000);
        chips.ShouldAllBe(chip => ReferenceEquals(chip.Shape, chips[0].Shape));
        chips[999].Outline.Vertices[0].Point.ShouldBe(new(3996, 0));
    }

    [Fact]
    public void Chips_are_made_only_as_far_as_they_are_read()
    {
        var many = Pattern.OfChips(Triangle).Repeated(10_000_000, 0.05);

        many.ChipCount.ShouldBe(10_000_000);
        many.Chips.First().Id.ShouldBe(new(1, 1));
    }

    [Fact]
    public void More_than_can_be_carved_is_refused_at_once()
    {
        var row = Pattern.OfChips(Triangle).Repeated(1_000_000, 0.01);

        Should
            .Throw<PatternException>(() => row.Repeated(1_000_000, 0.01))
            .Message.ShouldContain("1000000000000 pieces");
    }

    [Fact]
    public void Ids_stay_unique_when_patterns_are_combined()
    {
        var row = Pattern.OfChips(Triangle, Lens).Repeated(2, 10);
        var all = Pattern.Combine(row, row.Moved(0, 20), Pattern.OfChips(Lens));

        all.Chips.Select(chip => chip.Id.ToString())
            .ShouldBe(["1.1", "1.2", "1.3", "1.4", "2.1", "2.2", "2.3", "2.4", "3.1"]);
    }

    [Fact]
    public void Outlines_agree_with_shape_and_placement_and_stay_counter_clockwise()
    {
        var pattern = Pattern
            .OfChips(Triangle, Lens)
            .Repeated(3, 7)
            .MirroredLeftRight(2)
            .Turned(30, new(1, 1))
            .Scaled(1.5)
            .MirroredTopBottom()
            .MirroredTopBottom(5);

        foreach (var chip in pattern.Chips)
        {
            chip.Outline.SignedArea.ShouldBePositive();
            chip.Outline.SignedArea.ShouldBe(chip.Shape.SignedArea * 2.25, 1e-9);
            var placed = chip.Shape.Transformed(chip.Placement);
            placed.Centroid.DistanceTo(chip.Outline.Centroid).ShouldBeLessThan(1e-9);
            foreach (var corner in placed.Vertices)
                chip.Outline.Vertices.ShouldContain(vertex =>
                    vertex.Point.DistanceTo(corner.Point) < 1e-9
                );
        }
    }

    [Fact]
    public void Mirrored_arcs_bulge_to_the_mirrored_side()
    {
        // A quarter of a disc, its arc to the upper right; mirrored, to the upper left.
        var quarter = new Contour(
            new Vertex(0, 0),
            new Vertex(2, 0, Math.Sqrt(2) - 1),
            new Vertex(0, 2)
        );
        var mirrored = Pattern.OfChips(quarter).MirroredLeftRight().Chips.Single().Outline;

        mirrored.Extents.Min.X.ShouldBe(-2, 1e-12);
        mirrored.SignedArea.ShouldBe(Math.PI, 1e-12);
        var farthest = mirrored.Segments.Select(side => side.Middle).MinBy(point => point.X);
        farthest.DistanceTo(new(-Math.Sqrt(2), Math.Sqrt(2))).ShouldBeLessThan(1e-12);
    }

    [Fact]
    public void Extents_are_those_of_every_chip_without_flattening()
    {
        var pattern = Pattern
            .Combine(Pattern.OfChips(Lens), Pattern.OfLayoutLines(Chain.Line(new(0, 0), new(0, 9))))
            .Repeated(5, 8)
            .Turned(17);
        var flattened = pattern
            .Chips.Select(chip => chip.Outline.Extents)
            .Concat(pattern.LayoutLines.Select(line => line.Extents))
            .Aggregate((a, b) => a.Including(b));

        var extents = pattern.Extents.ShouldNotBeNull();
        extents.Min.DistanceTo(flattened.Min).ShouldBeLessThan(1e-9);
        extents.Max.DistanceTo(flattened.Max).ShouldBeLessThan(1e-9);
        Pattern.Empty.Extents.ShouldBeNull();
    }

    [Fact]
    public void Everything_that_is_put_in_comes_out()
    {
        var pattern = Pattern
            .Combine(
                Pattern.OfStock(Contour.Rectangle(new(0, 0), new(50, 20))),
                Pattern.OfLineCuts(new LineCut(Chain.Line(new(5, 5), new(45, 5)), 1.2)),
                Pattern.OfLabels(new Label("A", new(3, 3), 2.5))
            )
            .Moved(10, 0)
            .Scaled(2);

        pattern.Stock.Single().Extents.ShouldBe(new(new(20, 0), new(120, 40)));
        pattern.LineCuts.Single().Width.ShouldBe(2.4);
        pattern.LineCuts.Single().Path.Start.ShouldBe(new(30, 10));
        pattern.Labels.Single().At.ShouldBe(new(26, 6));
        pattern.Labels.Single().Height.ShouldBe(5);
    }

    [Fact]
    public void A_chip_needs_an_area()
    {
        Should
            .Throw<ArgumentException>(() =>
                Pattern.OfChips(Contour.Polygon(new(0, 0), new(1, 1), new(2, 2)))
            )
            .Message.ShouldContain("no area");
        Pattern.OfChips(Triangle.Reversed()).Chips.Single().Outline.SignedArea.ShouldBe(6);
    }

    [Fact]
    public void Changing_a_pattern_leaves_the_first_one_as_it_was()
    {
        var pattern = Pattern.OfChips(Triangle);
        var before = pattern.Chips.Single().Outline.Vertices.ToArray();

        _ = pattern.Moved(5, 5).Turned(45).With(pattern).Named("x");

        pattern.Chips.Single().Outline.Vertices.ShouldBe(before);
        pattern.Name.ShouldBeNull();
    }

    [Fact]
    public void Combined_patterns_keep_what_was_said_of_each()
    {
        var rail = Rail.Of(742.5, 60).Named("Bench rail");
        var band = TriangleBand.Ruled(2, 4, 4, 2);
        var both = rail.Border(band, 4).EndMargins(6).With(rail.Border(band, 40).EndMargins(10));

        both.Caption()
            .ShouldBe([
                "Bench rail, 742.5 × 60 mm",
                "91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike; each repeat 0.0275 mm longer than asked",
                "90 repeats, pitch 8.0278 mm (8 asked), 10 mm margins, ends alike; each repeat 0.0278 mm longer than asked",
                "362 chips",
            ]);
        both.Moved(5, 5).Caption().ShouldBe(both.Caption());
    }

    [Fact]
    public void Missing_pieces_are_refused()
    {
        Should.Throw<ArgumentNullException>(() => Pattern.OfLayoutLines([null!]));
        Should.Throw<ArgumentNullException>(() => Pattern.OfLabels([null!]));
        Should.Throw<ArgumentNullException>(() => Pattern.OfStock([null!]));
        Should.Throw<ArgumentNullException>(() => Pattern.OfLineCuts([null!]));
        Should.Throw<ArgumentNullException>(() => Pattern.Combine([null!]));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)] // the two loops are equal, and their areas cancel
    public void A_chip_whose_outline_crosses_itself_is_refused_and_says_where(double height)
    {
        var bow = Contour.Polygon(new(0, 0), new(4, 4), new(4, 0), new(0, height));

        var error = Should.Throw<PatternException>(() => Pattern.OfChips(Triangle, bow));

        // Where y = x meets the line from (4, 0) to (0, height).
        var x = 4 * height / (4 + height);
        error.Place!.Value.DistanceTo(new(x, x)).ShouldBeLessThan(1e-9);
        error.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_chip_of_two_arcs_that_cross_is_refused()
    {
        // From (20, 0) a shallow arc leads back over the half circle that rises between x = 10 and 20.
        var crossing = new Contour(
            new(0, 0, 1),
            new(10, 0, -1),
            new(20, 0, 0.1),
            new(10, 1),
            new(0, -3)
        );

        Should.Throw<PatternException>(() => Pattern.OfChips(crossing));
    }

    [Fact]
    public void A_chip_may_touch_itself_in_a_point()
    {
        var pinched = Contour.Polygon(
            new(0, 0),
            new(5, 5),
            new(10, 0),
            new(10, 10),
            new(5, 5),
            new(0, 10)
        );

        Pattern.OfChips(pinched).Chips.Single().Outline.Area.ShouldBe(50);
    }
}
