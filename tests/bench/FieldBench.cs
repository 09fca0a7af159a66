using BenchmarkDotNet.Attributes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using PatternGen.Geometry;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Bench;

/// <summary>Squares clipped to a wavy outline of 500 sides: this library, and NetTopologySuite clipping each square.</summary>
[MemoryDiagnoser]
public class FieldBench
{
    private const int Sides = 500;
    private const double Radius = 500;

    private Contour _outline = Contour.Rectangle(new(0, 0), new(1, 1));
    private Polygon _flat = Polygon.Empty;
    private Polygon[] _cells = [];

    /// <summary>Squares that the outline's extents hold.</summary>
    [Params(10_000, 100_000)]
    public int Cells { get; set; }

    private double Side => 2 * Radius / Math.Sqrt(Cells);

    [GlobalSetup]
    public void Draw()
    {
        _outline = Contour.Polygon(
            Enumerable
                .Range(0, Sides)
                .Select(i => (Turn: i / (double)Sides, Wave: 0.85 + 0.15 * Math.Sin(i * 0.2)))
                .Select(at => Point.Origin.Polar(Radius * at.Wave, Angle.OfTurn(at.Turn)))
        );
        _flat = Flat(_outline.Vertices.Select(corner => corner.Point));
        var half = (int)Math.Ceiling(Radius / Side);
        _cells =
        [
            .. from row in Enumerable.Range(-half, 2 * half)
            from column in Enumerable.Range(-half, 2 * half)
            let low = new Point(column * Side, row * Side)
            select Flat([
                low,
                low + new Vector(Side, 0),
                low + new Vector(Side, Side),
                low + new Vector(0, Side),
            ]),
        ];
    }

    [Benchmark(Baseline = true)]
    public double PatternGen() =>
        Field.Within(_outline).Squares(Side).From(Point.Origin).ClippedCells(0).Fit.CarvedArea;

    /// <summary>Each cell by itself.</summary>
    [Benchmark]
    public double NetTopologySuite() => _cells.Sum(cell => _flat.Intersection(cell).Area);

    /// <summary>Cells that lie inside or outside found by its index first, only the others clipped.</summary>
    [Benchmark]
    public double NetTopologySuitePrepared()
    {
        var prepared = PreparedGeometryFactory.Prepare(_flat);
        double area = 0;
        foreach (var cell in _cells)
            if (prepared.Contains(cell))
                area += cell.Area;
            else if (prepared.Intersects(cell))
                area += _flat.Intersection(cell).Area;
        return area;
    }

    private static Polygon Flat(IEnumerable<Point> corners)
    {
        Coordinate[] ring = [.. corners.Select(corner => new Coordinate(corner.X, corner.Y))];
        return new(new LinearRing([.. ring, ring[0]]));
    }
}
