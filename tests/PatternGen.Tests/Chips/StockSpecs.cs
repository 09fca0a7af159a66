namespace PatternGen.Tests.Chips;

public class StockSpecs
{
    // A board's edges, walked with the wood on the left.
    private static readonly Vector Lower = new(1, 0);
    private static readonly Vector RightEnd = new(0, 1);
    private static readonly Vector Upper = new(-1, 0);
    private static readonly Vector LeftEnd = new(0, -1);

    [Fact]
    public void The_ends_of_a_board_are_end_grain_and_its_edges_are_not()
    {
        var stock = Stock.Thick(12);

        stock.Thickness.ShouldBe(12);
        EndsOf(stock).ShouldBe((true, true));
        stock.IsEndGrain(Lower).ShouldBeFalse();
        stock.IsEndGrain(Upper).ShouldBeFalse();
    }

    [Fact]
    public void Grain_across_makes_the_long_edges_end_grain()
    {
        var stock = Stock.Thick(12).GrainAlong(degrees: 90);

        EndsOf(stock).ShouldBe((false, false));
        stock.IsEndGrain(Lower).ShouldBeTrue();
        stock.IsEndGrain(Upper).ShouldBeTrue();
    }

    [Fact]
    public void I_can_choose_the_ends()
    {
        var stock = Stock.Thick(12);

        EndsOf(stock.WithEndGrain(EndGrain.AtNoEnd)).ShouldBe((false, false));
        EndsOf(stock.WithEndGrain(EndGrain.AtFirstEnd)).ShouldBe((true, false));
        EndsOf(stock.WithEndGrain(EndGrain.AtLastEnd)).ShouldBe((false, true));
        // With the grain upwards the lower edge is the first end.
        var upright = stock.GrainAlong(90).WithEndGrain(EndGrain.AtFirstEnd);
        upright.IsEndGrain(Lower).ShouldBeTrue();
        upright.IsEndGrain(Upper).ShouldBeFalse();
    }

    [Fact]
    public void A_member_that_stands_upright_has_its_ends_above_and_below()
    {
        var stock = Stock.Thick(12).WithEndGrain(EndGrain.AtLastEnd);
        var up = Angle.FromDegrees(90);

        stock.IsEndGrain(Upper, up).ShouldBeTrue();
        stock.IsEndGrain(Lower, up).ShouldBeFalse();
        stock.IsEndGrain(RightEnd, up).ShouldBeFalse();
    }

    [Fact]
    public void An_edge_counts_as_end_grain_from_45_degrees_on()
    {
        var stock = Stock.Thick(12);

        stock.IsEndGrain(Vector.Towards(Angle.FromDegrees(46))).ShouldBeTrue();
        stock.IsEndGrain(Vector.Towards(Angle.FromDegrees(44))).ShouldBeFalse();
        // At 45 degrees exactly the long grain wins, however the edge is written.
        for (var size = 0.1; size < 50; size *= 1.7)
            stock.IsEndGrain(new(size, size)).ShouldBeFalse();
    }

    [Fact]
    public void Each_setting_keeps_the_others()
    {
        var stock = Stock
            .Thick(12)
            .WithSpecies("basswood")
            .WithEndGrain(EndGrain.AtLastEnd)
            .GrainAlong(30);

        stock.Species.ShouldBe("basswood");
        stock.EndGrain.ShouldBe(EndGrain.AtLastEnd);
        stock.Grain.Degrees.ShouldBe(30, 1e-12);
        stock.ToString().ShouldBe("12 mm basswood, grain 30°");
    }

    [Fact]
    public void Wood_that_cannot_be_is_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Stock.Thick(0));
        Should.Throw<ArgumentOutOfRangeException>(() => Stock.Thick(12).GrainAlong(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => Stock.Thick(12).WithEndGrain((EndGrain)7));
        Should.Throw<ArgumentException>(() => Stock.Thick(12).WithSpecies(" "));
        Should.Throw<ArgumentException>(() => Stock.Thick(12).IsEndGrain(Vector.Zero));
    }

    private static (bool Left, bool Right) EndsOf(Stock stock) =>
        (stock.IsEndGrain(LeftEnd), stock.IsEndGrain(RightEnd));
}
