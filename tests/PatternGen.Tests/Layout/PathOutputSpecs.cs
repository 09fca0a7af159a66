using PatternGen.Tests.Output.Svg;
using static PatternGen.Tests.Layout.PathSamples;

namespace PatternGen.Tests.Layout;

public class PathOutputSpecs
{
    private static readonly Pattern Leaf = Pattern.OfChips(Output.Samples.Lens(9, 0.28));

    public static TheoryData<string> Names => [.. Patterns().Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Chips_do_not_overlap(string name)
    {
        var report = Patterns()[name].Inspect(Knife.Held(65), Stock.Thick(20));

        report
            .Findings.Where(finding => finding.Kind == FindingKind.ChipsOverlap)
            .Select(finding => finding.Message)
            .ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_same_repeats_give_the_same_bytes(string name) =>
        WrittenSvg
            .Of(Patterns()[name], For.Viewing)
            .Bytes.ShouldBe(WrittenSvg.Of(Patterns()[name], For.Viewing).Bytes);

    /// <summary>
    /// Chips 8 mm long, 2.4 mm wide, 5 mm apart: side by side along a line, but round a circle of radius 3 mm they reach 1 mm
    /// beyond its centre, so that the centre lies in all of them.
    /// </summary>
    [Fact]
    public void Neighbours_that_a_bend_brings_together_are_found()
    {
        Overlaps(Chain.Line(new(0, 0), new(50, 0))).ShouldBe(0);
        Overlaps(new Circle(Point.Origin, 3).ToContour()).ShouldBeGreaterThan(0);

        static int Overlaps(SegmentRun path) =>
            path.Repeat(Lens, 5, Heading.Across)
                .Inspect(Knife.Held(65), Stock.Thick(20))
                .Findings.Count(finding => finding.Kind == FindingKind.ChipsOverlap);
    }

    [Fact]
    public void The_caption_says_what_and_how()
    {
        Circle50
            .Repeat(Lens, 16)
            .Caption()
            .ShouldBe([
                "Repeats along a closed path of 314.16 mm",
                "20 repeats, spacing 15.708 mm (16 asked), closed without a seam",
                "20 chips",
            ]);
        Chain
            .Line(new(0, 0), new(10, 0))
            .Repeat(Lens, 10)
            .Caption()[1]
            .ShouldBe("1 repeat, spacing 10 mm (10 asked)");
    }

    [Fact]
    public void A_recut_pattern_still_shares_its_shapes()
    {
        var knife = Circle50.Repeat([Lens, Hook], 16).WithCut(ChipCut.WallsAt(60));

        knife
            .Chips.Select(chip => chip.Shape)
            .Distinct(ReferenceEqualityComparer.Instance)
            .Count()
            .ShouldBe(2);
    }

    private static Dictionary<string, Pattern> Patterns() =>
        new()
        {
            ["leaves along a rounded outline"] = Rounded
                .Inset(14)
                .Largest()
                .Repeat(Leaf, 12, Heading.Along.Turned(35))
                .OffsetBy(1.2)
                .EverySecondMirrored(),
            ["a spiral of half circles"] = Spiral()
                .Repeat(Leaf, 7, Heading.Along.Turned(50))
                .OffsetBy(1.5)
                .OnBothSides()
                .RepeatsScaled(1, 0.35)
                .EndMargins(4, 2),
            ["a square with corner motifs"] = Square100
                .Repeat([Lens, Hook], 9.5)
                .CornerMotif(Rosette.Petals(6, 9).Carve(part => part.IsPetal), 10.5)
                .OddRepeats(),
        };

    /// <summary>Half circles of radius 48, 40, … 16 mm, each going on where the one before ends.</summary>
    private static Chain Spiral()
    {
        List<Vertex> ends = [new(-48, 0, 1)];
        var x = -48.0;
        for (var (i, radius) = (0, 48.0); i < 5; i++, radius -= 8)
            ends.Add(new(x += i % 2 == 0 ? 2 * radius : -2 * radius, 0, 1));
        return new(ends);
    }
}
