namespace PatternGen.Tests.Importing.Svg;

/// <summary>Shapes by the chapter on basic shapes of SVG 1.1; areas from school formulas.</summary>
public sealed class SvgShapeSpecs
{
    private const double Rounding = 1e-4;

    [Fact]
    public void A_rectangle_has_four_sides()
    {
        var contour = Closed("""<rect x="10" y="20" width="100" height="50"/>""");
        contour.Count.ShouldBe(4);
        contour.Extents.Min.DistanceTo(Svgs.At(10, 70)).ShouldBeLessThan(Rounding);
        contour.Area.ShouldBe(5000, 300 * Rounding);
    }

    /// <summary>Round corners of radius r take (4 - π) r² away. A radius of more than half a side is that half.</summary>
    [Theory]
    [InlineData("""rx="10" """, 8, 10)]
    [InlineData("""ry="10" """, 8, 10)]
    [InlineData("""rx="10" ry="10" """, 8, 10)]
    [InlineData("""rx="25" ry="99" """, 4, 25)]
    public void A_rectangle_has_round_corners(string radii, int sides, double radius)
    {
        var contour = Closed($"""<rect x="10" y="20" width="100" height="50" {radii}/>""");
        // Two corners that meet in the middle of a side are one half circle.
        contour.Count.ShouldBe(sides);
        contour.Area.ShouldBe(5000 - (4 - Math.PI) * radius * radius, 300 * Rounding);
    }

    [Fact]
    public void A_rectangle_has_elliptic_corners()
    {
        var settings = ImportSettings.Default.WithAccuracy(0.001);
        var drawing = Svgs.Read(
            Svgs.Sheet("""<rect width="100" height="50" rx="20" ry="10"/>"""),
            settings
        );
        // Of each corner's 20 × 10 an ellipse of π 20 10 / 4 is left.
        var area = 5000 - (4 - Math.PI) * 20 * 10;
        drawing.Contours.ShouldHaveSingleItem().Area.ShouldBe(area, 300 * drawing.Accuracy);
    }

    [Fact]
    public void A_circle_is_two_half_circles()
    {
        var circle = Closed("""<circle cx="50" cy="60" r="20"/>""");
        circle.Count.ShouldBe(2);
        circle.Area.ShouldBe(Math.PI * 400, 130 * Rounding);
        circle.Centroid.DistanceTo(Svgs.At(50, 60)).ShouldBeLessThan(Rounding);
    }

    [Fact]
    public void An_ellipse_is_followed_smoothly()
    {
        var settings = ImportSettings.Default.WithAccuracy(0.001);
        var drawing = Svgs.Read(
            Svgs.Sheet("""<ellipse cx="100" cy="100" rx="50" ry="30"/>"""),
            settings
        );
        var ellipse = drawing.Contours.ShouldHaveSingleItem();
        // Its circumference is 255.18 mm.
        ellipse.Area.ShouldBe(Math.PI * 50 * 30, 255.18 * drawing.Accuracy);
        foreach (var (segment, next) in ellipse.Segments.Zip(ellipse.Segments.Skip(1)))
            (segment.TangentAt(segment.Length) - next.TangentAt(0)).Length.ShouldBeLessThan(1e-3);
    }

    [Fact]
    public void A_polygon_closes_and_a_polyline_does_not()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                """<polygon points="10,10 30 10,20-5"/><polyline points="50.5.5 60 10 70 0"/><line x1="1" y1="2" x2="4" y2="6"/>"""
            )
        );
        drawing.Contours.ShouldHaveSingleItem().Area.ShouldBe(150, 60 * Rounding);
        drawing.Chains.Count.ShouldBe(2);
        drawing.Chains[0].Start.DistanceTo(Svgs.At(50.5, 0.5)).ShouldBeLessThan(Rounding);
        drawing.Chains[1].Length.ShouldBe(5, Rounding);
    }

    /// <summary>SVG 1.1: a size of 0 draws nothing; an odd number at the end of points is an error, and what comes before is drawn.</summary>
    [Fact]
    public void What_has_no_size_is_not_drawn()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                """<rect width="0" height="9"/><circle r="0"/><ellipse rx="3"/><line/><polygon/><path/><path d=""/><g/>"""
            )
        );
        drawing.Contours.ShouldBeEmpty();
        drawing.Chains.ShouldBeEmpty();
    }

    [Fact]
    public void A_shape_without_sense_is_told_and_left_out()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet("""<rect width="wide" height="9"/><circle r="NaN"/><circle r="1e400"/>""")
        );
        drawing.Contours.ShouldBeEmpty();
        drawing
            .Notes.Select(note => (note.What, note.Count))
            .ShouldBe([("rect whose width is no length", 1), ("circle whose r is no length", 2)]);
    }

    private static Contour Closed(string shape) =>
        Svgs.Read(Svgs.Sheet(shape)).Contours.ShouldHaveSingleItem();
}
