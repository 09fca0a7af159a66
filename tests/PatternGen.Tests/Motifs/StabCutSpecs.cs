namespace PatternGen.Tests.Motifs;

public class StabCutSpecs
{
    private static readonly Rail Rail = Rail.Of(120, 30);

    /// <summary>Tips lie on the middle rule, 6 mm over the edge of a band that faces, and bases 4 mm off it.</summary>
    private static readonly TriangleBand Facing = TriangleBand.Ruled(2, 4, 4, 2).StabCut(slope: 25);

    public static TheoryData<int> Bands => [0, 1, 2, 3, 4];

    [Theory]
    [MemberData(nameof(Bands))]
    public void Every_triangle_is_stabbed_at_its_tip(int which)
    {
        var chips = BorderOf(which).Chips.ToArray();

        chips.ShouldNotBeEmpty();
        foreach (var chip in chips)
        {
            var corners = chip.Outline.Vertices.Select(corner => corner.Point).ToArray();
            var apex = corners[chip.Cut.Apex.ShouldNotBeNull()];
            // Of the three corners of a triangle between rules, two lie on one rule and the tip is the other one.
            corners.Count(corner => Math.Abs(corner.Y - apex.Y) < 1e-9).ShouldBe(1);
            chip.Cut.Slope.ShouldNotBeNull().Degrees.ShouldBe(25, 1e-9);
        }
    }

    [Fact]
    public void Rows_can_be_cut_in_different_ways()
    {
        var band = TriangleBand
            .Ruled(4, 4)
            .WithRows(
                TriangleRow.Between(0, 1).StabCut(depth: 2),
                TriangleRow.Between(1, 2).Down()
            );

        Rail.Border(band)
            .Chips.Where(chip => chip.Cut.IsStabbed)
            .ShouldAllBe(chip => chip.Id.Row == 1 && chip.Cut.Depth == 2);
        band.Rows.Select(row => row.IsStabCut).ShouldBe([true, false]);
        // The rows no longer mirror each other, as their chips do not.
        TriangleBand.Ruled(4, 4).FriezeGroup.ShouldBe(FriezeGroup.P2mm);
        band.FriezeGroup.ShouldBe(FriezeGroup.P1m1);
    }

    [Fact]
    public void Half_chips_of_leaning_rows_have_four_sides_and_are_refused()
    {
        var band = TriangleBand.Ruled(4).StabCut().Leaning(0.5);
        var halves = Rail.Border(band.WithRows(band.Rows[0].Staggered()))
            .Fitted(fit => fit.StaggeredRows(StaggeredEnds.HalfChips));

        Should
            .Throw<PatternException>(() => halves.Chips.Count())
            .Message.ShouldContain("only three-sided chips can be stab-cut");
    }

    [Fact]
    public void Hollow_bases_are_refused()
    {
        var row = TriangleRow.Between(0, 1).HollowBase(0.5).StabCut();

        Should
            .Throw<PatternException>(() =>
                Rail.Border(TriangleBand.Ruled(4).WithRows(row)).Chips.Count()
            )
            .Message.ShouldContain("is curved on the side across");
    }

    private static RailBorder BorderOf(int which) =>
        which switch
        {
            0 => Rail.Border(Facing),
            1 => Rail.Border(Facing.BackToBack().Leaning(0.4)),
            2 => Rail.Border(Facing.Curved(0.3).Adjacent()),
            3 => Rail.Border(Facing.Staggered())
                .Fitted(fit => fit.StaggeredRows(StaggeredEnds.HalfChips)),
            _ => Rail.Border(Facing.Leaning(0.7)).Fitted(fit => fit.TurnedAtMiddle()),
        };
}
