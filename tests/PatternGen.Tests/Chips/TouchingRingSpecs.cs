using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

/// <summary>Holes that touch the outline, each other or themselves: the chip is as narrow as nothing there.</summary>
public class TouchingRingSpecs
{
    private static readonly Contour Square = Contour.Rectangle(new(-10, -10), new(10, 10));

    /// <summary>Each with the number of parts: a hole that touches at two places cuts the chip apart.</summary>
    private static readonly Dictionary<string, Contour[]> Cases = new()
    {
        ["a hole in the middle"] = [Diamond(0, 0, 5)],
        ["a hole's corner on a side"] = [Diamond(0, -5, 5)],
        ["a hole's corner on a side, upright"] =
        [
            Contour.Polygon(new(0, -10), new(3, -2), new(-1, -1)),
        ],
        ["a hole's corner in a corner"] = [Contour.Polygon(new(-10, -10), new(2, -4), new(-4, 2))],
        ["a hole's corners on two sides"] =
        [
            Contour.Polygon(new(-10, 0), new(0, -10), new(-2, -2)),
        ],
        ["a round hole at a side"] = [Shapes.Circle(3, 0, -7)],
        ["a round hole at two sides"] = [Shapes.Circle(3, -7, -7)],
        ["a round hole as wide as the square"] = [Shapes.Circle(10)],
        ["two holes that touch in corners"] = [Diamond(-4, 0, 4), Diamond(4, 0, 4)],
        ["a hole's corner on another hole's side"] =
        [
            Contour.Rectangle(new(-5, -3), new(0, 3)),
            Diamond(3, 0, 3),
        ],
        ["two round holes that touch"] = [Shapes.Circle(4, -4), Shapes.Circle(4, 4)],
        ["three round holes that touch"] =
        [
            Shapes.Circle(2, 0, 0),
            Shapes.Circle(2, 4, 0),
            Shapes.Circle(2, 2, 2 * Math.Sqrt(3)),
        ],
        ["a round hole and a corner that touch"] = [Shapes.Circle(3, -3), Diamond(2, 0, 2)],
        ["a chain of holes across"] = [Diamond(-5, 0, 5), Diamond(5, 0, 5)],
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Rings_may_touch(string name)
    {
        var region = new Region(Cases[name].Prepend(Square));
        region.Validate().IsValid.ShouldBeTrue(region.Validate().ToString());

        foreach (var part in region.Parts)
            RoofCheck.ShouldBeSound(Roof.Over(part), name);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_same_as_rings_of_a_round_outline(string name)
    {
        // Wide enough that nothing touches it; the holes still touch each other.
        var region = new Region(Cases[name].Prepend(Shapes.Circle(15)));

        foreach (var part in region.Parts)
            RoofCheck.ShouldBeSound(Roof.Over(part), name);
    }

    [Fact]
    public void An_outline_may_touch_itself_in_a_corner()
    {
        var bow = Contour.Polygon(
            new(0, 0),
            new(4, -2),
            new(4, 2),
            new(0, 0),
            new(-4, 2),
            new(-4, -2)
        );

        var roof = RoofCheck.Sound(bow);

        // Two triangles with a base of 4 and height 4: r = 8 / half of 4 + 2 √20.
        roof.Clearance.ShouldBe(8 / (2 + Math.Sqrt(20)), 1e-12);
        roof.Moment.ShouldBe(2 * 8 * roof.Clearance / 3, 1e-11);
    }

    /// <summary>A circle of radius 5 in one of 10, which touch: valleys lie where the distances from both centres add up to 15.</summary>
    [Fact]
    public void A_crescent_may_end_in_one_cusp()
    {
        var crescent = new Contour(
            new Vertex(new(10, 0), 1),
            new Vertex(new(-10, 0), 1),
            new Vertex(new(10, 0), -1),
            new Vertex(new(0, 0), -1)
        );

        var roof = RoofCheck.Sound(crescent);

        roof.Clearance.ShouldBe(5, 1e-12);
        foreach (var valley in roof.Valleys)
        {
            valley.Kind.ShouldBe(ValleyKind.Ellipse);
            var place = valley.PlaceAt(0.4).Point;
            (place.DistanceTo(new(0, 0)) + place.DistanceTo(new(5, 0))).ShouldBe(15, 1e-11);
        }
    }

    [Fact]
    public void A_region_of_two_parts_has_a_roof_over_each()
    {
        var region = new Region(Shapes.Circle(2), Shapes.Circle(3, 10));

        region.Parts.Select(part => Roof.Over(part).Clearance).Order().ShouldBe([2, 3], 1e-12);
    }

    private static Contour Diamond(double x, double y, double reach) =>
        Contour.Polygon(new(x - reach, y), new(x, y - reach), new(x + reach, y), new(x, y + reach));
}
