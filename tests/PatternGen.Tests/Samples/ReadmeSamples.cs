namespace PatternGen.Tests.Samples;

/// <summary>The code of the README, run. What stands between the marks is what the README shows; a test compares them.</summary>
[Collection(nameof(AloneInTheProcess))]
public class ReadmeSamples
{
    [Fact]
    public void A_border_for_a_measured_rail()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        var border = Rail.Of(length: 742.5, width: 36)             // mm seen between the shoulders
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)   // ruled lines 2, 4, 4, 2 mm apart
            .EndMargins(6);                                        // whole repeats are the default

        border.Save("rail.svg");                                   // to look at
        border.Save("rail-print.svg", For.Paper);                  // true size, with a check bar
        border.Save("rail.dxf");                                   // for a machine: centre lines only
        Console.WriteLine(border.Fit);   // 91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike
        // </readme>
        // csharpier-ignore-end

        border
            .Fit.ToString()
            .ShouldBe("91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike");
        foreach (var file in (string[])["rail.svg", "rail-print.svg", "rail.dxf"])
            new FileInfo(file).Length.ShouldBePositive();
    }

    [Fact]
    public void Leaning_teeth_on_a_set_of_rails()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        // Leaning teeth, turned round at the middle, on rails that get one pitch.
        var borders = Rails.Of(742.5, 742.5, 418, 418).Wide(36).SamePitch()
            .Border(TriangleBand.Ruled(2, 5, 2).Leaning(0.8).WithLineCuts())
            .Fitted(fit => fit.EndMargins(6).TurnedAtMiddle());
        foreach (var border in borders)
            Console.WriteLine(border.Fit);

        // Each side once, for burning the lines; and a length read off an imperial rule.
        var lines = SaveOptions.Default.WithSharedSides(SharedSides.Once);
        Rail.Of(Inches.Parse("29 3/16"), 36).Border(TriangleBand.Ruled(2, 4, 4, 2)).Save("lines.dxf", lines);
        // </readme>
        // csharpier-ignore-end

        borders.ShouldAllBe(border => border.Fit.Ends == EndMatch.Alike);
        new FileInfo("lines.dxf").Length.ShouldBePositive();
    }
}
