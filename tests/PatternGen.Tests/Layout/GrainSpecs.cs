namespace PatternGen.Tests.Layout;

public class GrainSpecs
{
    private static readonly Pattern Border = Rail.Of(100, 20).Border(TriangleBand.Ruled(4, 4));
    private static readonly Pattern Chip = Pattern.OfChips(
        Contour.Polygon(new(0, 0), new(4, 0), new(1, 3))
    );

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(90, 0, 90)]
    [InlineData(180, 0, 0)]
    [InlineData(30, 0, 30)]
    [InlineData(210, 0, 30)]
    [InlineData(90, 10, 100)]
    [InlineData(45, -60, 165)]
    public void The_grain_of_a_rail_turns_with_the_rail(double turn, double along, double grain)
    {
        var stock = Stock.Thick(12).GrainAlong(along);
        foreach (var chip in Border.Turned(turn, new(3, 4)).Chips)
            chip.GrainOn(stock).Degrees.ShouldBe(grain, 1e-9);
    }

    [Fact]
    public void Each_rail_of_a_frame_has_its_own_grain()
    {
        var frame = Pattern.Combine(
            Border,
            Border.Turned(90).Moved(100, 0),
            Border.MirroredTopBottom().Moved(0, 100),
            Border.Turned(-90)
        );
        var chips = frame.Chips.GroupBy(chip => (chip.Id.Row - 1) / 2).ToArray();

        chips
            .Select(rail => rail.Select(chip => GrainOf(chip)).Distinct().Single())
            .ShouldBe([0, 90, 0, 90]);
        // Repeats share one shape, whatever their grain.
        chips
            .Select(rail => rail.First().Shape)
            .ShouldAllBe(shape => ReferenceEquals(shape, chips[0].First().Shape));
    }

    [Fact]
    public void Chips_on_no_member_have_the_grain_of_the_board()
    {
        var stock = Stock.Thick(12).GrainAlong(20);
        Chip.Turned(77).Chips.Single().GrainOn(stock).Degrees.ShouldBe(20, 1e-9);
    }

    [Fact]
    public void A_grain_of_its_own_holds_whatever_the_stock_says_and_turns_along()
    {
        var stock = Stock.Thick(12).GrainAlong(20);

        Chip.WithGrain(35).Chips.Single().GrainOn(stock).Degrees.ShouldBe(35, 1e-9);
        Chip.WithGrain(35).Turned(90).Chips.Single().GrainOn(stock).Degrees.ShouldBe(125, 1e-9);
        // In a mirror a grain that rises to the right falls to the right, however large the mirror makes it.
        Chip.WithGrain(35)
            .MirroredLeftRight()
            .Scaled(3)
            .Chips.Single()
            .GrainOn(stock)
            .Degrees.ShouldBe(145, 1e-9);
        Border.WithGrain(90).Chips.ShouldAllBe(chip => GrainOf(chip) == 90);
    }

    [Fact]
    public void A_frame_out_of_one_board_has_one_grain()
    {
        var frame = Border.With(Border.Turned(90)).WithGrain();
        frame.Chips.ShouldAllBe(chip => GrainOf(chip) == 0);
        // What is said last holds.
        frame.WithGrain(90).Chips.ShouldAllBe(chip => GrainOf(chip) == 90);
    }

    [Fact]
    public void An_inlay_keeps_its_grain_in_a_rail()
    {
        var rail = Rail.Of(100, 20)
            .Border(TriangleBand.Ruled(4, 4))
            .Fitted(fit => fit.CentreMotif(Chip.WithGrain(45), 12));

        rail.Turned(90).Chips.Select(chip => GrainOf(chip)).Distinct().Order().ShouldBe([90, 135]);
    }

    private static double GrainOf(Chip chip) =>
        Math.Round(chip.GrainOn(Stock.Thick(12)).Degrees, 9);
}
