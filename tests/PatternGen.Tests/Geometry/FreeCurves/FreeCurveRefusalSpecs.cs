namespace PatternGen.Tests.Geometry;

public class FreeCurveRefusalSpecs
{
    private static readonly Point O = Point.Origin;

    private static readonly FreeCurve Wave = FreeCurve.Bezier(
        new(0, 0),
        new(6, 8),
        new(4, -8),
        new(10, 0)
    );

    public static TheoryData<string, string, Action> Refused =>
        new()
        {
            { "end", "all 3 are (0, 0)", () => FreeCurve.Bezier(O, O, O) },
            { "end", "-2,000,000", () => FreeCurve.Bezier(O, new(double.NaN, 0), O, O) },
            { "points", "4, 7, 10", () => FreeCurve.BezierPath(O, new(1, 1), O) },
            { "points", "there are none", () => FreeCurve.Through(Array.Empty<Point>()) },
            { "points", "-2,000,000", () => FreeCurve.Through(O, new(1, 1e9)) },
            { "points", "at least three", () => FreeCurve.ThroughClosed(O, new(1, 1), O) },
            {
                "leaving",
                "zero vector",
                () => FreeCurve.ThroughDirected([O, new(1, 1)], Vector.Zero, null)
            },
            { "radiusY", "more than 0", () => FreeCurve.Ellipse(O, 1, 0) },
            {
                "sweep",
                "at most 360",
                () => FreeCurve.Ellipse(O, 1, 2, default, default, Angle.FromDegrees(361))
            },
            { "turns", "not be 0", () => FreeCurve.ArchimedeanSpiral(O, 1, 1, default, 0) },
            { "growth", "has to grow", () => FreeCurve.ArchimedeanSpiral(O, 0, 0, default, 1) },
            { "growth", "0 or more", () => FreeCurve.ArchimedeanSpiral(O, 3, -2, default, 2) },
            { "factor", "1,000,000", () => FreeCurve.LogarithmicSpiral(O, 3, 9, default, 20) },
            { "knots", "4 control points", () => FreeCurve.BSpline(3, [0, 1], [O, new(1, 1)]) },
            { "knots", "go back", () => FreeCurve.BSpline(1, [0, 1, 0.5, 2], [O, new(1, 1)]) },
            { "knots", "but both are 1", () => FreeCurve.BSpline(1, [0, 1, 1, 2], [O, new(1, 1)]) },
            {
                "knots",
                "gap from (1, 1) to (3, 1)",
                () => FreeCurve.BSpline(1, [0, 0, 1, 1, 2, 2], [O, new(1, 1), new(3, 1), new(4, 0)])
            },
            {
                "weights",
                "3 weights",
                () => FreeCurve.BSpline(1, [0, 0, 1, 1], [O, new(1, 1)], [1, 1, 1])
            },
            {
                "weights",
                "but is 0",
                () => FreeCurve.BSpline(1, [0, 0, 1, 1], [O, new(1, 1)], [1, 0])
            },
            { "accuracy", "but is 0", () => Wave.ToChain(0) },
            { "accuracy", "but is NaN", () => Wave.ToChain(double.NaN) },
            { "accuracy", "but is 1E-09", () => Wave.ToChain(1e-9) },
            { "t", "between 0 and 1", () => Wave.PointAt(1.1) },
            { "transform", "2,000,000", () => Wave.Transformed(Transform.Resize(1e6)) },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_makes_no_curve_is_refused_by_name(string parameter, string part, Action act)
    {
        var error = Should.Throw<ArgumentException>(act);

        error.ParamName.ShouldBe(parameter);
        error.Message.ShouldContain(part);
    }

    [Fact]
    public void An_open_curve_makes_no_contour() =>
        Should
            .Throw<PatternException>(() => Wave.ToContour())
            .Message.ShouldContain("ends 10 mm from where it starts");

    [Fact]
    public void A_curve_that_takes_too_many_arcs_is_refused_with_what_would_work() =>
        // r from 0 to 1e6 mm over 10,000 turns at a millionth of a millimetre: millions of arcs.
        Should
            .Throw<PatternException>(() =>
                FreeCurve.ArchimedeanSpiral(O, 0, 100, Angle.Zero, 10_000).ToChain(1e-6)
            )
            .Message.ShouldContain("a coarser accuracy");

    [Fact]
    public void Curves_far_smaller_than_the_accuracy_end_in_a_line_or_a_clear_error()
    {
        var tiny = Transform.Resize(1e-6);

        Wave.Transformed(tiny).ToChain(1).End.DistanceTo(new(1e-5, 0)).ShouldBeLessThan(1e-15);
        // All of the loop turns within a ten-thousandth of the accuracy: nothing but corners.
        var loop = FreeCurve.Bezier(O, new(1, 1), new(-1, 1), O).Transformed(tiny);
        Should.Throw<PatternException>(() => loop.ToContour(1)).Message.ShouldContain("too small");
    }
}
