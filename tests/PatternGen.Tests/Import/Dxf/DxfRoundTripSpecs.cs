using PatternGen.Tests.Output.Dxf;

namespace PatternGen.Tests.Importing.Dxf;

public sealed class DxfRoundTripSpecs
{
    /// <summary>
    /// Coordinates are written to 1e-6, which moves a corner by at most 0.71e-6, and bulges so that an arc is no farther off
    /// than that.
    /// </summary>
    private const double Rounding = 2e-6;

    public static TheoryData<DxfVersion, Repeats> Ways =>
        new()
        {
            { DxfVersion.R2000, Repeats.InFull },
            { DxfVersion.R2000, Repeats.ByReference },
            { DxfVersion.R12, Repeats.InFull },
            { DxfVersion.R12, Repeats.ByReference },
        };

    [Theory]
    [MemberData(nameof(Ways))]
    public void I_get_back_the_contours_that_I_saved(DxfVersion version, Repeats repeats)
    {
        var row = Pattern.OfChips(DxfSamples.Triangle).Repeated(6, 9);
        var pattern = Pattern.Combine(
            row,
            row.MirroredTopBottom(-3),
            row.Turned(30).Moved(0, 20),
            row.MirroredLeftRight().Scaled(1.7).Moved(-10, 15),
            Pattern.OfChips(new Circle(new(50, 60), 5).ToContour()),
            Pattern.OfChips(
                new Region(
                    new Circle(new(78, 64), 6).ToContour(),
                    DxfSamples.Triangle.Transformed(Transform.Move(74, 62))
                ).Parts
            )
        );

        var drawing = DxfFile.Import(
            DxfSamples.Write(
                pattern,
                SaveOptions.Default.WithDxfVersion(version).WithRepeats(repeats)
            ),
            ImportSettings.Default.WithLayers("CHIPS")
        );

        drawing.Chains.ShouldBeEmpty();
        Contour[] saved = [.. pattern.Chips.SelectMany(chip => chip.Holes.Prepend(chip.Outline))];
        drawing.Contours.Count.ShouldBe(saved.Length);
        foreach (var contour in saved)
            drawing.Contours.Count(read => AreSame(read, contour)).ShouldBe(1);
    }

    /// <summary>Whether two rings run along each other: as long, and each corner and middle of one on the other.</summary>
    private static bool AreSame(Contour read, Contour saved) =>
        Math.Abs(read.Length - saved.Length) < saved.Count * 2 * Rounding + Rounding
        && saved.Segments.All(side => IsOn(read, side.Start) && IsOn(read, side.Middle))
        && read.Segments.All(side => IsOn(saved, side.Start) && IsOn(saved, side.Middle));

    private static bool IsOn(Contour contour, Point point) => contour.DistanceTo(point) < Rounding;
}
