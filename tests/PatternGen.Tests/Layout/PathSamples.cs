using CsCheck;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Layout;

/// <summary>Paths and motifs that the tests of repeats share, in mm.</summary>
internal static class PathSamples
{
    internal static readonly Contour Circle50 = new Circle(Point.Origin, 50).ToContour();

    /// <summary>A square about the origin.</summary>
    internal static readonly Contour Square100 = Contour.Rectangle(new(-50, -50), new(50, 50));

    /// <summary>A chip of two arcs, its middle at the origin.</summary>
    internal static readonly Pattern Lens = Pattern
        .OfChips(new Contour(new Vertex(-4, 0, 0.3), new Vertex(4, 0, 0.3)))
        .Named("Lens");

    /// <summary>A chip without any symmetry, so that turning and mirroring show.</summary>
    internal static readonly Pattern Hook = Pattern.OfChips(
        Contour.Polygon(new(0, 0), new(4, 0), new(1, 2))
    );

    /// <summary>A chain that goes to the right and turns at each of its corners, with arcs to both sides.</summary>
    internal static readonly Gen<Chain> Chains = Gen.Select(
            Gen.Double[4, 30],
            Gen.Double[-15, 15],
            Gen.Double[-0.6, 0.6]
        )
        .Array[2, 12]
        .Select(parts =>
        {
            var x = 0.0;
            List<Vertex> corners = [];
            foreach (var (step, y, bulge) in parts)
                corners.Add(new(x += step, y, bulge));
            return new Chain(corners);
        });

    /// <summary>Closed paths round the origin, of lines and arcs, either way round.</summary>
    internal static readonly Gen<Contour> Rings = Gen.Select(
        Gen.Select(Gen.Double[20, 60], Gen.Double[-0.2, 0.4]).Array[3, 10],
        Gen.Bool,
        (corners, isReversed) =>
        {
            var ring = new Contour(
                corners.Select(
                    (corner, i) =>
                        new Vertex(
                            Point.Origin.Polar(
                                corner.Item1,
                                Angle.OfTurn((double)i / corners.Length)
                            ),
                            corner.Item2
                        )
                )
            );
            return isReversed ? ring.Reversed() : ring;
        }
    );

    internal static Contour Rounded { get; } = Shapes.RoundedRectangle(160, 110, 28);

    /// <summary>Where the origins of the motifs lie.</summary>
    internal static Point[] Origins(this PathRepeats repeats) =>
        [.. repeats.Placements.Select(placement => placement.Apply(Point.Origin))];

    /// <summary>Where the x axes of the motifs point.</summary>
    internal static Vector[] Headings(this PathRepeats repeats) =>
        [.. repeats.Placements.Select(placement => placement.Apply(new Vector(1, 0)))];

    internal static void ShouldBe(this Point actual, Point expected, double within) =>
        actual
            .DistanceTo(expected)
            .ShouldBeLessThanOrEqualTo(within, $"{actual} is not {expected}");

    internal static void ShouldBe(this Vector actual, Vector expected, double within) =>
        (actual - expected).Length.ShouldBeLessThanOrEqualTo(within, $"{actual} is not {expected}");
}
