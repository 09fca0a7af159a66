namespace PatternGen.Tests.Geometry;

public class FreeCurveLengthSpecs
{
    [Theory]
    [InlineData(2, 1, 9.6884482205476762)] // 4 a E(e), the complete elliptic integral
    [InlineData(4, 3, 22.103492160709505)] // the same
    [InlineData(1.4142135623730951, 1, 7.64039557805542)] // four times OEIS A256667
    [InlineData(1, 3, 13.364893220555259)] // 4 a E(e)
    public void An_ellipse_has_a_perimeter(double a, double b, double perimeter) =>
        FreeCurve
            .Ellipse(new(7, -3), a, b, Angle.FromDegrees(33))
            .Length.ShouldBe(perimeter, 1e-12 * perimeter);

    [Fact]
    public void A_parabola_has_a_length() // y = x² from 0 to 1: sqrt5/2 + asinh(2)/4
    {
        var curve = FreeCurve.Bezier(new(0, 0), new(0.5, 0), new(1, 1));

        curve.Length.ShouldBe(1.4789428575445974, 1e-12);
        curve.PointAt(0.3).DistanceTo(new(0.3, 0.09)).ShouldBeLessThan(1e-15);
    }

    [Fact]
    public void The_first_turn_of_a_logarithmic_spiral_has_a_length() // r = exp(0.1 θ)
    {
        var spiral = FreeCurve.LogarithmicSpiral(
            new(0, 0),
            1,
            Math.Exp(0.1 * Math.Tau),
            Angle.Zero,
            1
        );

        spiral.Length.ShouldBe(8.78817491636465, 1e-11);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-3.25)]
    public void An_archimedean_spiral_has_its_closed_form(double turns)
    {
        // r = a θ from the middle: a/2 (θ sqrt(1 + θ²) + asinh θ).
        const double growth = 2;
        var (a, angle) = (growth / Math.Tau, Math.Abs(turns) * Math.Tau);
        var length = a / 2 * (angle * Math.Sqrt(1 + angle * angle) + Math.Asinh(angle));

        var spiral = FreeCurve.ArchimedeanSpiral(new(5, 5), 0, growth, Angle.Zero, turns);

        spiral.Length.ShouldBe(length, 1e-12 * length);
        spiral.End.DistanceTo(new(5, 5)).ShouldBe(growth * Math.Abs(turns), 1e-12);
    }

    [Fact]
    public void A_logarithmic_spiral_inwards_has_its_closed_form()
    {
        // sqrt(1 + b²)/b times the difference of the radii, b = ln(factor) / 2π.
        var b = Math.Log(0.5) / Math.Tau;
        var length = Math.Sqrt(1 + b * b) / b * (8 * Math.Pow(0.5, 2.5) - 8);

        var spiral = FreeCurve.LogarithmicSpiral(new(0, 0), 8, 0.5, Angle.FromDegrees(30), 2.5);

        spiral.Length.ShouldBe(length, 1e-12 * length);
    }

    [Theory]
    [InlineData(90, 0.000272530007427705)] // Mortensen, Approximate a circle with cubic Bezier curves
    [InlineData(60, 2.38644196098845e-5)] // standard arc-to-cubic rule, 40-digit arithmetic
    [InlineData(30, 3.72661931504277e-7)]
    public void A_cubic_for_an_arc_has_a_radial_error(double degrees, double error)
    {
        var k = 4.0 / 3 * Math.Tan(double.DegreesToRadians(degrees) / 4);
        var end = Angle.FromDegrees(degrees);
        var tip = Point.Origin.Polar(1, end);
        var curve = FreeCurve.Bezier(new(1, 0), new(1, k), tip - k * Vector.Towards(end).Left, tip);
        var largest = Enumerable
            .Range(0, 100_001)
            .Max(i => curve.PointAt(i / 100_000.0).DistanceTo(Point.Origin) - 1);

        largest.ShouldBe(error, 1e-12);
        if (degrees == 90)
            (curve.PointAt(0.211324865405187).DistanceTo(Point.Origin) - 1).ShouldBe(error, 1e-14);
        // The arcs for it follow the cubic, and so lie off the circle by as much and the accuracy.
        var chain = curve.ToChain(1e-5);
        chain
            .Vertices.Max(corner => corner.Point.DistanceTo(Point.Origin))
            .ShouldBeLessThan(1 + error + 1e-5);
    }

    [Fact]
    public void The_arcs_are_as_long_as_the_curve()
    {
        var ellipse = FreeCurve.Ellipse(new(0, 0), 40, 30);

        // 4 a E(e), and an error of the length that is of second order in the accuracy over the length of an arc.
        ellipse.ToContour(1e-4).Length.ShouldBe(221.03492160709505, 1e-4);
    }

    [Fact]
    public void A_cusp_does_not_spoil_the_length()
    {
        // The semicubical parabola y = x^(3/2)/2: sqrt(1 + 9x/16) integrated is 32/27 (1 + 9x/16)^(3/2), and there are two
        // branches from x = 0 to 1.
        var length = 2 * 32.0 / 27 * (Math.Pow(1 + 9.0 / 16, 1.5) - 1);

        Cusps.Semicubical.Length.ShouldBe(length, 1e-11);
    }
}
