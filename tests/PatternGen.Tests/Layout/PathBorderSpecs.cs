namespace PatternGen.Tests.Layout;

public class PathBorderSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    public static TheoryData<string> BandNames => BentChecks.BandNames;

    [Fact]
    public void Along_a_line_the_band_is_that_of_a_rail()
    {
        var rail = Rail.Of(203, 12).Border(Band.Staggered()).EndMargins(4);
        var line = Chain.Line(new(0, 0), new(203, 0));

        var border = line.Border(Band.Staggered(), offset: 0).EndMargins(4);

        border.Fit.ToString().ShouldBe(rail.Fit.ToString());
        BentChecks.Corners(border).ShouldBe(BentChecks.Corners(rail));
        // Half its height to the right, if nothing is said.
        line.Border(Band).Offset.ShouldBe(-6);
    }

    [Fact]
    public void Round_a_circle_the_band_is_that_of_a_ring()
    {
        var circle = new Circle(Point.Origin, 60).ToContour();

        BentChecks
            .Corners(circle.Border(Band))
            .ShouldBe(BentChecks.Corners(Ring.Of(60).From(0).Border(Band).FacingIn()));
        BentChecks
            .Corners(circle.Reversed().Border(Band, offset: 0))
            .ShouldBe(BentChecks.Corners(Ring.Outside(60).From(0).Border(Band)));
    }

    [Theory]
    [InlineData(-6)]
    [InlineData(-12)]
    [InlineData(0)]
    [InlineData(3.5)]
    [InlineData(-20)]
    public void Rules_run_beside_the_path_at_their_distance(double offset)
    {
        foreach (var path in (SegmentRun[])[BentChecks.Rounded(120, 80, 20), BentChecks.Ess(25)])
        {
            var border = path.Border(Band.WithLineCuts(), offset);

            foreach (var (line, height) in border.LayoutLines.Zip(Band.Rules))
            {
                foreach (var point in BentChecks.Samples(line))
                    path.DistanceTo(point).ShouldBe(Math.Abs(offset + height), 1e-9);
                // Joints stay smooth: a line's end and the arc that follows have one direction.
                line.Count.ShouldBe(path.Segments.Count());
                (line.Start == line.End).ShouldBe(path.IsClosed);
            }
            border.LineCuts.Count.ShouldBe(2);
            path.DistanceTo(border.LineCuts[1].Path.PointAt(30))
                .ShouldBe(Math.Abs(offset + 12), 1e-9);
        }
    }

    /// <summary>Lengths are measured on the middle, here the path itself, so tips on it lie at whole and half repeats.</summary>
    [Fact]
    public void Repeats_are_equally_long_where_the_pitch_is_measured()
    {
        foreach (var path in (SegmentRun[])[BentChecks.Rounded(120, 80, 20), BentChecks.Ess(25)])
        {
            var border = path.Border(Band.Staggered());
            border.Fit.Pitch.ShouldBe(path.Length / border.Fit.Repeats, 1e-9);

            foreach (var chip in border.Chips)
            foreach (var corner in Tips(chip, path))
            {
                var halves = path.Nearest(corner).Length / border.Fit.Pitch * 2;
                halves.ShouldBe(Math.Round(halves), 1e-6);
            }
        }
    }

    [Fact]
    public void Another_line_of_the_band_can_have_the_pitch()
    {
        var path = BentChecks.Rounded(120, 80, 20);
        // A parallel at d inside turns the corners with 20 - d: shorter by 2πd.
        double Length(BandLine line) => Fit(path.Border(Band, offset: 2).PitchOn(line));
        double Fit(PathBorder border) => border.Fit.Pitch * border.Fit.Repeats;

        Length(BandLine.LowerEdge).ShouldBe(path.Length - 2 * Math.Tau, 1e-9);
        Length(BandLine.Middle).ShouldBe(path.Length - 8 * Math.Tau, 1e-9);
        Length(BandLine.UpperEdge).ShouldBe(path.Length - 14 * Math.Tau, 1e-9);
    }

    [Theory]
    [MemberData(nameof(BandNames))]
    public void Any_band_runs_along_rounded_corners_and_bends(string name)
    {
        var band = BentChecks.Band(name);
        foreach (var sides in Enum.GetValues<BentSides>())
        {
            BentChecks
                .Rounded(200, 120, 20)
                .Border(band, offset: 2)
                .WithSides(sides)
                .ShouldBeSound();
            BentChecks.Ess(25).Border(band).WithSides(sides).ShouldBeSound();
            // Outside, and so tight that one repeat lies over several joints.
            BentChecks
                .Rounded(60, 40, 1)
                .Reversed()
                .Border(band, offset: 1)
                .WithSides(BentSides.Following)
                .ShouldBeSound();
        }
    }

    [Fact]
    public void An_even_number_from_the_middle_of_a_side_is_symmetrical_about_both_centre_lines()
    {
        var border = BentChecks
            .Rounded(200, 120, 20)
            .Border(Band, offset: 2)
            .StartingAt(80)
            .Fitted(f => f.GapOnCentre());

        var corners = BentChecks.Corners(border);
        BentChecks.Corners(border.MirroredLeftRight(100)).ShouldBe(corners);
        BentChecks.Corners(border.MirroredTopBottom(60)).ShouldBe(corners);
    }

    [Fact]
    public void Where_the_path_begins_makes_no_joint()
    {
        var path = BentChecks.Rounded(120, 80, 20);
        var elsewhere = path.Part(37, 37);
        var shifted = new Contour(elsewhere.Vertices.SkipLast(1));

        var border = shifted.Border(Band.Staggered(), offset: 2);

        BentChecks
            .Corners(border)
            .ShouldBe(BentChecks.Corners(path.Border(Band.Staggered(), 2).StartingAt(37)));
        border.Chips.Count(chip => chip.Outline.Count > 3).ShouldBeLessThanOrEqualTo(16);
    }

    [Fact]
    public void Chips_on_stretches_that_look_alike_share_a_shape()
    {
        var border = BentChecks.Rounded(400, 300, 40).Border(Band, offset: 2);

        foreach (var row in border.Chips.GroupBy(chip => chip.Id.Row))
        {
            var shapes = row.Select(chip => chip.Shape)
                .Distinct(ReferenceEqualityComparer.Instance);
            // One for the sides, one for the corners, and at most one over each of the eight joints.
            shapes.Count().ShouldBeLessThanOrEqualTo(10);
        }
    }

    [Fact]
    public void A_band_runs_along_a_free_curve()
    {
        var path = FreeCurve.Through(new(0, 0), new(60, 40), new(140, -20), new(220, 30)).ToChain();

        path.Border(Band).EndMargins(2).ShouldBeSound();
        path.Border(Band).WithSides(BentSides.Following).ShouldBeSound();
    }

    [Fact]
    public void A_path_border_is_the_same_every_time()
    {
        IEnumerable<Vertex> Outlines() =>
            BentChecks
                .Ess(25)
                .Border(Band.Curved(0.4))
                .WithSides(BentSides.Following)
                .Chips.SelectMany(chip => chip.Outline.Vertices);

        Outlines().ShouldBe(Outlines());
    }

    /// <summary>The corners that lie on the path.</summary>
    private static IEnumerable<Point> Tips(Chip chip, SegmentRun path) =>
        chip
            .Outline.Vertices.Select(corner => corner.Point)
            .Where(point => path.Nearest(point).Distance < 1e-9);
}
