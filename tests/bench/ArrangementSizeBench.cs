using BenchmarkDotNet.Attributes;
using PatternGen.Geometry;

namespace PatternGen.Bench;

/// <summary>How the time grows with the size of a drawing.</summary>
[MemoryDiagnoser]
public class ArrangementSizeBench
{
    private Curve[] _curves = [];

    /// <summary>Circles along each side of a grid.</summary>
    [Params(25, 50, 100, 200)]
    public int Side { get; set; }

    [GlobalSetup]
    public void Draw() => _curves = ArrangementBenchDrawing.Grid(Side);

    [Benchmark]
    public int PatternGen() => Arrangement.Of(_curves).Faces.Count;
}
