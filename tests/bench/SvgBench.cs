using BenchmarkDotNet.Attributes;

namespace PatternGen.Bench;

/// <summary>
/// 100,000 placed chips of two lines and an arc, written to nowhere: this library, a plain XML writer, an object
/// model, and the limit that the numbers alone set.
/// </summary>
[MemoryDiagnoser]
public class SvgBench
{
    private const int Count = SvgBenchChips.Count;

    private readonly Pattern _pattern = Pattern
        .OfChips(SvgBenchChips.Outline)
        .Repeated(Count, SvgBenchChips.Pitch)
        .Moved(SvgBenchChips.Left, SvgBenchChips.Low);

    [Benchmark(Baseline = true)]
    public void PatternGen() => _pattern.Save(Stream.Null, FileFormat.Svg, For.Machine);

    [Benchmark]
    public void PatternGenForViewing() => _pattern.Save(Stream.Null, FileFormat.Svg, For.Viewing);

    [Benchmark]
    public void XmlWriter() => SvgBenchXml.Write(Stream.Null);

    [Benchmark]
    public void SvgNet() => SvgBenchObjects.Write(Stream.Null);

    [Benchmark]
    public void Limit() => SvgBenchLimit.Write(Stream.Null);
}
