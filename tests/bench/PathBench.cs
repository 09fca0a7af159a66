using BenchmarkDotNet.Attributes;
using NetTopologySuite.Geometries;
using NetTopologySuite.LinearReferencing;
using PatternGen.Geometry;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Bench;

/// <summary>
/// 10,000 repeats along a path of 200 lines and arcs. Beside it the same places asked for one by one, and by
/// NetTopologySuite, which knows no arcs (they are lines that stray by a hundredth of a millimetre) and no directions: a
/// second place a little farther on gives one.
/// </summary>
[MemoryDiagnoser]
public class PathBench
{
    private const int Repeats = 10_000;
    private const double Accuracy = 0.01;

    private readonly Pattern _motif = Pattern.OfChips(
        new Contour(new Vertex(0, 0, 0.3), new Vertex(0.1, 0, 0.3))
    );

    private readonly Contour _path = new(
        Enumerable
            .Range(0, 200)
            .Select(i => new Vertex(
                Point.Origin.Polar(i % 3 == 0 ? 300 : 290, Angle.OfTurn(i / 200.0)),
                i % 2 == 0 ? 0.2 : 0
            ))
    );

    private LineString _flat = LineString.Empty;

    private double Spacing => _path.Length / Repeats;

    [GlobalSetup]
    public void Flatten()
    {
        var points = _path.Segments.SelectMany(Flat).ToList();
        _flat = new([.. points, points[0]]);
    }

    /// <summary>The fit, and every placement.</summary>
    [Benchmark(Baseline = true)]
    public double Placements() =>
        _path.Repeat(_motif, Spacing).Placements[Repeats - 1].Translation.X;

    /// <summary>The fit, and every chip at its place.</summary>
    [Benchmark]
    public double Chips()
    {
        double sum = 0;
        foreach (var chip in _path.Repeat(_motif, Spacing).Chips)
            sum += chip.Outline.Vertices[0].Point.X;
        return sum;
    }

    [Benchmark]
    public double OneByOne()
    {
        double sum = 0;
        for (var i = 0; i < Repeats; i++)
        {
            var at = i * Spacing;
            sum += _path.PointAt(at).X + _path.TangentAt(at).Y;
        }
        return sum;
    }

    [Benchmark]
    public double NetTopologySuite()
    {
        var line = new LengthIndexedLine(_flat);
        var spacing = _flat.Length / Repeats;
        double sum = 0;
        for (var i = 0; i < Repeats; i++)
        {
            var at = line.ExtractPoint(i * spacing);
            var next = line.ExtractPoint(i * spacing + Accuracy);
            sum += at.X + next.Y - at.Y;
        }
        return sum;
    }

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
