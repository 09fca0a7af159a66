using BenchmarkDotNet.Attributes;
using NetTopologySuite.Algorithm.Construct;
using NetTopologySuite.Geometries;
using PatternGen.Geometry;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Bench;

/// <summary>
/// The roof of one chip: where its walls meet and how deep it is. Beside it the largest circle in the same outline by
/// NetTopologySuite, which knows no arcs: they are lines that stray by a thousandth of a millimetre, and so may the circle.
/// </summary>
[MemoryDiagnoser]
public class RoofBench
{
    private const double Accuracy = 1e-3;

    private Contour _outline = Contour.Rectangle(new(0, 0), new(1, 1));
    private Polygon _flat = Polygon.Empty;

    /// <summary>Three straight sides; a petal of two arcs; three arcs; thirty straight sides that make a star of 15.</summary>
    [Params("triangle", "petal", "curved triangle", "star")]
    public string Chip { get; set; } = "";

    [GlobalSetup]
    public void Draw()
    {
        _outline = Chip switch
        {
            "triangle" => Contour.Polygon(new(0, 0), new(7, 0.3), new(2.9, 5)),
            "petal" => new(new Vertex(new(0, 0), 0.27), new Vertex(new(20, 0), 0.27)),
            "curved triangle" => new(
                new Vertex(new(0, 0), 0.2),
                new Vertex(new(8, 0.3), -0.15),
                new Vertex(new(3.9, 7), 0.1)
            ),
            _ => Contour.Polygon(
                Enumerable
                    .Range(0, 30)
                    .Select(i => Point.Origin.Polar(i % 2 == 0 ? 20 : 12, Angle.OfTurn(i / 30.0)))
            ),
        };
        var ring = _outline.Segments.SelectMany(Flat).ToList();
        _flat = new Polygon(new LinearRing([.. ring, ring[0]]));
    }

    /// <summary>As patterns make it, from an outline that is known to be one.</summary>
    [Benchmark(Baseline = true)]
    public double Deepest() => Roof.Over(_outline, []).Clearance;

    /// <summary>The same with the volume, and so with the check that the outline is one.</summary>
    [Benchmark]
    public double Volume() => Roof.Over(_outline).Moment;

    [Benchmark]
    public int Valleys() => Roof.Over(_outline, []).Valleys.Count;

    [Benchmark]
    public double NetTopologySuite() =>
        new MaximumInscribedCircle(_flat, Accuracy).GetRadiusLine().Length;

    private static IEnumerable<Coordinate> Flat(Segment side)
    {
        var step = 4 * Math.Asin(Math.Sqrt(Accuracy / side.Radius / 2));
        var parts = side.IsLine ? 1 : (int)Math.Ceiling(Math.Abs(side.Sweep.Radians) / step);
        return Enumerable
            .Range(0, parts)
            .Select(i => side.PointAt(side.Length * i / parts))
            .Select(point => new Coordinate(point.X, point.Y));
    }
}
