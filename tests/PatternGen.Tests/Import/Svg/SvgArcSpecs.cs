namespace PatternGen.Tests.Importing.Svg;

/// <summary>
/// Arcs by SVG 1.1, chapter on paths and implementation notes F.6: flags, radii out of range, and the examples printed there.
/// </summary>
public sealed class SvgArcSpecs
{
    /// <summary>Numbers up to 1000 in single floats are true to 3e-5; a radius moves an arc of a quarter turn by as much.</summary>
    private const double Rounding = 1e-4;

    /// <summary>
    /// F.6.6: radii that don't reach are scaled up until they do. Radius 1 over a chord of 10 becomes 5, around the middle; sweep
    /// flag 1 is clockwise from left to right as seen on a screen, where that is the upper half.
    /// </summary>
    [Theory]
    [InlineData(1, 105)]
    [InlineData(0, 95)]
    public void Radii_too_small_grow(int sweep, double top)
    {
        var chain = Svgs.Path($"M0,900 A1,1 0 0 {sweep} 10,900").Chains.ShouldHaveSingleItem();
        chain.Length.ShouldBe(Math.PI * 5, Rounding);
        chain.PointAt(chain.Length / 2).DistanceTo(new(5, top)).ShouldBeLessThan(Rounding);
        chain.Count.ShouldBe(1);
    }

    /// <summary>
    /// The arc "a25,25 -30 0,1 50,-25" printed in the chapter on paths: half of its end is 27.95 = sqrt(50² + 25²) / 2, more than
    /// 25, so it is a half turn around the middle.
    /// </summary>
    [Fact]
    public void The_printed_arc_is_a_half_turn()
    {
        var chain = Svgs.Path("M100 100 a25,25 -30 0,1 50,-25").Chains.ShouldHaveSingleItem();
        var arc = chain.Segments.ShouldHaveSingleItem();
        arc.Radius.ShouldBe(27.9508497187474, Rounding);
        arc.Centre.DistanceTo(Svgs.At(125, 87.5)).ShouldBeLessThan(Rounding);
        arc.Bulge.ShouldBe(-1, 1e-5);
    }

    /// <summary>The pie printed there: three quarters of a disc of radius 150, cut in to the centre (300, 200).</summary>
    [Fact]
    public void The_printed_pie_has_its_area()
    {
        var pie = Svgs.Path("M300,200 h-150 a150,150 0 1,0 150,-150 z")
            .Contours.ShouldHaveSingleItem();
        // 0.75 π 150², as the three quarters; an edge that moves by Rounding takes its length times that.
        pie.Area.ShouldBe(53014.37602933, pie.Length * Rounding);
        pie.Extents.Min.DistanceTo(Svgs.At(150, 350)).ShouldBeLessThan(Rounding);
        pie.Extents.Max.DistanceTo(Svgs.At(450, 50)).ShouldBeLessThan(Rounding);
    }

    /// <summary>
    /// Large and sweep flags choose one of two circles and one of its two arcs. Circles of radius 50 through (100, 100) and
    /// (150, 150) have centres (150, 100) and (100, 150). Round (100, 150) the ends lie at -90 and 0 degrees, so that the short way is
    /// with growing angle: sweep 1.
    /// </summary>
    [Theory]
    [InlineData(0, 0, 150, 100)]
    [InlineData(0, 1, 100, 150)]
    [InlineData(1, 0, 100, 150)]
    [InlineData(1, 1, 150, 100)]
    public void Flags_choose_the_arc_of_a_circle(int large, int sweep, double x, double y)
    {
        var arc = Svgs.Path($"M100 100 A50 50 0 {large} {sweep} 150 150")
            .Chains.ShouldHaveSingleItem();
        arc.Length.ShouldBe(50 * Math.PI / 2 * (large == 1 ? 3 : 1), Rounding);
        foreach (var segment in arc.Segments)
        {
            segment.Centre.DistanceTo(Svgs.At(x, y)).ShouldBeLessThan(4 * Rounding);
            // With y up, growing angle is clockwise.
            (segment.Bulge < 0).ShouldBe(sweep == 1);
        }
    }

    /// <summary>
    /// The four arcs of the illustration of flags, on an ellipse of 100 by 50: its centre is (225, 75) or (125, 125), and each
    /// is a quarter or three quarters of it, between (125, 75) and (225, 125).
    /// </summary>
    [Theory]
    [InlineData(0, 0, 225, 75)]
    [InlineData(0, 1, 125, 125)]
    [InlineData(1, 0, 125, 125)]
    [InlineData(1, 1, 225, 75)]
    public void Flags_choose_the_arc_of_an_ellipse(int large, int sweep, double x, double y)
    {
        var settings = ImportSettings.Default.WithAccuracy(0.001);
        var drawing = Svgs.Path($"M125,75 A100,50 0 {large},{sweep} 225,125", settings);
        var arc = drawing.Chains.ShouldHaveSingleItem();
        var middle = Svgs.At(x, y);
        for (var i = 0; i <= 200; i++)
        {
            var from = arc.PointAt(arc.Length * i / 200) - middle;
            // The implicit equation, whose gradient is at least 2 / 100 there.
            var off = from.X * from.X / 1e4 + from.Y * from.Y / 2500 - 1;
            Math.Abs(off).ShouldBeLessThan(2.0 / 50 * drawing.Accuracy);
        }
        // A quarter of the ellipse's circumference, which is 484.42241 (Ramanujan's second formula, good to 1e-5 here).
        arc.Length.ShouldBe(484.42241 / 4 * (large == 1 ? 3 : 1), 0.01);
        drawing.Notes.ShouldContain(note => note.Kind == ImportNoteKind.Changed);
    }

    /// <summary>F.6.2: equal ends draw nothing, a radius of 0 draws a line, and the sign of a radius is no matter.</summary>
    [Fact]
    public void An_arc_can_be_a_line_or_nothing()
    {
        Svgs.Path("M10 10 A5 5 0 1 1 10 10").Chains.ShouldBeEmpty();
        Svgs.Path("M10 10 A0 5 0 1 1 20 10")
            .Chains.ShouldHaveSingleItem()
            .Length.ShouldBe(10, 1e-5);
        Svgs.Path("M10 10 A-5 -5 0 0 1 20 10")
            .Chains.ShouldHaveSingleItem()
            .Length.ShouldBe(Math.PI * 5, 1e-5);
    }

    /// <summary>
    /// Just short of a half turn a radius hardly holds an arc: one that single floats round by 2e-6 would move the middle of this
    /// by sqrt(2 · 123.4567 · 2e-6) = 0.02 mm.
    /// </summary>
    [Fact]
    public void A_half_circle_of_an_odd_radius_keeps_its_height()
    {
        var chain = Svgs.Path("M100.1234 500 A123.4567 123.4567 0 0 1 347.0368 500")
            .Chains.ShouldHaveSingleItem();
        chain
            .PointAt(chain.Length / 2)
            .DistanceTo(Svgs.At(223.5801, 376.5433))
            .ShouldBeLessThan(Rounding);
    }

    [Theory]
    [InlineData("a1 1 0 001 1")]
    [InlineData("a1 1 0 0 0 1 1")]
    [InlineData("a1,1,0,0,0,1,1")]
    [InlineData("a1 1 0 00 1 1")]
    [InlineData("a1 1 0 0,01 1")]
    [InlineData("a.1e1 10e-1 0 001+1.0E0")]
    public void Flags_need_nothing_between_them(string arc)
    {
        var chain = Svgs.Path("M50 50 " + arc).Chains.ShouldHaveSingleItem();
        chain.Length.ShouldBe(Math.PI / 2, 1e-4);
        chain.End.DistanceTo(Svgs.At(51, 51)).ShouldBeLessThan(1e-4);
    }
}
