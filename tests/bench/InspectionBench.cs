using BenchmarkDotNet.Attributes;
using PatternGen.Geometry;

namespace PatternGen.Bench;

/// <summary>
/// Chips of 20 shapes, straight and curved, inspected with a knife: as rows of one motif, whose repeats lie alike, or each
/// turned by an angle of its own, so that hardly two pairs of neighbours do.
/// </summary>
[MemoryDiagnoser]
public class InspectionBench
{
    private const int Shapes = 20;
    private const double Pitch = 12;

    /// <summary>So far apart, in mm, that some of the turned chips come too near each other, and the boxes of most touch.</summary>
    private const double Spacing = 5.8;

    private Pattern _pattern = Pattern.Empty;

    /// <summary>Number of chips.</summary>
    [Params(50_000, 100_000, 200_000)]
    public int Chips { get; set; }

    /// <summary>How they lie.</summary>
    [Params("alike", "turned")]
    public string Lying { get; set; } = "";

    [GlobalSetup]
    public void Draw() => _pattern = Lying == "alike" ? Alike(Chips) : Turned(Chips);

    [Benchmark]
    public int PatternGen() => _pattern.Inspect(Knife.Held(), Stock.Thick(20)).Findings.Count;

    /// <summary>Rows of 1,000 chips: pairs that share a side, with ridges between the pairs.</summary>
    internal static Pattern Alike(int count)
    {
        var motif = Pattern.OfChips(
            Enumerable
                .Range(0, Shapes)
                .Select(i => Shape(i).Transformed(Transform.Move(Pitch * i, 0)))
        );
        var row = motif.Repeated(1000 / Shapes, Shapes * Pitch);
        return Pattern.Combine(Enumerable.Range(0, count / 1000).Select(i => row.Moved(0, 6 * i)));
    }

    /// <summary>The same shapes on the same places, each about its own middle.</summary>
    internal static Pattern Turned(int count)
    {
        Pattern[] shapes = [.. Enumerable.Range(0, Shapes).Select(i => Pattern.OfChips(Shape(i)))];
        var columns = (int)Math.Sqrt(count);
        return Pattern.Combine(
            Enumerable
                .Range(0, count)
                .Select(i =>
                    shapes[i % Shapes]
                        .Turned(i * 137.508)
                        .Moved(i % columns * Spacing, i / columns * Spacing)
                )
        );
    }

    /// <summary>Triangles with straight, bulging and hollow sides, and two-sided chips; about 4 mm wide.</summary>
    private static Contour Shape(int i)
    {
        var size = 1 + i * 0.01;
        var bulge = i % 5 * 0.1 - 0.1;
        return i % 4 == 3
            ? new(new Vertex(-2.4 * size, 0, 0.5), new Vertex(2.4 * size, 0, 0.5))
            : new(
                new Vertex(-2 * size, -1.5 * size, bulge),
                new Vertex(2 * size, -1.5 * size, i % 2 * bulge),
                new Vertex(0, 2 * size)
            );
    }
}
