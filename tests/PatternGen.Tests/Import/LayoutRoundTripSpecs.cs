using PatternGen.Tests.Importing.Recipes;

namespace PatternGen.Tests.Importing;

/// <summary>The chips of every layout and free form come back from the files that we write.</summary>
public sealed class LayoutRoundTripSpecs
{
    /// <summary>Files carry six decimals; a corner moves by at most √2 / 2 of the last one, and so does the middle of an arc.</summary>
    private const double Rounding = 2e-6;

    /// <summary>Arcs that rise less than this from their chord, in mm, are written as lines: a common limit of machines.</summary>
    private const double Flat = 0.0005;

    public static TheoryData<string, FileFormat> Files =>
        new MatrixTheoryData<string, FileFormat>(
            LayoutSamples.All.Keys,
            [FileFormat.Svg, FileFormat.Dxf]
        );

    [Theory]
    [MemberData(nameof(Files))]
    public void Chips_come_back_within_the_accuracy_that_is_told(string name, FileFormat format)
    {
        var pattern = LayoutSamples.All[name];
        // Chips that lie on each other are drawn once.
        Contour[] saved =
        [
            .. pattern
                .Chips.SelectMany(chip => chip.Holes.Prepend(chip.Outline))
                .DistinctBy(ring => (Rounded(ring.Centroid), Math.Round(ring.Area, 4))),
        ];
        Assert.SkipWhen(saved.Length == 0, "It has no chips.");

        var drawing = Read(pattern, format);

        drawing.Chains.ShouldBeEmpty();
        drawing.Contours.Count.ShouldBe(saved.Length);
        // A metre of an SVG is kept to 1e-4 mm, as the library says.
        drawing.Accuracy.ShouldBeLessThan(2e-4);
        // A sheet has an origin of its own, which two corners tell that may each be off.
        var moved = Low(drawing.Contours) - Low(saved);
        var isFlat = saved.Any(ring => ring.Segments.Any(side => Rise(side) is > 0 and < Flat));
        var near = 2 * drawing.Accuracy + Rounding + (isFlat ? Flat : 0);
        if (format == FileFormat.Dxf)
            moved.Length.ShouldBeLessThan(Rounding);
        var free = drawing.Contours.Select(ring => (ring, ring.Centroid, ring.Area)).ToList();
        foreach (var ring in saved.Select(ring => ring.Transformed(Transform.Move(moved))))
        {
            var (centroid, area) = (ring.Centroid, ring.Area);
            var back = free.MinBy(other =>
                other.Centroid.DistanceTo(centroid) + Math.Abs(other.Area - area) / ring.Length
            );
            free.Remove(back);
            Farthest(ring, back.ring).ShouldBeLessThan(near);
            Farthest(back.ring, ring).ShouldBeLessThan(near);
        }
    }

    private static ImportedDrawing Read(Pattern pattern, FileFormat format)
    {
        using var file = new MemoryStream();
        pattern.Save(file, format, For.Machine);
        file.Position = 0;
        return PatternGen.Import.Drawing(file, format, ImportSettings.Default.WithLayers("chips"));
    }

    private static (double, double) Rounded(Point point) =>
        (Math.Round(point.X, 4), Math.Round(point.Y, 4));

    private static double Rise(Segment side) => Math.Abs(side.Bulge) * side.Chord.Length / 2;

    private static double Farthest(Contour from, Contour to) =>
        from
            .Segments.SelectMany(segment => new[] { segment.Start, segment.Middle })
            .Max(to.DistanceTo);

    private static Point Low(IEnumerable<Contour> contours) =>
        contours.Select(contour => contour.Extents).Aggregate((a, b) => a.Including(b)).Min;
}
