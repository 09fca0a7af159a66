using System.Text.Json;
using PatternGen.Tests.Output;

namespace PatternGen.Tests.Importing.Dxf;

/// <summary>Drawings that ezdxf wrote, beside the points and lengths that it says its curves have.</summary>
/// <remarks>tests/readers/write_dxf.py writes both; tests/data/dxf keeps what it wrote once.</remarks>
public sealed class EzdxfSpecs : IDisposable
{
    /// <summary>ezdxf's points are rounded to 1e-9; both sides calculate in doubles.</summary>
    private const double Rounding = 1e-7;

    /// <summary>ezdxf adds up chords that rise at most 1e-4: an arc of radius R is longer by 1e-4 / (3 R) of its length, and no radius here is much below 1.</summary>
    private const double Chords = 4e-5;

    /// <summary>Far finer than by default, so that lengths tell something.</summary>
    private const double Accuracy = 1e-4;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("patterngen-");

    public void Dispose() => _folder.Delete(recursive: true);

    public static TheoryData<string> Names => ["lines", "curves", "blocks", "behind"];

    [Theory]
    [MemberData(nameof(Names))]
    public void I_can_import_what_ezdxf_wrote_once(string name) =>
        Compare(Repository.File("tests", "data", "dxf"), name);

    [Theory]
    [MemberData(nameof(Names))]
    public void I_can_import_what_ezdxf_writes(string name)
    {
        Write(name);
        Compare(_folder.FullName, name);
    }

    [Fact]
    public void Inches_of_ezdxf_come_in_as_millimetres()
    {
        var drawing = Import.Drawing(Repository.File("tests", "data", "dxf", "inches.dxf"));

        drawing.Unit.ShouldBe(25.4);
        drawing.Notes.ShouldBeEmpty();
        // 8 × 4.5 in and a lid of bulge 0.2 over 8 in: a sagitta of 0.8 in.
        drawing.Extents!.Value.Width.ShouldBe(8 * 25.4, 1e-9);
        drawing.Extents!.Value.Height.ShouldBe((4.5 + 0.8) * 25.4, 1e-9);
    }

    private void Write(string name) =>
        OutsideReader.Run(
            "python3-ezdxf",
            "/usr/bin/python3",
            "-B",
            Repository.File("tests", "readers", "write_dxf.py"),
            name,
            _folder.FullName
        );

    private static void Compare(string folder, string name)
    {
        using var seen = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, $"{name}.json")));
        var drawing = Import.Drawing(
            Path.Combine(folder, $"{name}.dxf"),
            ImportSettings.Default.WithAccuracy(Accuracy)
        );
        SegmentRun[] runs = [.. drawing.Contours, .. drawing.Chains];
        var length = seen.RootElement.GetProperty("length").GetDouble();
        var count = seen.RootElement.GetProperty("curves").GetArrayLength();

        // A curve at a distance is longer by that times the angle that it turns through, two turns at most here.
        runs.Sum(run => run.Length)
            .ShouldBe(length, Chords * length + count * 2 * Math.Tau * Accuracy);
        foreach (var curve in seen.RootElement.GetProperty("curves").EnumerateArray())
        foreach (var point in curve.EnumerateArray())
        {
            var place = new Point(point[0].GetDouble(), point[1].GetDouble());
            runs.Min(run => run.DistanceTo(place)).ShouldBeLessThan(drawing.Accuracy + Rounding);
        }
    }
}
