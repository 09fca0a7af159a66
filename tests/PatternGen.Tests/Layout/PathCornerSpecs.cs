using static PatternGen.Tests.Layout.PathSamples;

namespace PatternGen.Tests.Layout;

public class PathCornerSpecs
{
    /// <summary>Sides of 100 mm: 7 spacings of 100 / 7, the first and last half a spacing from the corners.</summary>
    [Fact]
    public void Each_side_of_a_square_is_fitted_by_itself()
    {
        var repeats = Square100.Repeat(Lens, 15).CornerGaps();

        repeats
            .Fit.ToString()
            .ShouldBe("28 repeats on 4 stretches (7, 7, 7, 7), spacing 14.2857 mm (15 asked)");
        repeats.Fit.Stretches.Select(stretch => stretch.From).ShouldBe([0, 100, 200, 300]);
        repeats.Fit.Corners.ShouldBe(4);
        repeats
            .Origins()[..7]
            .Select(at => at.X)
            .Zip(Enumerable.Range(0, 7), (x, i) => x - (-50 + (2 * i + 1) * 50.0 / 7))
            .ShouldAllBe(off => Math.Abs(off) < 1e-12);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(6, false)]
    [InlineData(6, true)]
    [InlineData(23.5, true)]
    public void No_repeat_stands_nearer_to_a_corner_than_I_allow(double clearance, bool onEnds)
    {
        var repeats = Square100.Repeat(Lens, 9).CornerGaps(clearance);
        if (onEnds)
            repeats = repeats.RepeatsOnEnds();

        foreach (var at in repeats.Origins())
        foreach (var corner in Square100.Vertices)
            at.DistanceTo(corner.Point).ShouldBeGreaterThanOrEqualTo(clearance - 1e-9);
        if (onEnds)
            repeats
                .Origins()
                .Min(at => at.DistanceTo(Square100.Vertices[0].Point))
                .ShouldBe(clearance, 1e-9);
    }

    [Fact]
    public void Repeats_on_a_square_have_the_squares_symmetry()
    {
        var corner = Pattern.OfChips(new Circle(Point.Origin, 3).ToContour());
        foreach (
            var repeats in (PathRepeats[])
                [
                    Square100.Repeat(Lens, 13).CornerGaps(4),
                    Square100.Repeat(Lens, 13).CornerGaps().OffsetBy(7),
                    Square100.Repeat(Lens, 13, Heading.Outwards).CornerMotif(corner, 6),
                    Square100.Repeat(Lens, 13, Heading.AwayFrom(Point.Origin)).CornerGaps(4),
                    Square100
                        .Repeat(Lens, 13)
                        .CornerGaps()
                        .RepeatsScaledBetweenCorners(0.5, 1, 0.5),
                    // 32 spacings of 12.5: one on every corner and three on every side.
                    Square100.Repeat(Lens, 12.5).OffsetBy(-3),
                ]
        )
        {
            var chips = Corners(repeats);
            for (var quarter = 0; quarter < 4; quarter++)
            {
                Corners(repeats.Turned(90 * quarter)).ShouldBe(chips);
                Corners(repeats.MirroredLeftRight().Turned(90 * quarter)).ShouldBe(chips);
            }
        }
    }

    /// <summary>100 mm sides and 12.5 mm spacings: every eighth repeat stands on a corner, and faces along the diagonal's perpendicular.</summary>
    [Fact]
    public void A_repeat_on_a_corner_is_turned_on_the_bisector()
    {
        var repeats = Square100.Repeat(Lens, 12.5);

        repeats.Origins()[8].ShouldBe(new(50, -50));
        repeats.Headings()[8].ShouldBe(new(Math.Sqrt(0.5), Math.Sqrt(0.5)), 1e-12);
        repeats.Headings()[7].ShouldBe(new(1, 0));
        repeats.Headings()[9].ShouldBe(new(0, 1));
        Square100
            .Repeat(Lens, 12.5, Heading.Inwards)
            .Headings()[8]
            .ShouldBe(new(-Math.Sqrt(0.5), Math.Sqrt(0.5)), 1e-12);
    }

    /// <summary>Started 2 mm on, repeats stand 2 mm behind and 10.5 mm before the corners.</summary>
    [Theory]
    [InlineData(1, 0)]
    [InlineData(3, 1)]
    [InlineData(11, 2)]
    public void Repeats_near_a_corner_are_turned_on_the_bisector_too(
        double within,
        int turnedAtEach
    )
    {
        var repeats = Square100.Repeat(Lens, 12.5).StartingAt(2).TurnedAtCorners(within);

        repeats
            .Headings()
            .Count(heading => Math.Abs(Math.Abs(heading.X) - Math.Sqrt(0.5)) < 1e-12)
            .ShouldBe(4 * turnedAtEach);
        repeats.Origins().ShouldAllBe(at => Square100.DistanceTo(at) < 1e-12);
    }

    [Fact]
    public void A_repeat_on_a_corner_stands_where_the_parallels_of_both_sides_cross()
    {
        Square100.Repeat(Lens, 12.5).OffsetBy(8).Origins()[8].ShouldBe(new(42, -42), 1e-12);
        Square100.Repeat(Lens, 12.5).OffsetBy(-8).Origins()[8].ShouldBe(new(58, -58), 1e-12);
    }

    [Fact]
    public void A_motif_stands_on_each_corner_on_the_bisector_with_room_of_its_own()
    {
        var repeats = Square100.Repeat(Lens, 8).CornerMotif(Hook, 10, Heading.Inwards).OffsetBy(5);

        repeats.Fit.CornerMotifs.ShouldBe(4);
        repeats.Fit.ToString().ShouldEndWith("4 corner motifs");
        repeats.CornerPlacements[1].Apply(Point.Origin).ShouldBe(new(45, -45), 1e-12);
        foreach (var placement in repeats.CornerPlacements)
        {
            var at = placement.Apply(Point.Origin);
            var toMiddle = (Point.Origin - at).Unit();
            placement.Apply(new Vector(1, 0)).ShouldBe(toMiddle, 1e-12);
            // On the parallel, 5 mm in, the corner lies 5 mm farther along the side: 15 mm from the corner of the path.
            repeats
                .Origins()
                .Min(near => near.DistanceTo(at))
                .ShouldBe(10 + repeats.Fit.LargestSpacing / 2, 1e-9);
        }
        // Corner motifs are rows of their own.
        repeats.Chips.Count(chip => chip.Id.Row == 2).ShouldBe(4);
    }

    /// <summary>The hook reaches from (0, 0) to (4, 2): √20 mm.</summary>
    [Fact]
    public void A_corner_motif_gets_the_room_that_it_reaches()
    {
        Square100
            .Repeat(Lens, 8)
            .CornerMotif(Hook)
            .Fit.Stretches[0]
            .From.ShouldBe(Math.Sqrt(20), 1e-12);
    }

    [Fact]
    public void An_open_path_has_a_stretch_before_and_after_each_corner()
    {
        // 60 mm, a corner of 90°, 40 mm.
        var path = new Chain(new Vertex(0, 0), new Vertex(60, 0), new Vertex(60, 40));
        var repeats = path.Repeat(Lens, 10).EndMargins(5).CornerGaps(5).RepeatsOnEnds();

        repeats.Fit.Stretches.Select(stretch => stretch.Repeats).ShouldBe([6, 4]);
        repeats.Origins()[5].ShouldBe(new(55, 0), 1e-12);
        repeats.Origins()[6].ShouldBe(new(60, 5), 1e-12);
        repeats.Origins()[^1].ShouldBe(new(60, 35), 1e-12);
    }

    [Fact]
    public void A_side_too_short_for_a_repeat_stays_empty_and_the_fit_says_so()
    {
        var bar = Contour.Rectangle(new(0, 0), new(100, 6));

        var fit = bar.Repeat(Lens, 12.5).CornerGaps().Fit;

        fit.Stretches.Select(stretch => stretch.Repeats).ShouldBe([8, 0, 8, 0]);
        fit.ToString().ShouldContain("16 repeats on 4 stretches (8, 0, 8, 0)");
        fit.Stretches[1].ToString().ShouldBe("no room for a repeat");
    }

    [Fact]
    public void Smooth_joints_are_no_corners_and_I_say_from_what_turn_on_they_are()
    {
        Rounded.Repeat(Lens, 10).CornerGaps().Fit.Corners.ShouldBe(0);
        Rounded.Repeat(Lens, 10).CornerGaps().Fit.ClosesLoop.ShouldBeTrue();
        // A regular polygon of 40 sides turns by 9° at each corner.
        var round = Contour.Polygon(
            Enumerable.Range(0, 40).Select(i => Point.Origin.Polar(50, Angle.OfTurn(i / 40.0)))
        );
        round.Repeat(Lens, 8).CornerGaps().Fit.Corners.ShouldBe(0);
        round.Repeat(Lens, 8).CornerGaps().CornersFrom(8.9).Fit.Corners.ShouldBe(40);
    }

    /// <summary>All corners of all chips, rounded and in order, so that sets of chips can be compared.</summary>
    private static string[] Corners(Pattern pattern) =>
        [
            .. pattern
                .Chips.SelectMany(chip => chip.Outline.Vertices)
                .Select(corner =>
                    FormattableString.Invariant(
                        $"{Math.Round(corner.Point.X, 6) + 0.0:0.000000} {Math.Round(corner.Point.Y, 6) + 0.0:0.000000} {corner.Bulge:0.000000}"
                    )
                )
                .Order(StringComparer.Ordinal),
        ];
}
