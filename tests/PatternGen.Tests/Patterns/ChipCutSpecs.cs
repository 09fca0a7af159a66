namespace PatternGen.Tests.Patterns;

public class ChipCutSpecs
{
    private static readonly Contour Triangle = Contour.Polygon(new(0, 0), new(4, 0), new(1, 3));
    private static readonly Contour Lens = new(new(0, 0, 0.3), new Vertex(6, 0, 0.3));

    [Fact]
    public void Chips_have_walls_as_the_cutter_leans_unless_I_say_otherwise()
    {
        var chip = Pattern.OfChips(Triangle).Chips.Single();
        chip.Cut.ShouldBe(ChipCut.Walls);
        chip.Cut.WallAngle.ShouldBeNull();
        chip.Cut.IsStabbed.ShouldBeFalse();
    }

    [Fact]
    public void I_can_give_chips_an_angle_of_their_own()
    {
        var pattern = Pattern.OfChips(Triangle, Lens).WithCut(ChipCut.WallsAt(50));
        pattern.Chips.ShouldAllBe(chip =>
            chip.Cut.WallAngle!.Value.Degrees > 49.999 && chip.Cut.WallAngle.Value.Degrees < 50.001
        );
    }

    [Fact]
    public void Repeats_still_share_one_shape()
    {
        var row = Pattern.OfChips(Triangle).Repeated(500, 5);
        var both = row.With(row.Moved(0, 10).MirroredLeftRight());
        var chips = both.WithCut(ChipCut.Stabbed(2, slope: 25)).Chips.ToArray();

        chips.Length.ShouldBe(1000);
        chips.ShouldAllBe(chip => ReferenceEquals(chip.Shape, chips[0].Shape));
        chips.ShouldAllBe(chip => ReferenceEquals(chip.ShapeCut, chips[0].ShapeCut));
        both.Chips.ShouldAllBe(chip => chip.Cut == ChipCut.Walls);
    }

    [Fact]
    public void Another_cut_leaves_everything_else_as_it_is()
    {
        var pattern = Pattern
            .Combine(
                Pattern.OfStock(Contour.Rectangle(new(0, 0), new(50, 20))),
                Pattern.OfChips(Triangle, Lens).Repeated(3, 7),
                Pattern.OfLineCuts(new LineCut(Chain.Line(new(5, 5), new(45, 5)), 1.2)),
                Pattern.OfLayoutLines(Chain.Line(new(0, 0), new(0, 9))),
                Pattern.OfLabels(new Label("A", new(3, 3), 2.5))
            )
            .Named("board");
        var flatter = pattern.WithCut(ChipCut.WallsAt(50));

        flatter.Name.ShouldBe("board");
        flatter.Chips.Select(chip => chip.Id).ShouldBe(pattern.Chips.Select(chip => chip.Id));
        flatter.Stock.Count.ShouldBe(1);
        flatter.LineCuts.Count.ShouldBe(1);
        flatter.LayoutLines.Count.ShouldBe(1);
        flatter.Labels.Count.ShouldBe(1);
        flatter.Extents.ShouldBe(pattern.Extents);
    }

    [Fact]
    public void I_can_choose_the_cut_by_the_shape()
    {
        var asked = 0;
        var chips = Pattern
            .OfChips(Triangle, Lens)
            .Repeated(10, 7)
            .WithCut(shape =>
            {
                asked++;
                return shape.Count == 3 ? ChipCut.Stabbed(2) : ChipCut.WallsAt(60);
            })
            .Chips.ToArray();

        asked.ShouldBe(2);
        chips.Count(chip => chip.Cut.Apex == 2 && chip.Shape.Count == 3).ShouldBe(10);
        chips.Count(chip => chip.Cut == ChipCut.WallsAt(60)).ShouldBe(10);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void The_apex_stays_the_same_corner_however_a_chip_is_placed(int corner)
    {
        // Curved beside the apex, straight across from it.
        var sides = new[] { 0.0, 0, 0 };
        (sides[corner], sides[(corner + 2) % 3]) = (0.2, -0.1);
        var curved = new Contour(new(0, 0, sides[0]), new(4, 0, sides[1]), new(1, 3, sides[2]));
        var pattern = Pattern.OfChips(curved).WithCut(ChipCut.Stabbed(corner, depth: 2));
        Pattern[] placed =
        [
            pattern,
            pattern.Moved(3, 4).Turned(77),
            pattern.MirroredLeftRight(2),
            pattern.MirroredTopBottom().Turned(30),
            pattern.MirroredLeftRight().Repeated(4, 6).MirroredTopBottom(3),
            pattern.Repeated(3, 5).MirroredLeftRight(1).Turned(10).MirroredLeftRight().Scaled(1.5),
            pattern
                .Repeated(3, 5)
                .MirroredLeftRight(1)
                .With(pattern.Scaled(0.5))
                .MirroredTopBottom(),
        ];

        foreach (var chip in placed.SelectMany(each => each.Chips))
        {
            chip.ShapeCut.Apex.ShouldBe(corner);
            var apex = chip.Cut.Apex.ShouldNotBeNull();
            var image = chip.Placement.Apply(chip.Shape.Vertices[corner].Point);
            chip.Outline.Vertices[apex].Point.DistanceTo(image).ShouldBeLessThan(1e-9);
            chip.Cut.Depth.ShouldNotBeNull().ShouldBe(2 * chip.Placement.Scale, 1e-12);
        }
    }

    [Fact]
    public void Turning_a_chip_does_not_change_its_depth_by_a_last_digit()
    {
        var stab = ChipCut.Stabbed(1, depth: 2);
        var pattern = Pattern.OfChips(Triangle).WithCut(stab);
        for (var degrees = 0; degrees < 360; degrees++)
            pattern.Turned(degrees).Chips.Single().Cut.ShouldBe(stab);
    }

    [Fact]
    public void Cuts_are_equal_if_they_say_the_same()
    {
        ChipCut.WallsAt(50).ShouldBe(ChipCut.WallsAt(Angle.FromDegrees(50)));
        ChipCut.Stabbed(1, slope: 25).ShouldBe(ChipCut.Stabbed(1, Angle.FromDegrees(25)));
        (ChipCut.Stabbed(1, slope: 25) == ChipCut.Stabbed(1, slope: 25)).ShouldBeTrue();
        ChipCut
            .Stabbed(1, slope: 25)
            .GetHashCode()
            .ShouldBe(ChipCut.Stabbed(1, slope: 25).GetHashCode());
        ChipCut[] different =
        [
            ChipCut.Walls,
            ChipCut.WallsAt(50),
            ChipCut.Stabbed(0, slope: 25),
            ChipCut.Stabbed(1, slope: 25),
            ChipCut.Stabbed(1, depth: 25),
        ];
        different.Distinct().Count().ShouldBe(different.Length);
    }

    [Fact]
    public void Shapes_cut_in_different_ways_are_not_copies_of_each_other()
    {
        var shape = new ChipShape(Triangle);
        shape.WithCut(ChipCut.Stabbed()).ShouldNotBe(shape);
        shape.WithCut(ChipCut.Stabbed()).ShouldBe(shape.WithCut(ChipCut.Stabbed()));
        shape.WithCut(ChipCut.Walls).ShouldBeSameAs(shape);
    }

    [Fact]
    public void A_chip_that_cannot_be_stabbed_is_refused_with_its_place()
    {
        var halfRound = new Contour(new Vertex(5, 1), new Vertex(9, 1, 0.2), new Vertex(7, 4));
        var ring = new Region(
            Triangle.Transformed(Transform.Resize(9)),
            Contour.Polygon(new(12, 4), new(12, 6), new(14, 4))
        );

        Refusal(Pattern.OfChips(Triangle), 3).ShouldContain("has no corner 3, only 0 to 2");
        Refusal(Pattern.OfChips(Lens), 0).ShouldContain("has 2 sides. At (0, 0) mm");
        Refusal(Pattern.OfChips(ring.Parts), 0).ShouldContain("has ground standing in it");
        Refusal(Pattern.OfChips(halfRound), 0)
            .ShouldContain("is curved on the side across from corner 0. At (5, 1) mm");
        _ = Pattern.OfChips(halfRound).WithCut(ChipCut.Stabbed(2));

        static string Refusal(Pattern pattern, int corner) =>
            Should.Throw<PatternException>(() => pattern.WithCut(ChipCut.Stabbed(corner))).Message;
    }

    [Fact]
    public void Another_cut_keeps_the_roof_that_is_known()
    {
        var shape = new ChipShape(Triangle);
        shape.WithCut(ChipCut.WallsAt(50)).Roof.ShouldBeSameAs(shape.Roof);
    }

    [Fact]
    public void Cuts_that_cannot_be_are_refused()
    {
        Should.Throw<ArgumentException>(() => ChipCut.Stabbed(0, slope: 30, depth: 2));
        Should.Throw<ArgumentOutOfRangeException>(() => ChipCut.Stabbed(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => ChipCut.Stabbed(0, depth: 0));
        Should
            .Throw<ArgumentOutOfRangeException>(() => ChipCut.Stabbed(0, slope: 80))
            .Message.ShouldContain("The slope of the floor must lie between 5 and 70 degrees");
        Should.Throw<ArgumentOutOfRangeException>(() => ChipCut.WallsAt(10));
        Should.Throw<ArgumentException>(() => Pattern.OfChips(Triangle).WithCut(_ => null!));
    }
}
