using PatternGen.Tests.Output;
using Boards = PatternGen.Tests.Output.Samples;

namespace PatternGen.Tests.Importing.Svg;

/// <summary>What our writer wrote comes back: the same contours, in place, within the accuracy that the import tells.</summary>
public sealed class SvgRoundTripSpecs
{
    public static TheoryData<string, For> Files =>
        new MatrixTheoryData<string, For>(
            ["rail", "rosette", "mixed", "board", "petals", "whirl"],
            [For.Machine, For.Viewing]
        );

    [Theory]
    [MemberData(nameof(Files))]
    public void Chips_come_back_as_they_were(string name, For purpose)
    {
        var pattern = PatternOf(name);
        var drawing = Read(pattern, purpose, SaveOptions.Default, "chips");
        Compare([.. pattern.Chips.Select(chip => chip.Outline)], drawing);
    }

    [Fact]
    public void Chips_written_by_reference_come_back_too()
    {
        var pattern = RepeatSamples.Rail;
        var drawing = Read(
            pattern,
            For.Machine,
            SaveOptions.Default.WithRepeats(Repeats.ByReference),
            "chips"
        );
        Compare([.. pattern.Chips.Select(chip => chip.Outline)], drawing);
    }

    [Fact]
    public void The_outline_of_the_wood_comes_back()
    {
        var board = Boards.Board();
        var drawing = Read(board, For.Machine, SaveOptions.Default, "stock");
        drawing.Contours.Count.ShouldBe(2);
        drawing.Outline().Area.ShouldBe(130 * 110 - Math.PI * 9, 500 * drawing.Accuracy);
    }

    [Fact]
    public void Layers_that_are_not_asked_for_stay_away()
    {
        var drawing = Read(Boards.Board(), For.Machine, SaveOptions.Default, "layout-lines");
        drawing.Contours.ShouldBeEmpty();
        drawing.Chains.ShouldHaveSingleItem().Length.ShouldBe(130, 1e-4);
    }

    [Fact]
    public void A_paper_sheet_can_be_read_whole()
    {
        var drawing = Read(Boards.Rail(200), For.Paper, SaveOptions.Default);
        drawing.Contours.ShouldNotBeEmpty();
        drawing.Unit.ShouldBe(1, 1e-6);
        drawing.Accuracy.ShouldBeLessThan(1e-4);
    }

    private static ImportedDrawing Read(
        Pattern pattern,
        For purpose,
        SaveOptions options,
        params string[] layers
    )
    {
        using var file = new MemoryStream();
        pattern.Save(file, FileFormat.Svg, purpose, options);
        file.Position = 0;
        var settings = layers.Length > 0 ? ImportSettings.Default.WithLayers(layers) : null;
        return PatternGen.Import.Drawing(file, FileFormat.Svg, settings);
    }

    /// <summary>The sheet has its own origin; all contours must lie as far from the original ones, in the same direction.</summary>
    private static void Compare(List<Contour> expected, ImportedDrawing drawing)
    {
        drawing.Contours.Count.ShouldBe(expected.Count);
        drawing.Notes.ShouldBeEmpty();
        // Of a metre 1e-4 mm, and half of the last of six decimals.
        drawing.Accuracy.ShouldBeLessThan(2e-4);
        var moved = Low(drawing.Contours) - Low(expected);
        var free = drawing.Contours.ToList();
        // Two corners that were read may each be off by the accuracy.
        var near = 2 * drawing.Accuracy + 2e-6;
        foreach (
            var contour in expected.Select(contour => contour.Transformed(Transform.Move(moved)))
        )
        {
            var back = free.MinBy(candidate => candidate.Centroid.DistanceTo(contour.Centroid))!;
            free.Remove(back);
            back.Area.ShouldBe(contour.Area, contour.Length * near);
            back.Count.ShouldBe(contour.Count);
            Farthest(contour, back).ShouldBeLessThan(near);
            Farthest(back, contour).ShouldBeLessThan(near);
        }
    }

    private static double Farthest(Contour from, Contour to) =>
        from
            .Segments.SelectMany(segment => new[] { segment.Start, segment.Middle })
            .Max(to.DistanceTo);

    private static Point Low(IEnumerable<Contour> contours)
    {
        var extents = contours
            .Select(contour => contour.Extents)
            .Aggregate((a, b) => a.Including(b));
        return extents.Min;
    }

    private static Pattern PatternOf(string name) =>
        name switch
        {
            "board" => Boards.Board(),
            "petals" => Rosette.Petals(12, 40).Carve(part => part.IsPetal),
            "whirl" => Rosette.Petals(6, 30).Carve(part => !part.IsPetal),
            _ => RepeatSamples.All[name],
        };
}
