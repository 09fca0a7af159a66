namespace PatternGen.Tests.Geometry;

/// <summary>Figures that others have published, each with its source.</summary>
public class PublishedValueSpecs
{
    private const double Tight = 1e-13;

    [Theory]
    [InlineData(3, 1.73205080756888)] // OEIS A002194
    [InlineData(4, 1.41421356237310)] // OEIS A002193
    [InlineData(5, 1.17557050458495)] // OEIS A182007
    [InlineData(6, 1.00000000000000)] // Euclid, Elements IV.15: the side of the hexagon equals the radius
    [InlineData(8, 0.765366864730180)] // OEIS A101464
    [InlineData(9, 0.684040286651337)] // OEIS A272488
    [InlineData(10, 0.618033988749895)] // OEIS A094214
    [InlineData(12, 0.517638090205042)] // OEIS A101263
    [InlineData(13, 0.478631328575116)] // OEIS A272490
    [InlineData(15, 0.415823381635519)] // OEIS A272534
    [InlineData(17, 0.367499035633141)] // OEIS A228787
    [InlineData(18, 0.347296355333861)] // OEIS A130880
    [InlineData(20, 0.312868930080462)] // OEIS A272536
    [InlineData(21, 0.298084532352349)] // 2 sin(180°/n)
    [InlineData(23, 0.272333298192493)] // 2 sin(180°/n)
    public void Chords_step_off_equal_divisions_of_a_circle(int divisions, double chord)
    {
        var arc = Segment.Arc(Point.Origin, 1, Angle.Zero, Angle.OfTurn(1.0 / divisions));

        arc.Chord.Length.ShouldBe(chord, 5e-15);
    }

    [Fact]
    public void A_walk_of_six_radii_closes() // Euclid, Elements IV.15
    {
        var at = new Point(1, 0);
        for (var i = 0; i < 6; i++)
            at = at.Polar(1, Angle.FromDegrees(120 + 60 * i));

        at.DistanceTo(new(1, 0)).ShouldBeLessThan(1e-15);
    }

    [Theory]
    [InlineData(60, 0.0905860737060795, 0.133974596215561)] // MathWorld, Circular Segment
    [InlineData(90, 0.285398163397448, 0.292893218813452)] // OEIS A342977
    [InlineData(120, 0.614184849304378, 0.5)] // OEIS A358981, which also prints the sagitta h = R (1 - cos(θ/2))
    public void A_circular_segment_has_area_and_sagitta(double degrees, double area, double sagitta)
    {
        var arc = Segment.Arc(Point.Origin, 1, Angle.Zero, Angle.FromDegrees(degrees));

        arc.SegmentArea.ShouldBe(area, 1e-15);
        arc.Sagitta.ShouldBe(sagitta, 1e-15);
        new Contour(new Vertex(arc.Start, arc.Bulge), arc.End).Area.ShouldBe(area, 1e-15);
    }

    [Fact]
    public void A_lens_of_two_unit_circles_through_each_others_centres_has_area_and_height()
    {
        var lens = Lens(new(0, 0), 1, new(1, 0), 1);

        lens.Area.ShouldBe(1.22836969860876, Tight); // OEIS A093731; MathWorld, Vesica Piscis
        (lens.Extents.Height / lens.Extents.Width).ShouldBe(1.73205080756888, Tight); // MathWorld, Vesica Piscis
    }

    [Theory]
    [InlineData(1, 2, 2, 1.40306643968573875)] // Aizu Online Judge CGL_7_I, sample
    [InlineData(4, 3, 5, 6.64167470270706)] // MathWorld, Circle-Circle Intersection (from memory)
    public void A_lens_of_two_circles_has_area(double r, double s, double apart, double area) =>
        Lens(new(0, 0), r, new(apart, 0), s).Area.ShouldBe(area, 3e-14);

    [Fact]
    public void A_petal_of_the_six_petal_rosette_has_area_length_and_width()
    {
        // Both arcs have the rosette's radius, so each sweeps 60 degrees.
        var petal = Shapes.Lens(1, 1);

        petal.Area.ShouldBe(0.181172147412159, Tight); // twice the 60° segment, MathWorld, Circular Segment
        petal.Extents.Width.ShouldBe(1, Tight);
        petal.Extents.Height.ShouldBe(0.267949192431123, Tight); // 2 - sqrt 3
        // Euclid III.32: the tip turns by the tangent-chord angle twice.
        var tip = petal.SegmentAt(0).TangentAt(0);
        var other = -petal.SegmentAt(1).TangentAt(petal.SegmentAt(1).Length);
        Math.Acos(tip.Dot(other)).ShouldBe(Math.PI / 3, Tight);
        (Math.PI - 6 * petal.Area).ShouldBe(2.05455976911684, Tight); // disk outside the petals, by subtraction
    }

    [Fact]
    public void A_reuleaux_triangle_has_area_and_perimeter()
    {
        var triangle = new Contour(
            Shapes
                .Regular(3, 1 / Math.Sqrt(3))
                .Vertices.Select(corner => new Vertex(corner.Point, Math.Tan(Math.PI / 12)))
        );

        triangle.Area.ShouldBe(0.704770923010458, Tight); // OEIS A060708
        triangle.Length.ShouldBe(3.14159265358979, Tight); // Barbier's theorem
    }

    [Fact]
    public void The_gap_between_three_unit_circles_has_an_area() =>
        Shapes.Gap.Area.ShouldBe(0.161254480773981, Tight); // OEIS A090551

    [Fact]
    public void The_gap_among_four_unit_circles_has_an_area()
    {
        var hollow = -Math.Tan(Math.PI / 8);
        var gap = new Contour(
            new(1, 0, hollow),
            new(2, 1, hollow),
            new(1, 2, hollow),
            new(0, 1, hollow)
        );

        gap.Area.ShouldBe(0.858407346410207, Tight); // 4 - π
        // The circle between them: sqrt 2 - 1, OEIS A188582.
        gap.DistanceTo(new(1, 1)).ShouldBe(0.414213562373095, Tight);
    }

    [Fact]
    public void Two_quarter_circles_in_a_unit_square_enclose_a_leaf()
    {
        var quarter = Math.Tan(Math.PI / 8);

        new Contour(new(0, 0, quarter), new(1, 1, quarter)).Area.ShouldBe(0.570796326794897, Tight); // twice OEIS A342977
    }

    [Theory]
    [InlineData(5, 0.809016994374947, 2.37764129073788)]
    [InlineData(6, 0.866025403784439, 2.59807621135332)]
    [InlineData(9, 0.939692620785908, 2.89254424358943)]
    public void Regular_polygons_have_inradius_and_area(int corners, double inradius, double area) // MathWorld, Regular Polygon
    {
        var polygon = Shapes.Regular(corners, 1);

        polygon.DistanceTo(Point.Origin).ShouldBe(inradius, Tight);
        polygon.Area.ShouldBe(area, Tight);
    }

    [Theory]
    [InlineData(3, 4, 5, 6, 1)] // Euclid IV.4; MathWorld, Inradius
    [InlineData(5, 12, 13, 30, 2)] // r = area / half the perimeter
    [InlineData(13, 14, 15, 84, 4)] // Heron
    public void Triangles_have_area_and_inradius(
        double a,
        double b,
        double c,
        double area,
        double r
    )
    {
        // Side c on the x axis; the third corner from the two other sides.
        var x = (b * b + c * c - a * a) / (2 * c);
        var triangle = Contour.Polygon(new(0, 0), new(c, 0), new(x, Math.Sqrt(b * b - x * x)));

        triangle.Area.ShouldBe(area, 1e-12);
        triangle.Inset(r - 1e-6).IsEmpty.ShouldBeFalse();
        triangle.Inset(r + 1e-6).IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void The_incentre_is_what_is_left_of_a_triangle() // Aizu Online Judge CGL_7_B, sample (from memory)
    {
        var triangle = Contour.Polygon(new(1, -2), new(3, 2), new(-2, 0));
        var last = triangle.Inset(1.18845545916395 - 1e-6);

        last.Centroid.DistanceTo(new(0.539079438982094, -0.264373927114484)).ShouldBeLessThan(1e-5);
        triangle.DistanceTo(last.Centroid).ShouldBe(1.18845545916395, 1e-5);
    }

    [Fact]
    public void A_rhombus_with_diagonals_6_and_8_has_side_5_area_24_and_inradius_2_4() // r = pq / (2 sqrt(p² + q²))
    {
        var rhombus = Contour.Polygon(new(3, 0), new(0, 4), new(-3, 0), new(0, -4));

        rhombus.SegmentAt(0).Length.ShouldBe(5);
        rhombus.Area.ShouldBe(24);
        rhombus.DistanceTo(Point.Origin).ShouldBe(2.4, Tight);
    }

    [Theory]
    [InlineData(90, 0.414213562373095)]
    [InlineData(-90, -0.414213562373095)]
    [InlineData(30, 0.131652497587396)]
    [InlineData(60, 0.267949192431123)]
    [InlineData(120, 0.577350269189626)]
    [InlineData(180, 1)]
    public void The_bulge_is_the_tangent_of_a_quarter_of_the_sweep(double degrees, double bulge) // DXF Reference, VERTEX group 42
    {
        var arc = Segment.Arc(new(3, -2), 7, Angle.FromDegrees(20), Angle.FromDegrees(degrees));

        arc.Bulge.ShouldBe(bulge, 1e-15);
        arc.Sweep.Degrees.ShouldBe(degrees, Tight);
        arc.Radius.ShouldBe(7, Tight);
        arc.Centre.DistanceTo(new(3, -2)).ShouldBeLessThan(1e-13);
    }

    [Fact]
    public void Bulge_a_half_over_a_chord_of_2_has_sagitta_radius_and_sweep() // sagitta b c/2, R = c (1 + b²) / (4 |b|)
    {
        var arc = new Segment(new(0, 0), new(2, 0), 0.5);

        arc.Sagitta.ShouldBe(0.5);
        arc.Radius.ShouldBe(1.25);
        arc.Sweep.Degrees.ShouldBe(106.2602047083, 1e-10);
        // Counter-clockwise from left to right runs below the chord.
        arc.Middle.ShouldBe(new(1, -0.5));
    }

    [Fact]
    public void An_arc_of_30_degrees_and_radius_10_has_a_length() => // s = R θ
        Segment
            .Arc(Point.Origin, 10, Angle.FromDegrees(77), Angle.FromDegrees(30))
            .Length.ShouldBe(5.23598775598299, Tight);

    [Fact]
    public void A_whole_circle_is_two_half_circles() // DXF Reference, VERTEX group 42: one vertex cannot sweep 360 degrees
    {
        var circle = new Circle(new(1, 2), 3).ToContour();

        circle.Vertices.Select(vertex => vertex.Bulge).ShouldBe([1, 1]);
        circle.Area.ShouldBe(9 * Math.PI, Tight);
        circle.Length.ShouldBe(6 * Math.PI, Tight);
    }

    [Fact]
    public void The_pie_of_the_SVG_specification_has_an_area() // SVG 1.1, 8.3.8: M300,200 h-150 a150,150 0 1,0 150,-150 z
    {
        // Counter-clockwise on paper, where y points up: three quarters from left to top.
        var arc = Segment.Arc(Point.Origin, 150, Angle.FromDegrees(180), Angle.FromDegrees(270));
        var pie = new Contour(Point.Origin, new(arc.Start, arc.Bulge), arc.End);

        pie.Area.ShouldBe(53014.37602933, 1e-8);
    }

    private static Contour Lens(Point a, double r, Point b, double s)
    {
        var places = new Circle(a, r)
            .ToContour()
            .Intersections(new Circle(b, s).ToContour())
            .Select(contact => contact.Point)
            .OrderBy(point => point.Y)
            .ToArray();
        places.Length.ShouldBe(2);
        return new([
            new(places[0], Bulge(a, places[0], places[1])),
            new(places[1], Bulge(b, places[1], places[0])),
        ]);
    }

    private static double Bulge(Point centre, Point from, Point to)
    {
        var sweep = ((to - centre).Direction - (from - centre).Direction).Normalized();
        return Math.Tan(sweep.Radians / 4);
    }
}
