using CsCheck;

namespace PatternGen.Tests.Carving.Plan;

public class TurnSpecs
{
    /// <summary>By hand: 182 triangles in two rows that face each other have six directions, three a row.</summary>
    [Fact]
    public void A_rail_of_two_rows_is_turned_5_times_in_passes()
    {
        var plan = Plans.Of(Plans.Rail);

        plan.BoardTurns.ShouldBe(182 * 3 - 1);
        plan.BoardTurnsSaved.ShouldBe(0);
        plan.ByPasses().BoardTurns.ShouldBe(5);
        plan.ByPasses().BoardTurnsSaved.ShouldBe(540);
        plan.ByPasses().Steps.Count.ShouldBe(6);
    }

    [Fact]
    public void Turns_are_counted_where_the_board_lies_otherwise_than_for_the_cut_before()
    {
        foreach (var plan in Plans.AllWays(Plans.Combined))
        {
            var count = 0;
            for (var i = 1; i < plan.Strokes.Count; i++)
                if (
                    Math.Abs(
                        Plans.Between(
                            plan.Strokes[i - 1].BoardTurn.Degrees,
                            plan.Strokes[i].BoardTurn.Degrees
                        )
                    ) > 1e-9
                )
                    count++;
            plan.BoardTurns.ShouldBe(count);
            plan.ByPasses().BoardTurns.ShouldBeLessThan(plan.ByChip().BoardTurns);
        }
    }

    /// <summary>
    /// Chips without neighbours share all passes, so the least is the fewest windows of 10 degrees that cover all directions
    /// on a circle: found by trying each direction as the start of one.
    /// </summary>
    [Fact]
    public void Passes_turn_the_board_as_seldom_as_can_be()
    {
        Gen.Double[0, 360]
            .List[1, 12]
            .Sample(
                angles =>
                {
                    var pattern = Pattern.Combine(
                        angles.Select(
                            (angle, i) =>
                                Pattern
                                    .OfChips(Contour.Polygon(new(0, 0), new(5, 0), new(1, 3)))
                                    .Turned(angle)
                                    .Moved(20 * i, 0)
                        )
                    );

                    var plan = Plans.Of(pattern).ByPasses();

                    double[] directions = [.. plan.Strokes.Select(cut => cut.Direction.Degrees)];
                    var fewest = directions.Min(start => Windows(directions, start));
                    plan.BoardTurns.ShouldBe(fewest - 1);
                },
                iter: 200
            );
    }

    /// <summary>Directions that are drawn equal, or 10 degrees apart, are so but for rounding.</summary>
    private const double Rounding = 1e-6;

    private static int Windows(double[] directions, double start)
    {
        var (count, end) = (0, double.NegativeInfinity);
        foreach (var ahead in directions.Select(direction => Ahead(start, direction)).Order())
            if (ahead > end + Rounding)
                (count, end) = (count + 1, ahead + 10);
        return count;
    }

    private static double Ahead(double from, double to)
    {
        var ahead = (to - from) % 360;
        ahead = ahead < 0 ? ahead + 360 : ahead;
        return ahead > 360 - Rounding ? 0 : ahead;
    }
}
