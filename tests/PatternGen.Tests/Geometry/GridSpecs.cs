using CsCheck;

namespace PatternGen.Tests.Geometry;

public class GridSpecs
{
    private static Gen<Grid> Grids { get; } =
        Gen.Select(Gen.Double[0.01, 7], Gen.Double[0.01, 7], Draw.Point(), Gen.Double[-360, 360])
            .Select(
                (x, y, origin, degrees) =>
                    Grid.Rectangular(x, y, origin, Angle.FromDegrees(degrees))
            );

    [Theory]
    [InlineData(2.9, -1.2, 2, -2)]
    [InlineData(1, -1, 2, -2)] // half-way: farther from the origin
    [InlineData(0.9, 0.9, 0, 0)]
    public void A_point_goes_to_the_nearest_point_of_the_grid(
        double x,
        double y,
        double toX,
        double toY
    ) => Grid.Square(2).Snap(new Point(x, y)).ShouldBe(new(toX, toY));

    [Fact]
    public void A_grid_can_be_turned_and_start_anywhere()
    {
        var grid = Grid.Rectangular(4, 1, new(1, 1), Angle.FromDegrees(90));

        grid.Snap(new Point(2.2, 4.5)).ShouldBe(new(2, 5));
    }

    [Fact]
    public void Snapping_a_point_twice_equals_once() =>
        Gen.Select(Grids, Draw.Point(1000))
            .Sample(
                (grid, point) => grid.Snap(grid.Snap(point)).ShouldBe(grid.Snap(point)),
                iter: 20000
            );

    [Fact]
    public void No_point_moves_farther_than_half_a_cell() =>
        Gen.Select(Grids, Draw.Point())
            .Sample(
                (grid, point) =>
                    grid.Snap(point)
                        .DistanceTo(point)
                        .ShouldBeLessThanOrEqualTo(double.Hypot(grid.StepX, grid.StepY) / 2 + 1e-9),
                iter: 20000
            );

    [Fact]
    public void Snapping_contours_twice_equals_once() =>
        Gen.Select(Grids, Draw.Ring.Array[1, 4])
            .Sample(
                (grid, rings) =>
                {
                    var once = grid.Snap(rings);
                    var twice = grid.Snap(once.Contours);
                    for (var i = 0; i < rings.Length; i++)
                        twice.Contours[i].Vertices.ShouldBe(once.Contours[i].Vertices);
                    twice.LargestMove.ShouldBe(0);
                },
                iter: 500
            );

    [Fact]
    public void Bulges_and_shared_corners_are_kept_and_the_largest_move_is_told()
    {
        var left = new Contour(new(0.2, 0.1), new(4.9, 0, 0.3), new(5.1, 5), new(0, 4.8));
        var right = new Contour(new(4.9, 0), new(9.7, 0.1), new(10, 5), new(5.1, 5, -0.3));

        var snapped = Grid.Square(1).Snap([left, right]);

        snapped.Contours[0].Vertices.ShouldBe([new(0, 0), new(5, 0, 0.3), new(5, 5), new(0, 5)]);
        snapped.Contours[1].Vertices.ShouldBe([new(5, 0), new(10, 0), new(10, 5), new(5, 5, -0.3)]);
        snapped.LargestMove.ShouldBe(Math.Sqrt(0.1), 1e-12);
        snapped.Refusals.ShouldBeEmpty();
    }

    [Fact]
    public void Corners_a_hair_apart_stay_shared()
    {
        // Either side of half-way between two points of the grid, and less than the merge distance apart.
        var left = Contour.Polygon(new(0, 0), new(2.5 - 1e-10, 0), new(2.5 - 1e-10, 3));
        var right = Contour.Polygon(new(2.5 + 1e-10, 0), new(6, 0), new(2.5 + 1e-10, 3));

        var snapped = Grid.Square(1).Snap([left, right]);

        snapped.Contours[0].Vertices[1].Point.ShouldBe(snapped.Contours[1].Vertices[0].Point);
    }

    [Fact]
    public void A_contour_that_would_collapse_is_left_as_it_was_and_named()
    {
        var chip = Contour.Polygon(new(0.1, 0.1), new(0.4, 0.1), new(0.2, 0.4));
        var board = Contour.Polygon(new(0.1, 0.1), new(9.8, 0.2), new(5, 7.3));

        var snapped = Grid.Square(1).Snap([chip, board]);

        var refusal = snapped.Refusals.ShouldHaveSingleItem();
        refusal.Contour.ShouldBe(0);
        refusal.Place.ShouldBe(new(0.1, 0.1));
        refusal.Reason.ShouldContain("next one");
        snapped.Contours[0].Vertices.ShouldBe(chip.Vertices);
        // The corner that they share stays shared.
        snapped.Contours[1].Vertices.ShouldBe([new(0.1, 0.1), new(10, 0), new(5, 7)]);
    }

    [Fact]
    public void A_contour_that_would_go_flat_is_refused()
    {
        var sliver = Contour.Polygon(new(0, 0), new(10, 0.1), new(20, 0));

        Grid.Square(1).Snap(sliver).Refusals.ShouldHaveSingleItem().Reason.ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(1e-9)]
    public void Absurd_steps_are_refused(double step) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Grid.Square(step));
}
