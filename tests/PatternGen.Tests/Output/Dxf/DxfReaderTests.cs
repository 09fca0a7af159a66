using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Output.Dxf;

/// <summary>What readers that the project did not write say about its files.</summary>
public sealed class DxfReaderTests : IDisposable
{
    private const string Audit = """
        import sys, ezdxf
        drawing = ezdxf.readfile(sys.argv[1])
        audit = drawing.audit()
        print(drawing.dxfversion, len(audit.errors), len(audit.fixes), len(drawing.modelspace()))
        """;

    private readonly string _path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.dxf");

    public void Dispose() => File.Delete(_path);

    [Theory]
    [MemberData(nameof(DxfWriterTests.Ways), MemberType = typeof(DxfWriterTests))]
    public void Ezdxf_finds_nothing_to_mend(DxfVersion version, SharedSides sides)
    {
        var count = Save(version, sides).Shapes.Count;

        // The system's own Python, for which the package is installed.
        var report = OutsideReader.Run("python3-ezdxf", "/usr/bin/python3", "-c", Audit, _path);

        var name = version == DxfVersion.R12 ? "AC1009" : "AC1015";
        report.Trim().ShouldBe($"{name} 0 0 {count}");
    }

    [Theory]
    [MemberData(nameof(DxfWriterTests.Ways), MemberType = typeof(DxfWriterTests))]
    public void Gdal_reads_all_entities_at_their_place(DxfVersion version, SharedSides sides)
    {
        var count = Save(version, sides).Shapes.Count;

        var report = OutsideReader.Run("gdal-bin", "ogrinfo", "-al", "-so", _path);

        Regex.Match(report, @"Feature Count: (\d+)").Groups[1].Value.ShouldBe($"{count}");
        var extent = Regex.Match(report, @"Extent: \((.+), (.+)\) - \((.+), (.+)\)").Groups;
        var numbers = extent
            .Values.Skip(1)
            .Select(group => double.Parse(group.Value, CultureInfo.InvariantCulture))
            .ToList();
        var expected = DxfSamples.Everything().Extents!.Value;
        numbers[0].ShouldBe(expected.Min.X, 1e-4);
        numbers[1].ShouldBe(expected.Min.Y, 1e-4);
        numbers[2].ShouldBe(expected.Max.X, 1e-4);
        numbers[3].ShouldBe(expected.Max.Y, 1e-4);
    }

    private DxfDocument Save(DxfVersion version, SharedSides sides)
    {
        var options = SaveOptions.Default.WithDxfVersion(version).WithSharedSides(sides);
        DxfSamples.Everything().Save(_path, options);
        return DxfDocument.Parse(File.ReadAllBytes(_path));
    }
}
