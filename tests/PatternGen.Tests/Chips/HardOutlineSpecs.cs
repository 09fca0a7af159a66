using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

public class HardOutlineSpecs
{
    public static TheoryData<string> Names => [.. HardOutlines.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_hard_outline_has_walls_that_meet(string name)
    {
        var outline = HardOutlines.All[name];
        outline.Validate().IsValid.ShouldBeTrue(outline.Validate().ToString());

        var roof = RoofCheck.Sound(outline, name);

        RoofCheck.ValleysShouldHangTogether(roof, name);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_point_of_a_hard_outline_is_deeper_than_its_deepest(string name)
    {
        var roof = Roof.Over(HardOutlines.All[name]);
        var extents = roof.Outline.Extents;

        for (var i = 0; i < 40; i++)
        for (var j = 0; j < 40; j++)
            roof.ClearanceAt(
                    new(
                        extents.Min.X + extents.Width * (i + 0.5) / 40,
                        extents.Min.Y + extents.Height * (j + 0.5) / 40
                    )
                )
                .ShouldBeLessThanOrEqualTo(roof.Clearance + 1e-12, name);
    }

    /// <summary>A pyramid as well: MathWorld, Regular Polygon. And no more than a moment: every site is asked about every other.</summary>
    [Fact]
    public void A_polygon_of_a_thousand_sides_is_a_pyramid()
    {
        var roof = Roof.Over(Shapes.Regular(1000, 50));

        roof.Walls.Sum(wall => wall.Area).ShouldBe(roof.Area, 1e-9 * roof.Area);
        roof.Clearance.ShouldBe(50 * Math.Cos(Math.PI / 1000), 1e-9);
        roof.Moment.ShouldBe(roof.Area * roof.Clearance / 3, 1e-10 * roof.Moment);
        roof.Deepest.DistanceTo(Point.Origin).ShouldBeLessThan(1e-8);
    }
}
