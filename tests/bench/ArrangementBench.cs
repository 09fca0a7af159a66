using BenchmarkDotNet.Attributes;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Noding;
using NetTopologySuite.Operation.Polygonize;
using PatternGen.Geometry;

namespace PatternGen.Bench;

/// <summary>Faces of circles: this library exactly, NetTopologySuite with each circle as 64 lines.</summary>
[MemoryDiagnoser]
public class ArrangementBench
{
    private Curve[] _curves = [];

    /// <summary>A rosette of 96 circles and its rim, or a grid of 100 × 100 circles.</summary>
    [Params("rosette", "grid")]
    public string Drawing { get; set; } = "";

    [GlobalSetup]
    public void Draw() =>
        _curves =
            Drawing == "grid"
                ? ArrangementBenchDrawing.Grid(100)
                : ArrangementBenchDrawing.Rosette(96);

    [Benchmark(Baseline = true)]
    public int PatternGen() => Arrangement.Of(_curves).Faces.Count;

    /// <summary>The quickest of its noders; it leaves points that arithmetic tells apart two.</summary>
    [Benchmark]
    public int NetTopologySuite()
    {
        var noder = new MCIndexNoder(new IntersectionAdder(new RobustLineIntersector()));
        noder.ComputeNodes([.. _curves.Select(Flat)]);
        var polygonizer = new Polygonizer();
        foreach (var piece in noder.GetNodedSubstrings())
            polygonizer.Add(new LineString(piece.Coordinates));
        return polygonizer.GetPolygons().Count;
    }

    private static ISegmentString Flat(Curve curve)
    {
        var ring = Enumerable
            .Range(0, 64)
            .Select(i => curve.Circle.Centre.Polar(curve.Circle.Radius, Angle.OfTurn(i / 64.0)))
            .Select(point => new Coordinate(point.X, point.Y))
            .ToList();
        return new NodedSegmentString([.. ring, ring[0]], null);
    }
}
