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

    /// <summary>It draws arcs as chords of 4°, which rise up to 0.0025 mm on a circle of 4 mm.</summary>
    private const double GdalArc = 0.005;

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

    [Theory]
    [MemberData(nameof(DxfRepeatsTests.Names), MemberType = typeof(DxfRepeatsTests))]
    public void Ezdxf_finds_nothing_to_mend_in_blocks(string name)
    {
        SaveByReference(name);
        var count = DxfDocument.Parse(File.ReadAllBytes(_path)).Entities.Count();

        var report = OutsideReader.Run("python3-ezdxf", "/usr/bin/python3", "-c", Audit, _path);

        report.Trim().ShouldBe($"AC1015 0 0 {count}");
    }

    /// <summary>It resolves references as it reads.</summary>
    [Theory]
    [MemberData(nameof(DxfRepeatsTests.Names), MemberType = typeof(DxfRepeatsTests))]
    public void Gdal_finds_the_chips_of_blocks_where_they_are_in_full(string name)
    {
        RepeatSamples.All[name].Save(_path);
        var inFull = GdalRings();
        SaveByReference(name);

        var rings = GdalRings();

        rings.Count.ShouldBe(inFull.Count);
        foreach (var (ring, expected) in rings.Zip(inFull))
        {
            ring.Centre.DistanceTo(expected.Centre).ShouldBeLessThan(GdalArc);
            (ring.Max - expected.Max).Length.ShouldBeLessThan(GdalArc);
        }
    }

    private void SaveByReference(string name) =>
        RepeatSamples.All[name].Save(_path, SaveOptions.Default.WithRepeats(Repeats.ByReference));

    /// <summary>Extents of each chip's rings as GDAL draws them, in the order of the file.</summary>
    private List<Extents> GdalRings()
    {
        var report = OutsideReader.Run(
            "gdal-bin",
            "ogrinfo",
            "-al",
            "-where",
            "Layer='CHIPS'",
            _path
        );
        return
        [
            .. Regex
                .Matches(report, "LINESTRING.*")
                // What a block holds is one feature of several lines.
                .SelectMany(feature => Regex.Matches(feature.Value, @"\(([^()]+)\)"))
                .Select(line => line.Groups[1].Value.Split(',').Select(Corner))
                .Select(corners => Contour.Polygon(corners).Extents),
        ];
    }

    private static Point Corner(string text)
    {
        var numbers = text.Split(' ');
        return new(Number(numbers[0]), Number(numbers[1]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private DxfDocument Save(DxfVersion version, SharedSides sides)
    {
        var options = SaveOptions.Default.WithDxfVersion(version).WithSharedSides(sides);
        DxfSamples.Everything().Save(_path, options);
        return DxfDocument.Parse(File.ReadAllBytes(_path));
    }
}
