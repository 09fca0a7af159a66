namespace PatternGen.Tests.Motifs;

public class RosetteSpecs
{
    /// <summary>Twice the 60° segment of a circle (MathWorld, "Circular Segment"), and its sagitta doubled.</summary>
    [Fact]
    public void A_petal_of_six_has_the_published_area_length_and_width()
    {
        var petal = TopPetal(Rosette.Petals(6, 40));

        petal.Area.ShouldBe(0.181172147412159 * 1600, 1e-9);
        petal.Extents.Height.ShouldBe(40, 1e-9);
        petal.Extents.Width.ShouldBe(0.267949192431123 * 40, 1e-9);
    }

    /// <summary>Euclid III.32: the angle between tangent and chord. So neighbours touch the same line at the centre.</summary>
    [Fact]
    public void A_tip_has_360_degrees_over_the_number_of_petals_and_neighbours_are_tangent()
    {
        for (var count = 3; count <= 36; count++)
        {
            var (left, right) = Tangents(TopPetal(Rosette.Petals(count, 40, centre: 0)));
            left.Degrees.ShouldBe(90 + 180.0 / count, 1e-7);
            right.Degrees.ShouldBe(90 - 180.0 / count, 1e-7);
        }
    }

    /// <summary>1 / sin 15° is √6 + √2.</summary>
    [Fact]
    public void Twelve_petals_of_40_mm_have_arcs_of_77_274_mm()
    {
        var arcs = Rosette.Petals(12, 40).Curves.Where(curve => !curve.IsCircle).ToArray();

        arcs.Length.ShouldBe(24);
        arcs.ShouldAllBe(arc =>
            Math.Abs(arc.Segment.Radius - 20 * (Math.Sqrt(6) + Math.Sqrt(2))) < 1e-6
        );
    }

    /// <summary>Common practice, no source: at most 8 tips meet in a point without a plain centre of 1.5 mm.</summary>
    [Fact]
    public void More_than_eight_tips_get_a_plain_centre_unless_asked_otherwise()
    {
        Rosette.Petals(8, 40).Centre.ShouldBe(0);
        Rosette.Petals(9, 40).Centre.ShouldBe(1.5);
        Rosette.Petals(9, 40, centre: 0).Centre.ShouldBe(0);
        Rosette.Petals(6, 40, centre: 10).Centre.ShouldBe(10);
        Rosette.Overlaid(2, 4, 40).Centre.ShouldBe(0);
        Rosette.Overlaid(2, 5, 40).Centre.ShouldBe(1.5);
        Rosette.Whirl(9, 40).Centre.ShouldBe(1.5);
        Rosette.Rays(9, 40, 15).Centre.ShouldBe(30);
    }

    [Fact]
    public void Petals_run_from_the_rim_of_the_plain_centre()
    {
        var arcs = Rosette.Petals(10, 40, centre: 8).Curves.Where(curve => !curve.IsCircle);

        foreach (var arc in arcs)
        {
            var ends = (Point[])[arc.Segment.Start, arc.Segment.End];
            ends.Select(end => end.DistanceTo(Point.Origin)).Min().ShouldBe(4, 1e-9);
            ends.Select(end => end.DistanceTo(Point.Origin)).Max().ShouldBe(40, 1e-9);
        }
    }

    /// <summary>R / (2 sin 22.5°), with 2 sin 22.5° = √(2 − √2).</summary>
    [Fact]
    public void Each_level_has_arcs_for_its_own_radius()
    {
        var radii = Rosette
            .TwoLevel(8, 40, inner: 20)
            .Curves.Where(curve => !curve.IsCircle)
            .Select(curve => curve.Segment.Radius * Math.Sqrt(2 - Math.Sqrt(2)))
            .ToArray();

        radii.Count(radius => Math.Abs(radius - 40) < 1e-9).ShouldBe(16);
        radii.Count(radius => Math.Abs(radius - 20) < 1e-9).ShouldBe(8);
    }

    /// <summary>MathWorld, "Star Polygon" and "Pentagram": the outer notches over the radius.</summary>
    [Theory]
    [InlineData(5, 2, 0.381966011250105)]
    [InlineData(6, 2, 0.577350269189626)]
    [InlineData(8, 2, 0.765366864730180)]
    [InlineData(8, 3, 0.541196100146197)]
    [InlineData(12, 5, 0.517638090205042)]
    public void The_notches_of_a_star_lie_where_published(int count, int every, double notch)
    {
        var nodes = Arrangement.Of(Rosette.Star(count, every, 40).Curves).Nodes;

        nodes
            .Select(node => node.Point.DistanceTo(Point.Origin) / 40)
            .Where(distance => distance < 1 - 1e-9)
            .Max()
            .ShouldBe(notch, 1e-12);
    }

    /// <summary>MathWorld, "Star Polygon": the greatest common divisor.</summary>
    [Theory]
    [InlineData(6, 2, 2, "Star {6/2} of 2 strokes, radius 40 mm")]
    [InlineData(8, 2, 2, "Star {8/2} of 2 strokes, radius 40 mm")]
    [InlineData(8, 3, 1, "Star {8/3}, radius 40 mm")]
    [InlineData(9, 3, 3, "Star {9/3} of 3 strokes, radius 40 mm")]
    [InlineData(12, 4, 4, "Star {12/4} of 4 strokes, radius 40 mm")]
    public void A_star_says_its_strokes(int count, int every, int strokes, string title)
    {
        var star = Rosette.Star(count, every, 40);

        star.Title(Wording.English).ShouldBe(title);
        Walked(star.Curves.Where(curve => !curve.IsCircle)).ShouldBe(strokes);
    }

    /// <summary>The classical ring of tangent circles: sin(180°/n) / (1 + sin(180°/n)).</summary>
    [Theory]
    [InlineData(6, 0.333333333333333)]
    [InlineData(8, 0.276768653914155)]
    [InlineData(12, 0.205604646759568)]
    public void Touching_circles_have_the_radius_of_the_classical_ring(int count, double radius)
    {
        var circles = Rosette
            .TouchingCircles(count, 40)
            .Curves.Where(curve => curve.Circle.Centre != Point.Origin)
            .ToArray();

        circles.Length.ShouldBe(count);
        circles.ShouldAllBe(curve => Math.Abs(curve.Circle.Radius - radius * 40) < 1e-9);
    }

    /// <summary>Euclid III.36: the square of a tangent is the product of the parts of a secant.</summary>
    [Fact]
    public void Petals_of_a_ring_without_ridges_touch_at_the_geometric_mean_of_both_circles()
    {
        var nodes = Arrangement.Of(Rosette.PetalRing(32, 40, 10, ridge: 0).Curves).Nodes;

        var touching = nodes
            .Select(node => node.Point.DistanceTo(Point.Origin))
            .Where(distance => distance is > 10.001 and < 39.999)
            .ToArray();
        touching.Length.ShouldBe(32);
        touching.ShouldAllBe(distance => Math.Abs(distance - Math.Sqrt(10 * 40)) < 1e-4);
    }

    [Theory]
    [InlineData(24, 14, 0.8)]
    [InlineData(36, 20, 1)]
    [InlineData(16, 5, 1.5)]
    public void A_ring_of_petals_keeps_the_ridge_between_neighbours(
        int count,
        double inner,
        double ridge
    )
    {
        var petal = TopPetal(Rosette.PetalRing(count, 40, inner, ridge));

        // The line half-way to the next petal, and how near places of the outline come to it.
        var half = Vector.Towards(Angle.FromDegrees(90 + 180.0 / count));
        var nearest = petal
            .Segments.SelectMany(side =>
                Enumerable.Range(0, 20_001).Select(i => Along(side, i / 20_000.0))
            )
            .Min(place => Math.Abs(half.Cross(place - Point.Origin)));
        nearest.ShouldBe(ridge / 2, 1e-6);
    }

    [Fact]
    public void Few_petals_of_a_ring_have_tips_of_60_degrees()
    {
        var petal = TopPetal(Rosette.PetalRing(6, 40, 20));

        petal.Area.ShouldBe(0.181172147412159 * 20 * 20, 1e-9);
    }

    [Fact]
    public void Six_petals_in_a_wreath_have_six_leaves_like_them()
    {
        var rosette = Rosette.Wreathed(6, 40);
        var arrangement = Arrangement.Of(rosette.Curves);

        arrangement
            .BoundedFaces.Count(face => Math.Abs(face.Area - 0.181172147412159 * 1600) < 1e-9)
            .ShouldBe(12);
        rosette
            .Curves.Where(curve => !curve.IsCircle)
            .ShouldAllBe(curve => Math.Abs(curve.Segment.Radius - 40) < 1e-9);
    }

    /// <summary>Over a chord as long as its radius an arc turns through 60°: Euclid IV.15.</summary>
    [Theory]
    [InlineData(WhirlTurn.Left, 60)]
    [InlineData(WhirlTurn.Right, -60)]
    public void A_whirl_turns_the_way_asked_for(WhirlTurn turn, double degrees)
    {
        var radii = Rosette
            .Whirl(7, 40, turn, arcRadius: 40, centre: 0)
            .Curves.Where(curve => !curve.IsCircle)
            .Select(curve => curve.Segment);

        foreach (var arc in radii)
            (
                arc.Start.DistanceTo(Point.Origin) < 1e-9 ? arc : arc.Reversed()
            ).Sweep.Degrees.ShouldBe(degrees, 1e-9);
    }

    [Fact]
    public void Three_petals_in_a_quarter_circle_are_those_of_a_rosette_of_twelve()
    {
        var fan = Rosette.Fan(3, 40, 0, 90, centre: 0);
        var whole = Rosette.Petals(12, 40, centre: 0);

        fan.PetalMarks.Count.ShouldBe(3);
        AreasOfPetals(fan).ShouldBe(AreasOfPetals(whole).Take(3), 1e-9);
        fan.Extents.Min.X.ShouldBe(0, 1e-9);
        fan.Extents.Min.Y.ShouldBe(0, 1e-9);
    }

    [Fact]
    public void A_fan_opens_counter_clockwise_across_the_zero_direction()
    {
        var fan = Rosette.Fan(4, 40, 300, 60);

        fan.Extents.Max.X.ShouldBe(40, 1e-9);
        fan.Extents.Min.X.ShouldBe(0, 1e-9);
        fan.Extents.Max.Y.ShouldBe(40 * Math.Sqrt(3) / 2, 1e-9);
    }

    /// <summary>A square round a circle of 40 mm is 80 mm wide.</summary>
    [Fact]
    public void A_polygon_stands_on_a_side_that_touches_the_rim()
    {
        foreach (var sides in (int[])[3, 4, 5, 6, 12])
        {
            var lines = Rosette
                .Petals(6, 40)
                .WithinPolygon(sides)
                .Curves.Where(curve => !curve.IsCircle && curve.Segment.IsLine)
                .Select(curve => curve.Segment)
                .ToArray();
            lines.Length.ShouldBe(sides);
            lines.ShouldAllBe(line => Math.Abs(line.DistanceTo(Point.Origin) - 40) < 1e-9);
            lines.ShouldContain(line =>
                Math.Abs(line.Start.Y + 40) < 1e-9 && Math.Abs(line.End.Y + 40) < 1e-9
            );
        }
        Rosette.Petals(6, 40).WithinPolygon(4).Radius.ShouldBe(40 * Math.Sqrt(2), 1e-9);
        Rosette.Petals(6, 40).WithinPolygon(4).Extents.Width.ShouldBe(80, 1e-9);
        Rosette.Petals(6, 40).WithinPolygon(4, gap: 2).Extents.Width.ShouldBe(84, 1e-9);
    }

    [Fact]
    public void A_rosette_knows_what_it_is_called()
    {
        var words = Wording.English;
        var inner = Rosette.Petals(6, 16);

        Rosette.Petals(12, 40).Title(words).ShouldBe("12 petals, radius 40 mm");
        Rosette.Overlaid(2, 6, 40).Title(words).ShouldBe("2 × 6 petals overlaid, radius 40 mm");
        Rosette
            .Nested(Rosette.Rays(24, 40, 20), inner)
            .Title(words)
            .ShouldBe("24 rays, radius 40 mm, round 6 petals, radius 16 mm");
        inner.WithinPolygon(4).Title(words).ShouldBe("6 petals, radius 16 mm, within 4 sides");
        RosetteFamilies
            .Of(12)
            .Select(sample => sample.Rosette.Title(words))
            .ShouldAllBe(title => title.Contains("12") && title.Contains("40 mm"));
    }

    [Fact]
    public void The_sampler_has_every_family_under_a_name_of_its_own()
    {
        var all = RosetteSampler.All;

        all.Select(sample => sample.Name).Distinct().Count().ShouldBe(all.Count);
        all.Select(sample => sample.Rosette.Family)
            .Distinct()
            .ShouldBe(Enum.GetValues<RosetteFamily>(), ignoreOrder: true);
        foreach (var sample in all)
        {
            Arrangement.Of(sample.Rosette.Curves).Validate().ShouldBeEmpty(sample.Name);
            sample.Rosette.Extents.Width.ShouldBeInRange(70, 80.000001, sample.Name);
        }
    }

    private static Contour TopPetal(Rosette rosette)
    {
        var arrangement = Arrangement.Of(rosette.Curves);
        return arrangement.FaceAt(rosette.PetalMarks[0])!.Value.ToPart().Outer;
    }

    private static IEnumerable<double> AreasOfPetals(Rosette rosette)
    {
        var arrangement = Arrangement.Of(rosette.Curves);
        return rosette.PetalMarks.Select(mark => arrangement.FaceAt(mark)!.Value.Area);
    }

    /// <summary>Directions in which the sides of a petal leave the centre, from its segments there.</summary>
    private static (Angle Left, Angle Right) Tangents(Contour petal)
    {
        Angle[] directions =
        [
            .. petal
                .Segments.SelectMany(side => (Segment[])[side, side.Reversed()])
                .Where(side => side.Start.DistanceTo(Point.Origin) < 1e-9)
                .Select(side => side.Chord.Direction - side.Sweep / 2)
                .OrderDescending(),
        ];
        directions.Length.ShouldBe(2);
        return (directions[0], directions[1]);
    }

    private static Point Along(Segment side, double share)
    {
        var from = (side.Start - side.Centre).Direction;
        return side.Centre.Polar(side.Radius, from + side.Sweep * share);
    }

    /// <summary>In how many closed strokes a person walks along lines from end to end.</summary>
    private static int Walked(IEnumerable<Curve> lines)
    {
        var left = lines.Select(line => line.Segment).ToList();
        var strokes = 0;
        while (left.Count > 0)
        {
            strokes++;
            var at = left[0].Start;
            while (left.FindIndex(line => line.Start.DistanceTo(at) < 1e-9) is >= 0 and var next)
            {
                at = left[next].End;
                left.RemoveAt(next);
            }
        }
        return strokes;
    }
}
