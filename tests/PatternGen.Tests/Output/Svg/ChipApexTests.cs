namespace PatternGen.Tests.Output.Svg;

public class ChipApexTests
{
    /// <summary>Euclid IV.4: the inscribed circle of the 3-4-5 triangle has radius 1, so its centre is (1, 1).</summary>
    [Fact]
    public void The_walls_of_a_triangle_meet_at_its_incentre()
    {
        var apex = ChipApex.Of(new(Contour.Polygon(new(0, 0), new(4, 0), new(0, 3))))!;
        apex.At.DistanceTo(new(1, 1)).ShouldBeLessThan(1e-12);
        apex.Depth.ShouldBe(1, 1e-12);
    }

    [Fact]
    public void Only_three_straight_sides_meet_in_one_point()
    {
        ChipApex.Of(new(Samples.Lens(16, 0.25))).ShouldBeNull();
        ChipApex
            .Of(new(Contour.Polygon(new(0, 0), new(4, 0), new(4, 2), new(0, 2))))
            .ShouldBeNull();
    }
}
