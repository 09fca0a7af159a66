namespace PatternGen.Tests.Geometry;

public class LimitSpecs
{
    private const double Limit = 2e6;

    public static TheoryData<string, string, Action> Refused =>
        new()
        {
            { "about", "but is NaN", () => Transform.Rotate(30, new Point(double.NaN, 0)) },
            { "about", "but is 1E+308", () => Transform.Resize(2, new Point(1e308, 0)) },
            { "dx", "-4,000,000 and 4,000,000 mm", () => Transform.Move(1e300, 0) },
            { "move", "The y component of move", () => Transform.Move(new Vector(0, 1e300)) },
            { "on", "2,000,000 mm", () => Transform.Mirror(new(0, 1e7), Angle.Zero) },
            { "x", "2,000,000 mm", () => Transform.MirrorLeftRight(3e6) },
            { "transform", "(3000000, 0)", () => Line.Transformed(Transform.Resize(1e6)) },
            { "factor", "but is NaN", () => _ = Angle.FullTurn * double.NaN },
            { "factor", "but is 1E+308", () => _ = Angle.FullTurn * 1e308 },
            { "divisor", "other than 0", () => _ = Angle.FullTurn / 0 },
            { "divisor", "finite number", () => _ = Angle.FullTurn / double.NegativeInfinity },
            { "share", "finite", () => Angle.OfTurn(1e308) },
            { "b", "finite", () => _ = Huge + Huge },
            { "point", "x coordinate of point", () => Grid.Square(1).Snap(new Point(9e9, 0)) },
            { "end", "y coordinate of end", () => _ = new Segment(default, new(0, 3e6)) },
            { "bulge", "but it is 1E+300", () => _ = new Segment(default, new(10, 0), 1e300) },
            { "bulge", "but is 1000000000000", () => _ = new Vertex(0, 0, 1e12) },
            { "vertices", "chord of 10 mm", () => _ = new Chain(new(0, 0, 1e8), new(10, 0)) },
            { "vertices", "chord of 10 mm", () => _ = new Contour(new(0, 0, 1e8), new(10, 0)) },
            { "sagitta", "2000000", () => Segment.WithSagitta(default, new(1, 0), 1e7) },
            { "sweep", "a Circle", () => Segment.Arc(default, 5, Angle.Zero, NearlyRound) },
        };

    private static Chain Line => Chain.Line(new(1, 0), new(3, 0));

    private static Angle Huge => Angle.FromRadians(double.MaxValue);

    private static Angle NearlyRound => Angle.FromRadians(Math.BitDecrement(Math.Tau));

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_lies_beyond_the_limits_is_refused_by_name(
        string parameter,
        string part,
        Action act
    )
    {
        var error = Should.Throw<ArgumentOutOfRangeException>(act);

        error.ParamName.ShouldBe(parameter);
        error.Message.ShouldContain(part);
    }

    [Fact]
    public void The_largest_bulge_that_a_message_names_works()
    {
        var error = Should.Throw<ArgumentOutOfRangeException>(() =>
            new Segment(new(0, 0), new(10, 0), 1e6)
        );

        // Over a chord of 10 from x = 0 to 10, a height of 2e6 - 5 less what the middle is off: (2e6 - 5) · 2 / 10.
        error.Message.ShouldContain("between -399999 and 399999 works");
        var largest = new Segment(new(0, 0), new(10, 0), 399999).Extents;
        largest.Min.Y.ShouldBeGreaterThan(-Limit);
        largest.Min.X.ShouldBeGreaterThan(-Limit);
    }

    [Fact]
    public void Arcs_that_just_reach_the_limit_are_accepted()
    {
        var circle = new Circle(new(1e6, 0), 1e6).ToContour();

        circle.Extents.Max.X.ShouldBe(Limit);
        circle.Area.ShouldBe(Math.PI * 1e12, 1);
        circle.Transformed(Transform.Rotate(45)).Area.ShouldBe(Math.PI * 1e12, 1);
    }

    [Fact]
    public void A_transform_that_takes_only_the_middle_of_an_arc_out_of_the_limits_is_refused()
    {
        var arc = new Segment(new(Limit - 3, -1), new(Limit - 3, 1), 1);
        var ring = new Contour(new(arc.Start, 1), new(arc.End));
        var move = Transform.Move(2.5, 0);

        arc.Extents.Max.X.ShouldBe(Limit - 2, 1e-6);
        foreach (var act in (Action[])[() => arc.Transformed(move), () => ring.Transformed(move)])
            Should.Throw<ArgumentOutOfRangeException>(act).ParamName.ShouldBe("transform");
    }

    [Fact]
    public void Scales_that_would_overflow_are_refused_when_they_are_put_together()
    {
        var error = Should.Throw<ArgumentOutOfRangeException>(() =>
        {
            var all = Transform.Identity;
            for (var i = 0; i < 100; i++)
                all = all.Then(Transform.Resize(1e6));
        });

        error.ParamName.ShouldBe("next");
    }
}
