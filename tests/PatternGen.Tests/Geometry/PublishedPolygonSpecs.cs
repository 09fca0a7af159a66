namespace PatternGen.Tests.Geometry;

/// <summary>Published figures of stars, sectors, rings of circles and polygons round a circle, each with its source.</summary>
public class PublishedPolygonSpecs
{
    private const double Tight = 1e-12;

    [Theory]
    [InlineData(5, 0.587785252292473)]
    [InlineData(9, 0.342020143325669)]
    [InlineData(12, 0.258819045102521)]
    [InlineData(21, 0.149042266176174)]
    public void Chords_of_a_circle_of_diameter_1(int divisions, double chord) // Machinery's Handbook, chords for spacing off circles (table named from memory)
    {
        Segment
            .Arc(Point.Origin, 0.5, Angle.Zero, Angle.OfTurn(1.0 / divisions))
            .Chord.Length.ShouldBe(chord, 1e-15);
    }

    [Fact]
    public void Twenty_four_chords_of_a_circle_of_radius_3_fall_short_of_its_circumference()
    {
        // Engineering ToolBox, "Chord Lengths when Dividing a Circle": prints 0.7833, 18.7959 and 18.8496.
        var chord = Segment.Arc(Point.Origin, 3, Angle.Zero, Angle.OfTurn(1.0 / 24)).Chord.Length;

        chord.ShouldBe(0.7833, 2e-4);
        (24 * chord).ShouldBe(18.7959, 2e-4);
        new Circle(Point.Origin, 3).Length.ShouldBe(18.8496, 5e-5);
    }

    [Theory]
    [InlineData(5, 2, 0.381966011250105)] // MathWorld, Pentagram: 1/φ²
    [InlineData(6, 2, 0.577350269189626)] // MathWorld, Hexagram: 1/√3
    [InlineData(8, 2, 0.765366864730180)] // MathWorld, Star Polygon
    [InlineData(8, 3, 0.541196100146197)] // MathWorld, Star Polygon
    [InlineData(12, 5, 0.517638090205042)] // MathWorld, Star Polygon
    public void The_notches_of_a_star_lie_at_a_share_of_its_radius(int n, int k, double share)
    {
        Point Tip(int i) => Point.Origin.Polar(1, Angle.OfTurn((double)i / n));

        // The two sides that meet between tips 0 and 1.
        var meeting = new Segment(Tip(0), Tip(k)).Intersect(new(Tip(1), Tip(1 - k)));

        meeting.Kind.ShouldBe(IntersectionKind.One);
        meeting.Points[0].DistanceTo(Point.Origin).ShouldBe(share, Tight);
    }

    [Fact]
    public void The_sides_of_the_star_12_5_pass_the_centre_at_a_distance() // MathWorld, Star Polygon
    {
        var side = new Segment(new(1, 0), Point.Origin.Polar(1, Angle.OfTurn(5.0 / 12)));

        side.DistanceTo(Point.Origin).ShouldBe(0.258819045102521, Tight);
    }

    [Theory]
    [InlineData(6, 0.333333333333)]
    [InlineData(8, 0.276768653914)]
    [InlineData(12, 0.205604646760)]
    public void A_ring_of_circles_touches_the_rim_and_its_neighbours(int n, double radius) // r = sin(π/n) / (1 + sin(π/n)), as OEIS A367480
    {
        var rim = new Circle(Point.Origin, 1).ToContour();
        Contour Of(int i) =>
            new Circle(
                Point.Origin.Polar(1 - radius, Angle.OfTurn((i + 0.5) / n)),
                radius
            ).ToContour();

        Of(0).Intersections(Of(1)).Count.ShouldBe(1);
        Of(0).Intersections(rim).Count.ShouldBe(1);
        Of(0).Intersections(Of(2)).ShouldBeEmpty();
    }

    [Theory]
    [InlineData(90, 0.414213562373095)]
    [InlineData(60, 0.333333333333333)]
    [InlineData(45, 0.276768653914155)]
    [InlineData(30, 0.205604646759568)]
    public void The_largest_circle_in_a_sector(double degrees, double radius) // tangent circle in a sector: sin(a/2) / (1 + sin(a/2))
    {
        var arc = Segment.Arc(Point.Origin, 1, Angle.Zero, Angle.FromDegrees(degrees));
        var sector = new Contour(Point.Origin, new Vertex(arc.Start, arc.Bulge), arc.End);
        var centre = Point.Origin.Polar(1 - radius, Angle.FromDegrees(degrees / 2));

        sector.DistanceTo(centre).ShouldBe(radius, Tight);
        // An offset that much leaves nothing, one a little less leaves a little.
        sector.Inset(radius * 1.0001).IsEmpty.ShouldBeTrue();
        sector.Inset(radius * 0.9999).Area.ShouldBeInRange(1e-12, 1e-3);
    }

    /// <summary>
    /// A polygon round a circle has the area radius × half its outline (MathWorld, Tangential Polygon, from memory), and
    /// with four sides the sums of opposite ones are equal (Pitot).
    /// </summary>
    [Theory]
    [InlineData(10.0, 80.0, 200.0, 290.0)]
    [InlineData(0.0, 100.0, 170.0, 250.0)]
    [InlineData(0.0, 120.0, 240.0)]
    [InlineData(5.0, 60.0, 130.0, 190.0, 250.0, 310.0)]
    public void Polygons_round_a_circle(params double[] touching)
    {
        const double radius = 3;
        var polygon = Contour.Polygon(
            touching.Select((degrees, i) => Corner(degrees, touching[(i + 1) % touching.Length]))
        );

        polygon.Area.ShouldBe(radius * polygon.Length / 2, 1e-10);
        var sides = polygon.Segments.Select(side => side.Length).ToArray();
        if (sides.Length == 4)
            (sides[0] + sides[2]).ShouldBe(sides[1] + sides[3], 1e-10);

        // Where the tangents at two directions meet.
        Point Corner(double from, double to)
        {
            var half = Angle.FromDegrees((to - from + (to < from ? 360 : 0)) / 2);
            return Point.Origin.Polar(radius / half.Cos(), Angle.FromDegrees(from) + half);
        }
    }
}
