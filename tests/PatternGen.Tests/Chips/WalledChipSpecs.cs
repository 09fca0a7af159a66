using System.Globalization;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

public class WalledChipSpecs
{
    private static readonly Roof Roof345 = Roof.Over(ChipOutlines.Triangle(3, 4, 5));

    [Fact]
    public void A_placed_chip_lies_where_its_outline_is_placed()
    {
        foreach (
            var placement in (Transform[])
                [
                    Transform.Move(10, 20),
                    Transform.Rotate(30).Then(Transform.Resize(2.5)),
                    Transform.MirrorLeftRight(7),
                    Transform.Mirror(new(1, 2), Angle.FromDegrees(20)).Then(Transform.Resize(0.5)),
                ]
        )
        {
            var placed = ChipSolid.Walled(Roof345, Angle.FromDegrees(65), placement);
            var drawn = ChipSolid.Walled(
                Roof.Over(Roof345.Outline.Transformed(placement)),
                Angle.FromDegrees(65)
            );

            placed.Depth.ShouldBe(drawn.Depth, 1e-11);
            placed.Clearance.ShouldBe(drawn.Clearance, 1e-11);
            placed.Area.ShouldBe(drawn.Area, 1e-10);
            placed.Volume.ShouldBe(drawn.Volume, 1e-10);
            placed.SurfaceArea.ShouldBe(drawn.SurfaceArea, 1e-10);
            placed.Deepest.DistanceTo(drawn.Deepest).ShouldBeLessThan(1e-11);
            placed.DepthAt(placed.Deepest).ShouldBe(placed.Depth, 1e-11);
            foreach (var share in (double[])[0.2, 0.6])
            {
                var point = placed.Deepest.Towards(placement.Apply(Point.Origin), share);
                placed.DepthAt(point).ShouldBe(drawn.DepthAt(point), 1e-11);
                placed.DepthAt(point).ShouldBe(placed.Depth * (1 - share), 1e-11);
            }
        }
    }

    /// <summary>A wall at the angle a covers its area on the surface over cos a.</summary>
    [Theory]
    [InlineData(65)]
    [InlineData(45)]
    [InlineData(30)]
    public void Facets_project_to_the_outline(double degrees)
    {
        foreach (var (name, contour) in Shapes.All)
        {
            var chip = ChipSolid.Walled(Roof.Over(contour), Angle.FromDegrees(degrees));
            var facets = chip.Roof.Walls.Sum(wall => wall.Area);

            facets.ShouldBe(contour.Area, 1e-10 * contour.Area, name);
            (chip.SurfaceArea * Math.Cos(degrees * Math.PI / 180)).ShouldBe(
                facets,
                1e-10 * facets,
                name
            );
        }
    }

    [Fact]
    public void Outside_a_chip_the_wood_stands()
    {
        var ring = ChipSolid.Walled(
            ChipOutlines.Ring(Shapes.Circle(10), Shapes.Circle(4)),
            Angle.FromDegrees(45)
        );

        ring.DepthAt(new(11, 0)).ShouldBe(0);
        ring.DepthAt(new(0, 0)).ShouldBe(0);
        ring.DepthAt(new(6, 0)).ShouldBe(2, 1e-12);
        ring.DepthAt(new(7, 0)).ShouldBe(3, 1e-12);
        ring.Area.ShouldBe(84 * Math.PI, 1e-10);
    }

    [Fact]
    public void The_wall_angle_lies_between_flat_and_upright()
    {
        foreach (var degrees in (double[])[0, 90, -5, 120])
            Should
                .Throw<ArgumentOutOfRangeException>(() =>
                    ChipSolid.Walled(Roof345, Angle.FromDegrees(degrees))
                )
                .Message.ShouldContain("between 0 and 90");
        Should.Throw<ArgumentNullException>(() => ChipSolid.Walled(null!, Angle.FromDegrees(65)));
        var chip = ChipSolid.Walled(Roof345, Angle.FromDegrees(65));
        Should.Throw<ArgumentOutOfRangeException>(() => chip.DepthAt(new(double.NaN, 0)));
        Should.Throw<ArgumentOutOfRangeException>(() => Roof345.ClearanceAt(new(0, 1e9)));
    }

    [Fact]
    public void Messages_tell_depth_place_and_volume_in_any_culture()
    {
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new("de-DE");
            ChipSolid
                .Walled(Roof345, Angle.FromDegrees(65))
                .ToString()
                .ShouldBe("2.145 mm deep at (3, 1), 4.289 mm³");
            Roof345.ToString().ShouldContain("1 mm clear at (3, 1)");
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }
}
