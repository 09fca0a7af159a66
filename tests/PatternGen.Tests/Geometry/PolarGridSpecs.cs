using CsCheck;

namespace PatternGen.Tests.Geometry;

public class PolarGridSpecs
{
    [Fact]
    public void A_point_goes_to_the_nearest_crossing_of_ring_and_ray()
    {
        var grid = PolarGrid.Of(5, 4);

        // Rays at 0, 90, 180 and 270 degrees, rings of 5, 10, ... mm.
        grid.Snap(new Point(11, 1)).DistanceTo(new(10, 0)).ShouldBeLessThan(1e-12);
        grid.Snap(new Point(-0.2, 14)).DistanceTo(new(0, 15)).ShouldBeLessThan(1e-12);
        grid.Snap(new Point(1, -1)).ShouldBe(Point.Origin);
        grid.Snap(Point.Origin).ShouldBe(Point.Origin);
    }

    [Fact]
    public void The_first_ray_points_up_unless_asked_otherwise()
    {
        PolarGrid.Of(10, 3).Snap(new Point(1, 9)).DistanceTo(new(0, 10)).ShouldBeLessThan(1e-12);
        PolarGrid
            .Of(10, 3, firstRay: 0)
            .Snap(new Point(9, 1))
            .DistanceTo(new(10, 0))
            .ShouldBeLessThan(1e-12);
    }

    [Fact]
    public void No_point_of_the_grid_is_nearer_and_snapping_again_changes_nothing() =>
        Gen.Select(
                Gen.Double[-60, 60],
                Gen.Double[-60, 60],
                Gen.Int[1, 24],
                Gen.Double[0.5, 12],
                Gen.Double[0, 360]
            )
            .Sample(
                (x, y, rays, step, first) =>
                {
                    var grid = PolarGrid.Of(step, rays, new(3, -2), first);
                    Point point = new(x, y);
                    var snapped = grid.Snap(point);

                    grid.Snap(snapped).ShouldBe(snapped);
                    // Brute force over all points of the grid by the definition of rings and rays.
                    var best = new Point(3, -2).DistanceTo(point);
                    for (var ring = 1; ring * step < 110; ring++)
                    for (var ray = 0; ray < rays; ray++)
                    {
                        var angle = (first + 360.0 * ray / rays) * Math.PI / 180;
                        Point place = new(
                            3 + ring * step * Math.Cos(angle),
                            -2 + ring * step * Math.Sin(angle)
                        );
                        best = Math.Min(best, place.DistanceTo(point));
                    }
                    snapped.DistanceTo(point).ShouldBe(best, 1e-9);
                }
            );

    [Theory]
    [InlineData(0, 12)]
    [InlineData(double.NaN, 12)]
    [InlineData(-1, 12)]
    [InlineData(5, 0)]
    [InlineData(5, 3601)]
    public void Steps_and_rays_out_of_range_are_refused(double step, int rays) =>
        Should.Throw<ArgumentOutOfRangeException>(() => PolarGrid.Of(step, rays));
}
