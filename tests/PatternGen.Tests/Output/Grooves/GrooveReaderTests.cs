using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Output.Grooves;

/// <summary>What readers that the project did not write say about files of groove paths.</summary>
public sealed class GrooveReaderTests : IDisposable
{
    private const string Audit = """
        import sys, ezdxf
        drawing = ezdxf.readfile(sys.argv[1])
        audit = drawing.audit()
        paths = [e for e in drawing.modelspace() if e.dxf.layer == "GROOVES"]
        assert all(e.is_3d_polyline for e in paths)
        places = [v.dxf.location for e in paths for v in e.vertices]
        print(drawing.dxfversion, len(audit.errors), len(audit.fixes), len(paths), min(p.z for p in places), max(p.z for p in places))
        """;

    private readonly string _path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.dxf");

    public void Dispose() => File.Delete(_path);

    [Theory]
    [MemberData(nameof(GrooveDxfSpecs.Versions), MemberType = typeof(GrooveDxfSpecs))]
    public void Ezdxf_finds_nothing_to_mend_and_the_same_depths(DxfVersion version)
    {
        var paths = Save(version);

        // The system's own Python, for which the package is installed.
        var report = OutsideReader
            .Run("python3-ezdxf", "/usr/bin/python3", "-c", Audit, _path)
            .Split();

        report[0].ShouldBe(version == DxfVersion.R12 ? "AC1009" : "AC1015");
        report[1..4].ShouldBe(["0", "0", $"{paths.PathCount}"]);
        Number(report[4]).ShouldBe(-paths.Deepest, 4e-6);
        Number(report[5]).ShouldBe(0);
    }

    [Theory]
    [MemberData(nameof(GrooveDxfSpecs.Versions), MemberType = typeof(GrooveDxfSpecs))]
    public void Gdal_reads_all_paths_with_their_depths(DxfVersion version)
    {
        var paths = Save(version);

        var report = OutsideReader.Run(
            "gdal-bin",
            "ogrinfo",
            "-al",
            "-where",
            "Layer='GROOVES'",
            _path
        );

        var lines = Regex.Matches(report, @"LINESTRING Z? ?\(([^()]+)\)");
        lines.Count.ShouldBe((int)paths.PathCount);
        var depths = lines
            .SelectMany(line => line.Groups[1].Value.Split(','))
            .Select(place => place.Split(' '))
            .Where(numbers => numbers.Length == 3)
            .Select(numbers => Number(numbers[2]));
        depths.Min().ShouldBe(-paths.Deepest, 4e-6);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private GroovePaths Save(DxfVersion version)
    {
        var paths = GrooveDxfSpecs.Everything();
        paths.Save(_path, SaveOptions.Default.WithDxfVersion(version));
        return paths;
    }
}
