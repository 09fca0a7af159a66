namespace PatternGen.Tests.Carving;

/// <summary>The bands and rosettes to begin with, and the samples of the README: what is found of them, and nothing else.</summary>
public class SampleInspectionSpecs
{
    /// <summary>Bands with wide chips, which a knife at 65 degrees cuts deeper than 4 mm.</summary>
    private static readonly string[] DeepBands = ["Ridge zigzag", "Curved ridges", "Petal row"];

    [Fact]
    public void Every_band_of_the_sampler_can_be_carved_and_three_are_deep()
    {
        foreach (var band in BandSampler.All)
        {
            var report = Rail.Of(418, 40)
                .Border(band.Band, 8)
                .EndMargins(6)
                .Inspect(Knife.Held(), Stock.Thick(12));

            report.IsCarvable.ShouldBeTrue(band.Name);
            report
                .Findings.Select(finding => finding.Kind)
                .Distinct()
                .ShouldBe(
                    DeepBands.Contains(band.Name) ? [FindingKind.OverComfortableDepth] : [],
                    band.Name
                );
        }
    }

    [Fact]
    public void Deep_bands_are_fine_with_a_knife_that_goes_no_deeper_than_wanted()
    {
        foreach (var band in BandSampler.All)
            Rail.Of(418, 40)
                .Border(band.Band, 8)
                .EndMargins(6)
                .Inspect(Knife.Held().NoDeeperThan(4), Stock.Thick(12))
                .Findings.ShouldAllBe(finding => finding.Kind == FindingKind.WallsFlattened);
    }

    [Fact]
    public void The_rails_of_the_README_can_be_carved()
    {
        var knife = Knife.Held(degrees: 65);
        var stock = Stock.Thick(12).GrainAlong(degrees: 0);
        var borders = Rails
            .Of(742.5, 742.5, 418, 418)
            .Wide(36)
            .SamePitch()
            .Border(TriangleBand.Ruled(2, 5, 2).Leaning(0.8).WithLineCuts(), 6)
            .Fitted(fit => fit.EndMargins(6).TurnedAtMiddle());

        // 5 mm high and 8 long: 1.98 mm from the outline at most, 4.24 mm deep.
        foreach (var border in borders)
            border.Inspect(knife, stock).Only(FindingKind.OverComfortableDepth);
        Rail.Of(742.5, 36)
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6)
            .Inspect(knife, stock)
            .ShouldBeClear();
    }

    [Fact]
    public void Rosettes_of_80_mm_are_deep_and_two_of_them_end_sharply()
    {
        // 80 mm across is large: in thick wood, with walls as flat as they may be, what else is found is of the drawing.
        foreach (var rosette in RosetteSampler.All)
        {
            var report = rosette.Carved.Inspect(Knife.Held().NoDeeperThan(4), Stock.Thick(40));

            report.IsCarvable.ShouldBeTrue(rosette.Name);
            var ends = rosette.Name is "Touching circles" or "Whirl in a square"
                ? (FindingKind[])[FindingKind.TipTooSharp, FindingKind.ShortGrain]
                : [];
            FindingKind[] known =
            [
                FindingKind.WallsFlattened,
                FindingKind.OverComfortableDepth,
                .. rosette.Name == "Ring of petals" ? [FindingKind.RidgeTooThin] : ends,
            ];
            report.Findings.ShouldAllBe(finding => known.Contains(finding.Kind), rosette.Name);
        }
    }

    [Fact]
    public void Twelve_petals_of_80_mm_can_be_carved_but_are_deep()
    {
        var report = Rosette
            .Petals(12, radius: 40)
            .Carve(part => part.IsPetal)
            .Inspect(Knife.Held(degrees: 65), Stock.Thick(12).GrainAlong(degrees: 0));

        report.IsCarvable.ShouldBeTrue();
        var finding = report.Only(FindingKind.OverComfortableDepth);
        finding.Count.ShouldBe(12);
        // Arcs of radius 77.274 that are 40 apart: 2 (r - √(r² - 20²)) wide in the middle.
        var width = 2 * (77.274 - Math.Sqrt(77.274 * 77.274 - 400));
        finding.Value.ShouldBe(width / 2 * Inspections.Tan65, 1e-3);
    }
}
