namespace PatternGen.Tests.Output.Section;

public class LabelSpreadTests
{
    [Fact]
    public void Labels_with_room_stay_where_they_are() =>
        LabelSpread.Of([0, 10, 25], [4, 4, 6]).ShouldBe([0, 10, 25]);

    /// <summary>Three in one place, each 2 wide: one stays, the others go 2 to either side.</summary>
    [Fact]
    public void Labels_of_one_place_spread_to_both_sides() =>
        LabelSpread.Of([5, 5, 5], [2, 2, 2]).ShouldBe([3, 5, 7]);

    /// <summary>Against small moves of one or several labels: none that keeps the room makes the sum of squares less.</summary>
    [Fact]
    public void No_other_order_keeping_set_of_places_moves_less()
    {
        var random = new Random(5);
        for (var round = 0; round < 200; round++)
        {
            var count = random.Next(2, 12);
            double[] places =
            [
                .. Enumerable.Range(0, count).Select(_ => 20 * random.NextDouble()).Order(),
            ];
            double[] widths =
            [
                .. Enumerable.Range(0, count).Select(_ => 1 + 3 * random.NextDouble()),
            ];
            var set = LabelSpread.Of(places, widths);
            HasRoom(set).ShouldBeTrue();
            for (var i = 0; i < 50; i++)
            {
                var (first, last) = (random.Next(count), random.Next(count));
                var move = 0.1 * (random.NextDouble() - 0.5);
                double[] other =
                [
                    .. set.Select(
                        (x, at) =>
                            at >= Math.Min(first, last) && at <= Math.Max(first, last)
                                ? x + move
                                : x
                    ),
                ];
                if (HasRoom(other))
                    Moved(other).ShouldBeGreaterThanOrEqualTo(Moved(set) - 1e-9);
            }

            bool HasRoom(double[] middles) =>
                Enumerable
                    .Range(1, count - 1)
                    .All(i =>
                        middles[i] - middles[i - 1] >= (widths[i - 1] + widths[i]) / 2 - 1e-9
                    );

            double Moved(double[] middles) =>
                middles.Zip(places, (a, b) => (a - b) * (a - b)).Sum();
        }
    }
}
