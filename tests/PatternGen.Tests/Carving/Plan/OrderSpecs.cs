namespace PatternGen.Tests.Carving.Plan;

/// <summary>The order of chips. Common practice, no source: the largest first; of two neighbours the larger first.</summary>
public class OrderSpecs
{
    [Fact]
    public void The_largest_chip_comes_first_wherever_it_lies()
    {
        var plan = Plans.Of(
            Pattern.OfChips(Plans.Square(0, 40, 4), Plans.Square(20, 20, 8), Plans.Square(40, 0, 6))
        );

        plan.Chips.Select(chip => chip.Chip.Id.Index).ShouldBe([2, 3, 1]);
        plan.Chips.Select(chip => chip.Number).ShouldBe([1, 2, 3]);
        plan.Chips.ShouldAllBe(chip => chip.Reason == PlanReason.LargestFirst);
    }

    /// <summary>Chips 1 to 6 as on a page: the upper row first.</summary>
    [Theory]
    [InlineData(Hand.Right, new[] { 4, 5, 6, 1, 2, 3 })]
    [InlineData(Hand.Left, new[] { 6, 5, 4, 3, 2, 1 })]
    public void Chips_of_one_size_are_taken_as_a_page_is_read(Hand hand, int[] expected)
    {
        var pattern = Pattern.OfChips(
            from row in Enumerable.Range(0, 2)
            from column in Enumerable.Range(0, 3)
            // A little out of line, as in a vine.
            select Plans.Square(10 * column, 10 * row + 0.3 * column, 5)
        );

        var plan = Plans.Of(pattern).With(hand);

        plan.Chips.Select(chip => chip.Chip.Id.Index).ShouldBe(expected);
        plan.Chips.Skip(1).ShouldAllBe(chip => chip.Reason == PlanReason.NextInLine);
    }

    [Fact]
    public void In_passes_a_chip_waits_for_its_larger_neighbour_and_for_no_other()
    {
        var neighbours = Pattern.OfChips(Plans.Square(0, 0, 8), Plans.Square(8, 2, 4));
        var apart = Pattern.OfChips(Plans.Square(0, 0, 8), Plans.Square(18, 2, 4));

        var waiting = Plans.Of(neighbours).ByPasses();
        var free = Plans.Of(apart).ByPasses();

        waiting
            .Steps.Select(step => step.Chips.Single().Chip.Id.Index)
            .ShouldBe([1, 1, 1, 1, 2, 2, 2, 2]);
        waiting.Steps.Skip(4).ShouldAllBe(step => step.Reason == PlanReason.AfterLargerNeighbour);
        // Four ways round a square: both chips in each.
        free.Steps.Select(step => step.Chips.Single().Chip.Id.Index)
            .ShouldBe([1, 2, 1, 2, 1, 2, 1, 2]);
        free.Steps.ShouldAllBe(step => step.Reason == PlanReason.SameTurn);
        free.BoardTurns.ShouldBe(3);
    }

    /// <summary>Squares that share a side; with a thin ridge; with one of more than 0.8 mm; that meet in a corner.</summary>
    [Theory]
    [InlineData(6, 0, true)]
    [InlineData(6.5, 0, true)]
    [InlineData(6.9, 0, false)]
    [InlineData(6, 6, false)]
    [InlineData(6, 4, true)] // shares a third of the side
    public void The_side_next_to_a_removed_chip_is_cut_first_and_lightly(
        double x,
        double y,
        bool isNext
    )
    {
        var plan = Plans.Of(Pattern.OfChips(Plans.Square(0, 0, 6), Plans.Square(x, y, 6)));

        var (first, second) = (plan.Chips[0], plan.Chips[1]);
        first.Strokes.ShouldAllBe(cut => cut.Pressure == Pressure.Full);
        var light = second.Strokes.Where(cut => cut.Pressure == Pressure.Light).ToArray();
        light.Length.ShouldBe(isNext ? 1 : 0);
        plan.Totals.LightStrokes.ShouldBe(light.Length);
        if (!isNext)
            return;
        second.Strokes[0].ShouldBe(light[0]);
        light[0].Reason.ShouldBe(PlanReason.NextToRemoved);
        // The upper of two is read first, and the left one of two beside each other.
        light[0].Facing.ShouldBe(y > 0 ? SideFacing.Right : SideFacing.Left);
    }

    /// <summary>Next to a removed chip goes before the grain: that side may be the best one with the grain.</summary>
    [Fact]
    public void A_chip_between_removed_ones_has_all_its_shared_sides_cut_lightly()
    {
        var plan = Plans.Of(Plans.Wreath);

        // The six hollow triangles between petals share all three sides with them.
        var between = plan.Chips.Where(chip => chip.Strokes.Count == 3).ToArray();
        between.Length.ShouldBe(6);
        between.ShouldAllBe(chip => chip.Strokes.All(cut => cut.Pressure == Pressure.Light));
        plan.Chips.Except(between)
            .ShouldAllBe(chip => chip.Strokes.All(cut => cut.Pressure == Pressure.Full));
    }

    /// <summary>
    /// With the grain, from its definition: a little ahead along the fibres is the chip, not the ground. Against this the plan's
    /// last cut is held for grains all round.
    /// </summary>
    [Fact]
    public void The_last_cut_runs_with_the_grain_where_one_of_the_sides_does()
    {
        var outline = Contour.Polygon(new(0, 0), new(10, 0), new(3, 7));
        var chosen = 0;
        for (var degrees = 0; degrees < 180; degrees += 7)
        {
            var fibre = Vector.Towards(Angle.FromDegrees(degrees));
            var plan = Pattern.OfChips(outline).Plan(Plans.Knife, Plans.Board.GrainAlong(degrees));

            var last = plan.Strokes[^1];
            plan.Strokes.Any(RunsIntoChip).ShouldBeTrue();
            RunsIntoChip(last).ShouldBeTrue();
            if (last.Reason == PlanReason.WithTheGrain)
                chosen++;
            foreach (var cut in plan.Strokes)
                if (cut.Grain is GrainRun.With or GrainRun.Against)
                    (cut.Grain == GrainRun.With).ShouldBe(RunsIntoChip(cut));

            bool RunsIntoChip(CarvingStroke cut)
            {
                var way = (cut.End - cut.Start).Unit();
                var ahead = way.Dot(fibre) < 0 ? -fibre : fibre;
                var middle = cut.Start.Towards(cut.End, 0.5);
                return outline.Locate(middle + ahead * 1e-3) == Containment.Inside;
            }
        }
        chosen.ShouldBe(26);
    }

    [Fact]
    public void The_grain_of_a_member_counts_as_it_lies()
    {
        var upright = Plans.Rail.Turned(90);

        foreach (var plan in (CarvingPlan[])[Plans.Of(Plans.Rail), Plans.Of(upright)])
        {
            plan.Chips.ShouldAllBe(chip => chip.Strokes[2].Grain == GrainRun.With);
            plan.ByPasses().Chips.ShouldAllBe(chip => chip.Strokes[2].Grain == GrainRun.With);
        }
    }
}
