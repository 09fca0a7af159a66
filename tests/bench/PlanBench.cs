using BenchmarkDotNet.Attributes;

namespace PatternGen.Bench;

/// <summary>How the time of a carving plan grows with the number of chips: rails of 182 triangles each, one above the other.</summary>
[MemoryDiagnoser]
public class PlanBench
{
    private Pattern _rails = Pattern.Empty;

    /// <summary>Number of rails: 10,010 to 40,040 chips.</summary>
    [Params(55, 110, 220)]
    public int Rails { get; set; }

    [GlobalSetup]
    public void Draw()
    {
        var rail = Rail.Of(742.5, 36)
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6);
        _rails = Pattern.Combine(
            Enumerable.Range(0, Rails).Select(i => (Pattern)rail.Moved(0, 36.0 * i))
        );
    }

    [Benchmark(Baseline = true)]
    public int ByChip() => _rails.Plan(Knife.Held(65), Stock.Thick(12)).BoardTurns;

    [Benchmark]
    public int ByPasses() => _rails.Plan(Knife.Held(65), Stock.Thick(12)).ByPasses().BoardTurns;

    [Benchmark]
    public void Json() =>
        _rails
            .Plan(Knife.Held(65), Stock.Thick(12))
            .Schedule()
            .Save(Stream.Null, ScheduleFormat.Json);
}
