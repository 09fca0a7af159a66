namespace PatternGen.Tests.Geometry;

public class FreeCurveFollowSpecs
{
    private const double Smooth = 1e-7;

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.01)]
    [InlineData(0.0001)]
    public void A_bezier_is_followed_to_the_accuracy(double accuracy)
    {
        Point[] p = [new(0, 0), new(90, 80), new(-30, 70), new(50, -10)];
        var chain = FreeCurve.Bezier(p[0], p[1], p[2], p[3]).ToChain(accuracy);

        chain.ShouldFollow(t => Draw.Bernstein(p, t), accuracy);
        Following.LargestKink(chain).ShouldBeLessThan(Smooth);
        (chain.Start, chain.End).ShouldBe((p[0], p[3]));
    }

    [Theory]
    [InlineData(60, 35)]
    [InlineData(3, 80)]
    public void An_ellipse_is_a_smooth_contour(double a, double b)
    {
        var ring = FreeCurve.Ellipse(new(10, 20), a, b).ToContour(0.002);

        ring.ShouldFollow(
            t => new(10 + a * Math.Cos(Math.Tau * t), 20 + b * Math.Sin(Math.Tau * t)),
            0.002,
            100_000
        );
        Following.LargestKink(ring).ShouldBeLessThan(Smooth);
        ring.Validate().IsValid.ShouldBeTrue();
        // π a b, off by no more than the accuracy all round.
        ring.SignedArea.ShouldBe(Math.PI * a * b, 0.002 * ring.Length);
    }

    [Fact]
    public void A_part_of_an_ellipse_turned_and_clockwise()
    {
        var part = FreeCurve.Ellipse(
            new(1, 2),
            30,
            10,
            Angle.FromDegrees(30),
            Angle.FromDegrees(45),
            Angle.FromDegrees(-200)
        );

        part.ToChain(0.001)
            .ShouldFollow(
                t =>
                {
                    var a = (45 - 200 * t) * Math.PI / 180;
                    var (u, v) = (30 * Math.Cos(a), 10 * Math.Sin(a));
                    var (c, s) = (Math.Sqrt(3) / 2, 0.5);
                    return new(1 + u * c - v * s, 2 + u * s + v * c);
                },
                0.001
            );
    }

    [Fact]
    public void Spirals_are_followed_round_and_round()
    {
        var archimedean = FreeCurve
            .ArchimedeanSpiral(new(0, 0), 0, 5, Angle.FromDegrees(90), -4)
            .ToChain();
        var logarithmic = FreeCurve
            .LogarithmicSpiral(new(3, 4), 1, 3, Angle.Zero, 4)
            .ToChain(0.003);

        archimedean.ShouldFollow(
            t => new(20 * t * Math.Sin(8 * Math.PI * t), 20 * t * Math.Cos(8 * Math.PI * t)),
            0.01,
            100_000
        );
        logarithmic.ShouldFollow(
            t =>
                new(
                    3 + Math.Pow(3, 4 * t) * Math.Cos(8 * Math.PI * t),
                    4 + Math.Pow(3, 4 * t) * Math.Sin(8 * Math.PI * t)
                ),
            0.003,
            100_000
        );
        Following.LargestKink(archimedean).ShouldBeLessThan(Smooth);
        Following.LargestKink(logarithmic).ShouldBeLessThan(Smooth);
    }

    [Fact]
    public void A_circle_drawn_as_an_ellipse_is_that_circle()
    {
        var ring = FreeCurve.Ellipse(new(3, 4), 25, 25, Angle.FromDegrees(10)).ToContour();

        ring.Count.ShouldBeLessThanOrEqualTo(4);
        foreach (var arc in ring.Segments)
        {
            arc.Radius.ShouldBe(25, 1e-10);
            arc.Centre.DistanceTo(new(3, 4)).ShouldBeLessThan(1e-10);
        }
    }

    [Fact]
    public void A_circle_drawn_as_a_nurbs_is_that_circle() // nine points, weights 1 and √½: the standard circle of NURBS
    {
        var w = Math.Sqrt(0.5);
        Point[] controls =
        [
            new(1, 0),
            new(1, 1),
            new(0, 1),
            new(-1, 1),
            new(-1, 0),
            new(-1, -1),
            new(0, -1),
            new(1, -1),
            new(1, 0),
        ];
        var ring = FreeCurve
            .BSpline(2, [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4], controls, [1, w, 1, w, 1, w, 1, w, 1])
            .ToContour();

        ring.Count.ShouldBeLessThanOrEqualTo(4);
        ring.Area.ShouldBe(Math.PI, 1e-12);
        ring.Segments.Max(arc => Math.Abs(arc.Radius - 1)).ShouldBeLessThan(1e-10);
    }

    [Fact]
    public void Straight_pieces_are_lines()
    {
        FreeCurve
            .Bezier(new(0, 0), new(1, 2), new(1.5, 3), new(4, 8))
            .ToChain()
            .Segments.ShouldBe([new Segment(new(0, 0), new(4, 8))]);
        FreeCurve
            .Through(new(0, 0), new(1, 0.5), new(4, 2))
            .ToChain()
            .Segments.ShouldAllBe(segment => segment.IsLine);
    }

    [Fact]
    public void A_straight_piece_of_a_path_stays_a_line_where_curves_join_it()
    {
        var chain = FreeCurve
            .BezierPath(
                new(0, 0),
                new(0, 5),
                new(5, 10),
                new(10, 10),
                new(20, 10),
                new(30, 10),
                new(40, 10),
                new(45, 10),
                new(50, 5),
                new(50, 0)
            )
            .ToChain();

        chain.Segments.ShouldContain(new Segment(new(10, 10), new(40, 10)));
        Following.LargestKink(chain).ShouldBeLessThan(Smooth);
    }

    [Fact]
    public void A_cusp_becomes_a_corner()
    {
        var chain = Cusps.Semicubical.ToChain(0.001);

        chain.ShouldFollow(Cusps.SemicubicalAt, 0.001);
        chain.Vertices.ShouldContain(corner => corner.Point.DistanceTo(Point.Origin) < 1e-6);
        Following.LargestKink(chain).ShouldBe(Math.PI, 1e-6);
    }

    [Fact]
    public void Corners_between_beziers_stay_corners()
    {
        var ring = FreeCurve
            .BezierPath(
                new(0, 0),
                new(10, 20),
                new(30, 20),
                new(40, 0),
                new(30, -20),
                new(10, -20),
                new(0, 0)
            )
            .ToContour(0.005);

        ring.Vertices.ShouldContain(corner => corner.Point == new Point(40, 0));
        // Both meet the x axis at atan 2.
        Following.LargestKink(ring).ShouldBe(Math.PI - 2 * Math.Atan(2), 1e-9);
        ring.Validate().IsValid.ShouldBeTrue();
    }

    [Fact]
    public void Control_points_on_top_of_the_ends_do_no_harm()
    {
        Point[] p = [new(0, 0), new(0, 0), new(10, 10), new(20, 0)];
        var chain = FreeCurve.Bezier(p[0], p[1], p[2], p[3]).ToChain();

        chain.ShouldFollow(t => Draw.Bernstein(p, t), 0.01);
        // It leaves towards the first control point that is elsewhere.
        chain.SegmentAt(0).TangentAt(0).Cross(new Vector(10, 10).Unit()).ShouldBe(0, 1e-9);
    }

    [Fact]
    public void What_is_moved_is_followed_there()
    {
        var move = Transform
            .MirrorLeftRight(3)
            .Then(Transform.Rotate(40))
            .Then(Transform.Resize(2));
        var curve = Cusps.Semicubical;

        var moved = curve.Transformed(move);

        moved.ToChain(0.001).ShouldFollow(t => move.Apply(Cusps.SemicubicalAt(t)), 0.001);
        moved.Length.ShouldBe(2 * curve.Length, 1e-11);
    }
}
