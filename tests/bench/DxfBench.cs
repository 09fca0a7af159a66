using BenchmarkDotNet.Attributes;

namespace PatternGen.Bench;

/// <summary>
/// 100,000 placed chips of two lines and an arc, written to nowhere as DXF: this library, the same records through a
/// StreamWriter, and the limit that the numbers alone set.
/// </summary>
[MemoryDiagnoser]
public class DxfBench
{
    private readonly Pattern _pattern = Pattern
        .OfChips(SvgBenchChips.Outline)
        .Repeated(SvgBenchChips.Count, SvgBenchChips.Pitch)
        .Moved(SvgBenchChips.Left, SvgBenchChips.Low);

    [Benchmark(Baseline = true)]
    public void PatternGen() => _pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine);

    [Benchmark]
    public void PatternGenR12() =>
        _pattern.Save(
            Stream.Null,
            FileFormat.Dxf,
            For.Machine,
            SaveOptions.Default.WithDxfVersion(DxfVersion.R12)
        );

    [Benchmark]
    public void TextWriter() => DxfBenchText.Write(Stream.Null);

    [Benchmark]
    public void Limit() => DxfBenchLimit.Write(Stream.Null);

    /// <summary>Millimetres of side that the chips have in common, which holds all sides in memory.</summary>
    [Benchmark]
    public double SharedSides() => ChipSides.SharedLength(_pattern);
}
