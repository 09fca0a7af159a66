using CsCheck;

namespace PatternGen.Tests.Geometry;

public class FreeCurveSplineSpecs
{
    private static readonly Point[] Bent =
    [
        new(0, 0),
        new(10, 25),
        new(40, 30),
        new(55, 5),
        new(90, -12),
    ];

    [Fact]
    public void A_natural_spline_is_the_one_of_the_second_derivatives()
    {
        var curve = FreeCurve.Through(Bent);
        var spline = SecondDerivatives.Natural(Bent);

        for (var i = 0; i <= 400; i++)
            curve.PointAt(i / 400.0).DistanceTo(spline(i / 100.0)).ShouldBeLessThan(1e-12);
        curve.ToChain(0.005).ShouldFollow(t => spline(4 * t), 0.005);
    }

    [Fact]
    public void A_closed_spline_is_the_periodic_one_of_the_second_derivatives()
    {
        var curve = FreeCurve.ThroughClosed(Bent);
        var spline = SecondDerivatives.Periodic(Bent);

        for (var i = 0; i <= 500; i++)
            curve.PointAt(i / 500.0).DistanceTo(spline(i / 100.0)).ShouldBeLessThan(1e-11);
        var ring = curve.ToContour(0.005);
        ring.ShouldFollow(t => spline(5 * t), 0.005);
        Following.LargestKink(ring).ShouldBeLessThan(1e-7);
    }

    [Fact]
    public void A_spline_leaves_and_arrives_in_the_directions_given()
    {
        var chain = FreeCurve.ThroughDirected(Bent, new(0, 3), new(-2, -2)).ToChain();

        chain.TangentAt(0).X.ShouldBe(0, 1e-12);
        chain.TangentAt(0).Y.ShouldBe(1, 1e-12);
        chain.TangentAt(chain.Length).X.ShouldBe(-Math.Sqrt(0.5), 1e-9);
        chain.TangentAt(chain.Length).Y.ShouldBe(-Math.Sqrt(0.5), 1e-9);
    }

    [Fact]
    public void A_spline_through_points_of_a_circle_all_round_keeps_its_symmetry()
    {
        var corners = Enumerable
            .Range(0, 12)
            .Select(i => Point.Origin.Polar(10, Angle.OfTurn(i / 12.0)))
            .ToArray();

        var ring = FreeCurve.ThroughClosed([.. corners, corners[0]]).ToContour(0.001);

        // A cubic spline misses its function by at most 5/384 h⁴ |f''''| (Hall and Meyer 1976); here each coordinate's
        // f'''' is at most 10 / 10⁴ by the arc, and a chord is shorter.
        var h = 2 * 10 * Math.Sin(Math.PI / 12);
        foreach (var place in Enumerable.Range(0, 500))
            ring.PointAt(ring.Length * place / 500)
                .DistanceTo(Point.Origin)
                .ShouldBe(10, 0.001 + Math.Sqrt(2) * 5.0 / 384 * Math.Pow(h, 4) * 1.1e-3);
    }

    [Fact]
    public void A_point_given_twice_counts_once() =>
        FreeCurve
            .Through([Bent[0], Bent[0], .. Bent[1..], Bent[^1]])
            .PointAt(0.4)
            .ShouldBe(FreeCurve.Through(Bent).PointAt(0.4));

    [Fact]
    public void A_nurbs_is_the_one_of_the_recursion_of_cox_and_de_boor()
    {
        double[] knots = [0, 0, 0, 0, 1, 1, 2.5, 4, 4, 4, 4];
        Point[] controls = [.. Bent, new(100, 20), new(80, 60)];
        double[] weights = [1, 2, 0.5, 1, 3, 1, 1];

        var curve = FreeCurve.BSpline(3, knots, controls, weights);

        // Three spans: 0 to 1, 1 to 2.5, 2.5 to 4, each a third of the parameter.
        foreach (
            var (t, u) in new[] { (0.1, 0.3), (0.3, 0.9), (0.5, 1.75), (0.7, 2.65), (0.9, 3.55) }
        )
            curve.PointAt(t).DistanceTo(Nurbs(u)).ShouldBeLessThan(1e-12);
        curve
            .ToChain(0.004)
            .ShouldFollow(t => Nurbs(t < 1.0 / 3 ? 3 * t : 1 + 1.5 * (3 * t - 1)), 0.004);

        Point Nurbs(double u)
        {
            double x = 0,
                y = 0,
                all = 0;
            for (var i = 0; i < controls.Length; i++)
            {
                var weight = weights[i] * Basis(i, 3, Math.Min(u, Math.BitDecrement(4.0)));
                (x, y, all) = (
                    x + weight * controls[i].X,
                    y + weight * controls[i].Y,
                    all + weight
                );
            }
            return new(x / all, y / all);
        }

        double Basis(int i, int degree, double u)
        {
            if (degree == 0)
                return knots[i] <= u && u < knots[i + 1] ? 1 : 0;
            return Share(u - knots[i], knots[i + degree] - knots[i]) * Basis(i, degree - 1, u)
                + Share(knots[i + degree + 1] - u, knots[i + degree + 1] - knots[i + 1])
                    * Basis(i + 1, degree - 1, u);
        }

        static double Share(double part, double whole) => whole > 0 ? part / whole : 0;
    }

    [Fact]
    public void Splines_through_any_points_are_smooth_all_along() =>
        Draw.Point()
            .Array[3, 9]
            .Where(points => points.Zip(points.Skip(1), (a, b) => a.DistanceTo(b)).Min() > 0.1)
            .Sample(
                points =>
                {
                    var spline = SecondDerivatives.Natural(points);
                    var spans = points.Length - 1;
                    var chain = FreeCurve.Through(points).ToChain(0.01);
                    chain.ShouldFollow(t => spline(spans * t), 0.01, 40_000);
                },
                iter: 20
            );
}
