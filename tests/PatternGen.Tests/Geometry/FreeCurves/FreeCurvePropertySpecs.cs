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
        Draw.Point()
            .Array[4]
            // Legs that turn the same way by less than a half circle in all have no cusp.
            .Where(p => Legs(p).Zip(Legs(p).Skip(1)).All(pair => pair.First.Dot(pair.Second) > 0))
            .Sample(
                p =>
                    Following
                        .LargestKink(FreeCurve.Bezier(p[0], p[1], p[2], p[3]).ToChain())
                        .ShouldBeLessThan(1e-6),
                iter: 100
            );

    private static IEnumerable<Vector> Legs(Point[] points) =>
        points.Zip(points.Skip(1), (a, b) => b - a);
}
