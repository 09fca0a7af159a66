using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Layout;

/// <summary>What every bent pattern must keep, and paths to bend along.</summary>
internal static partial class BentChecks
{
    /// <summary>tan(90° / 4): the bulge of a quarter circle.</summary>
    internal static readonly double Quarter = Math.Tan(Math.PI / 8);

    /// <summary>Points this near to each other, in mm, are meant to be one.</summary>
    private const double Meant = 1e-7;

    internal static TheoryData<string> BandNames => [.. BandSampler.All.Select(band => band.Name)];

    internal static TriangleBand Band(string name) =>
        BandSampler.All.Single(band => band.Name == name).Band;

    /// <summary>A counter-clockwise rectangle from the origin with rounded corners; its first side lies below.</summary>
    internal static Contour Rounded(double width, double height, double radius) =>
        new(
            new Vertex(new(radius, 0)),
            new Vertex(new(width - radius, 0), Quarter),
            new Vertex(new(width, radius)),
            new Vertex(new(width, height - radius), Quarter),
            new Vertex(new(width - radius, height)),
            new Vertex(new(radius, height), Quarter),
            new Vertex(new(0, height - radius)),
            new Vertex(new(0, radius), Quarter)
        );

    /// <summary>A path like an S: a line, a half circle to the left, one to the right, a line.</summary>
    internal static Chain Ess(double radius) =>
        new(
            new Vertex(new(0, 0)),
            new Vertex(new(40, 0), 1),
            new Vertex(new(40, 2 * radius), -1),
            new Vertex(new(40, 4 * radius)),
            new Vertex(new(90, 4 * radius))
        );

    internal static void ShouldBeSound(this Pattern pattern)
    {
        foreach (var chip in pattern.Chips)
        {
            chip.Outline.SignedArea.ShouldBeGreaterThan(0, chip.ToString());
            chip.Outline.Validate().IsValid.ShouldBeTrue(chip.ToString());
        }
        pattern
            .Inspect(Knife.Held(65), Stock.Thick(20))
            .Findings.Where(finding => finding.Kind == FindingKind.ChipsOverlap)
            .ShouldBeEmpty();
        pattern.ShouldHaveNoSeams();
    }

    /// <summary>Corners that are meant to be one point are one, to the last bit.</summary>
    internal static void ShouldHaveNoSeams(this Pattern pattern)
    {
        Point[] corners =
        [
            .. pattern
                .Chips.SelectMany(chip => chip.Outline.Vertices)
                .Select(corner => corner.Point)
                .OrderBy(corner => corner.X),
        ];
        for (var i = 0; i < corners.Length; i++)
        for (var j = i + 1; j < corners.Length && corners[j].X - corners[i].X < Meant; j++)
            if (corners[i].DistanceTo(corners[j]) < Meant)
                corners[j].ShouldBe(corners[i]);
    }

    /// <summary>The corners of all chips, rounded so that those of mirror images compare.</summary>
    internal static (double X, double Y)[] Corners(Pattern pattern) =>
        [
            .. pattern
                .Chips.SelectMany(chip => chip.Outline.Vertices)
                .Select(corner =>
                    (Math.Round(corner.Point.X, 6) + 0, Math.Round(corner.Point.Y, 6) + 0)
                )
                .Order(),
        ];

    /// <summary>Points along a run, corners included.</summary>
    internal static IEnumerable<Point> Samples(SegmentRun run, int perSide = 12) =>
        run.Segments.SelectMany(side =>
            Enumerable.Range(0, perSide + 1).Select(i => side.PointAt(side.Length * i / perSide))
        );

    /// <summary>The number in the first remedy that has the given words before it.</summary>
    internal static double Number(PatternException refusal, string before) =>
        double.Parse(
            Figure()
                .Match(
                    refusal.Remedies.First(remedy =>
                        remedy.Contains(before, StringComparison.Ordinal)
                    )
                )
                .Value,
            CultureInfo.InvariantCulture
        );

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Figure();
}
