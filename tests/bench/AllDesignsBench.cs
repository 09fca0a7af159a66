using BenchmarkDotNet.Attributes;

namespace PatternGen.Bench;

/// <summary>
/// A million designs, none drawn: of a circle and six equal ones round it, with nothing of its symmetry kept, and of as
/// many circles as fill the bits of a design. The baseline is the same choices without looking for those that are alike.
/// </summary>
[MemoryDiagnoser]
public class AllDesignsBench
{
    private const int Count = 1_000_000;

    private readonly DesignSet _six = Petals(6).AllDesigns(Symmetry.None);
    private readonly DesignSet _twelve = Petals(12).AllDesigns(Symmetry.None);

    [Benchmark(Baseline = true, OperationsPerInvoke = Count)]
    public uint Choices()
    {
        // The next larger number with as many bits (Gosper's way).
        var mask = (1u << 7) - 1;
        for (var i = 0; i < Count; i++)
        {
            var lowest = mask & (uint)-(int)mask;
            var carried = mask + lowest;
            mask = ((mask ^ carried) >> 2) / lowest | carried;
        }
        return mask;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public int OfSevenCircles() => _six.Take(Count).Sum(design => design.OrbitCount);

    [Benchmark(OperationsPerInvoke = Count)]
    public int OfThirteenCircles() => _twelve.Take(Count).Sum(design => design.OrbitCount);

    [Benchmark(OperationsPerInvoke = Count)]
    public int UpToReversal() =>
        _six.UpToReversal().WithCarvedShare(0.3, 0.7).Take(Count).Sum(design => design.OrbitCount);

    private static CompassDrawing Petals(int n) =>
        CompassDrawing.Of(pencil =>
        {
            pencil.SetRadius(40);
            var rim = pencil.Circle(pencil.Mark(0, 0));
            var tips = pencil.DivideCircle(rim, n);
            pencil.SetRadius(40);
            pencil.Circles(tips);
        });
}
