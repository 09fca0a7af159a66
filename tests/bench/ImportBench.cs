using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;

namespace PatternGen.Bench;

/// <summary>
/// A DXF of 50 MB, imported as a stream: 91,500 loose outlines of two lines and a polyline each, and as many circles. Beside
/// it, the least that a reader which takes lines one by one must do. <c>tests/readers/time_ezdxf.py</c> times ezdxf on such a
/// file.
/// </summary>
[MemoryDiagnoser]
public class ImportBench
{
    private const int Outlines = 91_500;
    private readonly string _path = Path.Combine(Path.GetTempPath(), "patterngen-import-bench.dxf");

    [GlobalSetup]
    public void Write() => ImportBenchFile.Write(_path, Outlines);

    [GlobalCleanup]
    public void Delete() => File.Delete(_path);

    [Benchmark(Baseline = true)]
    public ImportedDrawing PatternGen() => Import.Drawing(_path);

    /// <summary>What reading costs without the curves and their joining: nothing lies on the layer asked for.</summary>
    [Benchmark]
    public ImportedDrawing NoLayer() =>
        Import.Drawing(_path, ImportSettings.Default.WithLayers("0"));

    /// <summary>The lines as texts, and those that are numbers read by the framework; nothing is made of them.</summary>
    [Benchmark]
    public double Lines()
    {
        using var reader = new StreamReader(_path, Encoding.ASCII);
        double sum = 0;
        while (reader.ReadLine() is { } code && reader.ReadLine() is { } value)
            if (int.Parse(code, CultureInfo.InvariantCulture) is >= 10 and < 60)
                sum += double.Parse(value, CultureInfo.InvariantCulture);
        return sum;
    }
}
