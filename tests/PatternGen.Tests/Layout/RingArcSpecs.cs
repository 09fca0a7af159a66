namespace PatternGen.Tests.Layout;

public class RingArcSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    /// <summary>120° of 2π × 60 are 125.664 mm, which is 15.7 repeats of 8: 16 of 7.854.</summary>
    [Fact]
    public void I_can_carve_a_band_along_an_arc()
    {
        var border = Ring.Of(60).Arc(from: 30, sweep: 120).Border(Band);

        border
            .Fit.ToString()
            .ShouldBe("16 repeats, pitch 7.854 mm (8 asked), 0 mm margins, ends alike");
        border.Caption()[0].ShouldBe("Arc of 60 mm radius, 120°");
        var angles = Angles(border);
        angles.Min().ShouldBe(30, 1e-9);
        angles.Max().ShouldBe(150, 1e-9);
        border.ShouldBeSound();
        Corners(Ring.Of(60).Arc(150, -120).Border(Band)).ShouldBe(Corners(border));
    }

    /// <summary>6 mm round 60 are 5.7296°.</summary>
    [Fact]
    public void Ends_and_margins_are_fitted_like_a_rails()
    {
        var border = Ring.Of(60).Arc(30, 120).Border(Band.Staggered());

        Angles(border.EndMargins(6)).Min().ShouldBe(30 + 6 / 60.0 * 180 / Math.PI, 1e-9);
        border.EndMargins(6).Fit.LeftMargin.ShouldBe(6);
        var halves = border.Fitted(f => f.StaggeredRows(StaggeredEnds.HalfChips));
        halves.Chips.Count(chip => chip.Id.Row == 2).ShouldBe(17);
        halves.ShouldBeSound();
        var turned = Ring.Of(60)
            .Arc(30, 120)
            .Border(Band.Leaning(0.8))
            .Fitted(f => f.TurnedAtMiddle());
        turned.Fit.Ends.ShouldBe(EndMatch.Alike);
        // Its axis is the upright one through the centre.
        Corners(turned).ShouldBe(Corners(turned.MirroredLeftRight()));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_centre_motif_stands_upright_in_the_middle_of_the_arc(bool inwards)
    {
        var motif = Pattern.OfChips(Contour.Polygon(new(-2, -3), new(2, -3), new(0, 4)));
        var border = Ring.Of(60).Arc(30, 120).Border(Band).Fitted(f => f.CentreMotif(motif, 10));
        if (inwards)
            border = border.FacingIn();

        border
            .Chips.Last()
            .Outline.Vertices[2]
            .Point.DistanceTo(new(0, inwards ? 56 : 64))
            .ShouldBe(0, 1e-9);
        Corners(border).ShouldBe(Corners(border.MirroredLeftRight()));
        border.ShouldBeSound();
    }

    [Fact]
    public void Rules_run_along_the_whole_arc_and_end_lines_across()
    {
        var border = Ring.Of(60).Arc(0, 90).Border(Band).EndMargins(5);

        var arcs = border.LayoutLines.Where(line => !line.SegmentAt(0).IsLine).ToArray();
        arcs.Select(arc => arc.Length).ShouldBe(border.Radii.Select(r => r * Math.PI / 2), 1e-9);
        var ends = border.LayoutLines.Where(line => line.SegmentAt(0).IsLine).ToArray();
        ends.Length.ShouldBe(2);
        ends.ShouldAllBe(end => Math.Abs(end.Length - 12) < 1e-9);
    }

    private static double[] Angles(Pattern pattern) =>
        [
            .. pattern
                .Chips.SelectMany(chip => chip.Outline.Vertices)
                .Select(corner => (corner.Point - Point.Origin).Direction.Degrees),
        ];

    private static (double, double)[] Corners(Pattern pattern) => BentChecks.Corners(pattern);
}
