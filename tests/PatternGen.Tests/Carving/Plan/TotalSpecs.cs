namespace PatternGen.Tests.Carving.Plan;

public class TotalSpecs
{
    /// <summary>Published solids at 65 degrees: square of side 6, rectangle 10 x 4, 3-4-5 triangle.</summary>
    [Fact]
    public void Volumes_and_lengths_add_up_to_those_worked_out_by_hand()
    {
        var plan = Plans.Of(
            Pattern.OfChips(
                Plans.Square(0, 0, 6),
                Contour.Rectangle(new(20, 0), new(30, 4)),
                Contour.Polygon(new(40, 0), new(44, 0), new(40, 3))
            )
        );

        plan.Totals.Volume.ShouldBe(77.2022491383441 + 74.3429065776647 + 4.28901384101912, 1e-9);
        plan.Totals.Length.ShouldBe(24 + 28 + 12, 1e-9);
        plan.Totals.Deepest.ShouldBe(6.43352076152868, 1e-9);
        plan.Totals.Strokes.ShouldBe(4 + 4 + 3);
        // Largest circles of 6, 4 and 2 mm.
        plan.Totals.ChipsOf(ChipSize.Large).ShouldBe(1);
        plan.Totals.ChipsOf(ChipSize.Medium).ShouldBe(1);
        plan.Totals.ChipsOf(ChipSize.Small).ShouldBe(1);
    }

    /// <summary>A groove of width w at 65 degrees has w² / 4 × tan 65° of wood for each mm.</summary>
    [Fact]
    public void Line_cuts_are_added_up_by_themselves()
    {
        var lines = Pattern.OfLineCuts(
            new LineCut(Chain.Line(new(0, 0), new(30, 0)), 2),
            new LineCut(Chain.Line(new(0, 5), new(10, 5)), 2)
        );

        var totals = Plans.Of(lines.With(Pattern.OfChips(Plans.Square(0, 10, 6)))).Totals;

        (totals.LineCuts, totals.LineCutLength).ShouldBe((2, 40));
        totals.LineCutVolume.ShouldBe(40 * 2.14450692050956, 1e-9);
        totals.Volume.ShouldBe(77.2022491383441, 1e-9);
    }

    [Fact]
    public void Minutes_follow_from_a_rate_that_I_give_or_time()
    {
        var plan = Plans.Of(Plans.Rail).ByPasses();

        plan.MinutesAt(CarvingRate.Strokes(6)).ShouldBe(546 / 6.0, 1e-9);
        // Two minutes of turning: five turns of 24 seconds.
        plan.MinutesAt(CarvingRate.Strokes(6).WithTurns(24)).ShouldBe(546 / 6.0 + 2, 1e-9);
        plan.MinutesAt(CarvingRate.Millimetres(50)).ShouldBe(plan.Totals.Length / 50, 1e-9);
        plan.MinutesAt(CarvingRate.Sample(chips: 12, minutes: 18)).ShouldBe(182 * 1.5, 1e-9);
        // A practice board of two triangles in four minutes: 1.5 cuts a minute.
        var practice = Plans.Of(
            Pattern.OfChips(
                Contour.Polygon(new(0, 0), new(4, 0), new(0, 3)),
                Contour.Polygon(new(10, 0), new(14, 0), new(10, 3))
            )
        );
        plan.MinutesAt(CarvingRate.Sample(practice, minutes: 4)).ShouldBe(546 / 1.5, 1e-9);
    }

    [Fact]
    public void A_rate_needs_numbers_that_make_sense()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => CarvingRate.Strokes(0));
        Should.Throw<ArgumentOutOfRangeException>(() => CarvingRate.Millimetres(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => CarvingRate.Sample(0, 3));
        Should.Throw<ArgumentOutOfRangeException>(() => CarvingRate.Strokes(1).WithTurns(-1));
        Should.Throw<ArgumentException>(() => CarvingRate.Sample(Plans.Of(Pattern.Empty), 3));
    }

    [Fact]
    public void A_pattern_without_chips_has_a_plan_without_steps()
    {
        foreach (var plan in Plans.AllWays(Pattern.Empty))
        {
            plan.Steps.ShouldBeEmpty();
            plan.Chips.ShouldBeEmpty();
            plan.Strokes.ShouldBeEmpty();
            (plan.BoardTurns, plan.BoardTurnsSaved).ShouldBe((0, 0));
            (plan.Totals.Volume, plan.Totals.Length, plan.Totals.Deepest).ShouldBe((0, 0, 0));
        }
    }

    /// <summary>tan⁻¹(4 / 6.4) is under 40 degrees, so the walls stay at 40: 3 mm of clearance are 3 × tan 53.13° = 4 mm deep.</summary>
    [Fact]
    public void The_blade_leans_as_the_chip_needs()
    {
        var plan = Pattern
            .OfChips(Plans.Square(0, 0, 6), Plans.Square(10, 0, 2))
            .Plan(Knife.Held(65).NoDeeperThan(4), Plans.Board);

        plan.Strokes.Take(4).ShouldAllBe(cut => Math.Abs(cut.Depth - 4) < 1e-9);
        plan.Strokes[0].BladeAngle.Degrees.ShouldBe(53.1301023541560, 1e-9);
        plan.Strokes[^1].BladeAngle.Degrees.ShouldBe(65, 1e-9);
    }
}
