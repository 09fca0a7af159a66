using CsCheck;

namespace PatternGen.Tests.Geometry;

public class FreeCurvePropertySpecs
{
    /// <summary>Control points anywhere, on a coarse grid (doubled, in line, cusps and loops), or nearly in line.</summary>
    private static readonly Gen<Point[]> Controls = Gen.OneOf(
            Draw.Point().Array[4],
            Draw.GridPoint.Array[4],
            Gen.Select(Draw.GridPoint.Array[4], Gen.Double[-1e-3, 1e-3].Array[4])
                .Select((points, off) => points.Select((p, i) => new Point(p.X, off[i])).ToArray())
        )
        .Where(points => points.Any(point => point != points[0]));

    [Fact]
    public void Every_bezier_is_followed_to_the_accuracy() =>
        Gen.Select(Controls, Gen.Double[-4, -0.5])
            .Sample(
                (points, power) =>
                {
                    var accuracy = Math.Pow(10, power);
                    var chain = FreeCurve
                        .Bezier(points[0], points[1], points[2], points[3])
                        .ToChain(accuracy);

                    chain.ShouldFollow(t => Draw.Bernstein(points, t), accuracy);
                    chain.Start.ShouldBe(points[0]);
                    chain.End.ShouldBe(points[3]);
                    chain.Vertices.ShouldAllBe(corner => corner.Point.IsFinite);
                },
                iter: 60
            );

    [Fact]
    public void Every_smooth_bezier_is_followed_smoothly() =>
        // The derivative is a mean of the legs: where the outer ones go forward along the middle one, so does it.
        Gen.Select(Leg, Leg, Leg, Gen.Double[-180, 180])
            .Sample(
                (first, middle, last, turn) =>
                {
                    var b = Point.Origin.Polar(first.Length, Angle.FromDegrees(first.Degrees));
                    var c = b.Polar(middle.Length, Angle.Zero);
                    var d = c.Polar(last.Length, Angle.FromDegrees(last.Degrees));
                    var chain = FreeCurve
                        .Bezier(Point.Origin, b, c, d)
                        .Transformed(Transform.Rotate(turn))
                        .ToChain();

                    Following.LargestKink(chain).ShouldBeLessThan(1e-6);
                },
                iter: 100
            );

    private static Gen<(double Length, double Degrees)> Leg =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[-85, 85]);
}
