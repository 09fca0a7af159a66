namespace PatternGen.Tests.Carving.Plan;

/// <summary>
/// Stabs: the knife upright, its point on the apex, pressed down and drawn away along one side, then the other; then the chip
/// is sliced out (Edwin W. Foster, Carpentry and Woodwork, 1911, ch. XI). A vertical cut, the point at the deepest part (Harris
/// W. Moore, Chip Carving, 1922).
/// </summary>
public class StabSpecs
{
    private static readonly Contour Triangle = Contour.Polygon(new(0, 0), new(6, 0), new(3, 4));

    [Theory]
    [InlineData(Technique.ThreeCuts)]
    [InlineData(Technique.StabAndSlice)]
    public void A_stab_cut_chip_is_stabbed_twice_from_its_apex_and_sliced(Technique technique)
    {
        var pattern = Pattern.OfChips(Triangle).WithCut(ChipCut.Stabbed(2, depth: 3));

        var plan = Plans.Of(pattern).With(technique);

        plan.Strokes.Select(cut => cut.Kind).ShouldBe([CutKind.Stab, CutKind.Stab, CutKind.Slice]);
        foreach (var stab in plan.Strokes.Take(2))
        {
            stab.Start.ShouldBe(new Point(3, 4));
            stab.Deepest.ShouldBe(new Point(3, 4));
            (stab.Depth, stab.StartDepth, stab.EndDepth).ShouldBe((3, 3, 0));
            stab.BladeAngle.Degrees.ShouldBe(90);
            stab.Reason.ShouldBe(PlanReason.StabFirst);
        }
        plan.Strokes.Take(2).Select(stab => stab.End.X).Order().ShouldBe([0, 6]);
        plan.Strokes.Take(2)
            .Select(stab => stab.Facing)
            .ShouldBe([SideFacing.UpperLeft, SideFacing.UpperRight], ignoreOrder: true);
        var slice = plan.Strokes[2];
        // The floor rises 3 mm over the 4 mm from apex to base.
        slice.BladeAngle.Degrees.ShouldBe(36.8698976458440, 1e-9);
        (slice.Depth, slice.StartDepth, slice.EndDepth).ShouldBe((3, 0, 0));
        slice.Deepest.ShouldBe(new Point(3, 4));
        // A third of area times depth, as any pyramid (Euclid XII.7).
        plan.Totals.Volume.ShouldBe(12, 1e-9);
    }

    [Fact]
    public void A_triangle_is_stabbed_from_its_deepest_point_to_each_tip()
    {
        var plan = Plans
            .Of(Pattern.OfChips(Contour.Polygon(new(0, 0), new(4, 0), new(0, 3))))
            .With(Technique.StabAndSlice);

        var stabs = plan.Strokes.Where(cut => cut.Kind == CutKind.Stab).ToArray();
        stabs.Length.ShouldBe(3);
        foreach (var stab in stabs)
        {
            stab.Side.ShouldBe(0);
            stab.Start.DistanceTo(new(1, 1)).ShouldBeLessThan(1e-9);
            stab.Depth.ShouldBe(2.14450692050956, 1e-9);
            stab.EndDepth.ShouldBe(0, 1e-9);
        }
        // √2, √5 and √10 from the incentre to the corners.
        stabs
            .Select(stab => Math.Round(stab.Length * stab.Length, 6))
            .Order()
            .ShouldBe([2, 5, 10]);
        plan.Strokes.Skip(3).ShouldAllBe(cut => cut.Kind == CutKind.Slice);
    }

    /// <summary>The valley of a lens is the straight line between its tips, deepest in the middle.</summary>
    [Fact]
    public void A_petal_is_stabbed_from_the_middle_of_its_valley_both_ways()
    {
        var plan = Plans.Of(Plans.Petals).With(Technique.StabAndSlice);

        foreach (var chip in plan.Chips)
        {
            var stabs = chip.Strokes.Where(cut => cut.Kind == CutKind.Stab).ToArray();
            stabs.Length.ShouldBe(2);
            stabs.ShouldAllBe(stab => Math.Abs(stab.Length - 20) < 1e-6);
            stabs.ShouldAllBe(stab => Math.Abs(stab.Start.DistanceTo(Point.Origin) - 20) < 1e-6);
        }
    }

    [Fact]
    public void Stabs_come_before_slices_of_their_chip_in_passes_too()
    {
        foreach (var plan in Plans.AllWays(Plans.Combined))
        foreach (var chip in plan.Chips)
            chip.Strokes.SkipWhile(cut => cut.Kind == CutKind.Stab)
                .ShouldAllBe(cut => cut.Kind != CutKind.Stab);
    }
}
