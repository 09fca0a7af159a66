using System.Globalization;
using System.Text.RegularExpressions;
using PatternGen.Tests.Output;

namespace PatternGen.Tests.Importing.Dxf;

/// <summary>A drawing that GDAL wrote from lines in well-known text, and what GDAL reads in it.</summary>
public sealed partial class GdalSpecs : IDisposable
{
    private static readonly string Source = Repository.File("tests", "data", "dxf", "gdal.csv");

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("patterngen-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void I_can_import_what_gdal_wrote_once() =>
        Compare(
            Import.Drawing(
                Repository.File("tests", "data", "dxf", "gdal.dxf"),
                ImportSettings.Default.WithUnit(1)
            ),
            File.ReadAllText(Source)
        );

    [Fact]
    public void I_can_import_what_gdal_writes_as_gdal_reads_it()
    {
        var path = Path.Combine(_folder.FullName, "gdal.dxf");
        string[] options = ["-oo", "GEOM_POSSIBLE_NAMES=WKT", "-oo", "KEEP_GEOM_COLUMNS=NO"];
        OutsideReader.Run("gdal-bin", "ogr2ogr", ["-f", "DXF", path, Source, .. options]);

        Compare(
            Import.Drawing(path, ImportSettings.Default.WithUnit(1)),
            OutsideReader.Run("gdal-bin", "ogrinfo", "-al", "-q", path)
        );
    }

    private static void Compare(ImportedDrawing drawing, string text)
    {
        Point[][] lines =
        [
            .. LineText()
                .Matches(text)
                .Select(match =>
                    match
                        .Groups[1]
                        .Value.Split(',')
                        .Select(corner => corner.Split(' '))
                        .Select(xyz => new Point(Number(xyz[0]), Number(xyz[1])))
                        .ToArray()
                ),
        ];
        lines.Length.ShouldBe(6);
        SegmentRun[] runs = [.. drawing.Contours, .. drawing.Chains];
        runs.Sum(run => run.Length)
            .ShouldBe(
                lines.Sum(line => line.Zip(line.Skip(1), (a, b) => a.DistanceTo(b)).Sum()),
                1e-9
            );
        foreach (var corner in lines.SelectMany(line => line))
            runs.Min(run => run.DistanceTo(corner)).ShouldBeLessThan(1e-9);
        // A ring by itself, a rectangle of two halves and a triangle of two parts; the line at a height stays open.
        drawing.Contours.Count.ShouldBe(3);
        drawing.Chains.Count.ShouldBe(1);
        drawing
            .Notes.Select(note => note.What)
            .ShouldBe(["drawn at a height, laid flat", "point", "hatching"]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>The corners of each line, also of several lines in one geometry; areas have two brackets after their name.</summary>
    [GeneratedRegex(@"(?:LINESTRING(?: Z)? \(|MULTILINESTRING \(\(|(?<=\)),\()([-\d., ]+)(?=\))")]
    private static partial Regex LineText();
}
