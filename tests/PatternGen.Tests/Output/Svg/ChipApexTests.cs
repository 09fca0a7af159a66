namespace PatternGen.Tests.Output.Svg;

public class ChipApexTests
{
    /// <summary>Euclid IV.4: the inscribed circle of the 3-4-5 triangle has radius 1, so its centre is (1, 1).</summary>
    [Fact]
    public void The_walls_of_a_triangle_meet_at_its_incentre()
    {
        var apex = ChipApex.Of(Contour.Polygon(new(0, 0), new(4, 0), new(0, 3)))!;
        apex.At.DistanceTo(new(1, 1)).ShouldBeLessThan(1e-12);
        apex.Depth.ShouldBe(1, 1e-12);
    }

    [Fact]
    public void The_walls_of_a_petal_meet_half_way_between_its_tips()
    {
        var apex = ChipApex.Of(Samples.Lens(16, 0.25))!;
        apex.At.DistanceTo(new(8, 0)).ShouldBeLessThan(1e-12);
        apex.Depth.ShouldBe(2, 1e-12);
    }

    [Fact]
    public void A_crescent_has_no_point_that_sees_all_of_it() =>
        ChipApex.Of(new Contour(new Vertex(0, 0, 0.9), new Vertex(16, 0, -0.7))).ShouldBeNull();
}
