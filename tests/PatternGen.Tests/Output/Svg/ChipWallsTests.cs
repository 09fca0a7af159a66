namespace PatternGen.Tests.Output.Svg;

public class ChipWallsTests
{
    private static readonly Contour Square = Contour.Rectangle(new(0, 0), new(6, 6));

    /// <summary>Chips of every kind that one point does not shade.</summary>
    public static TheoryData<string> Kinds => [.. Chips.Keys];

    private static Dictionary<string, ChipShape> Chips { get; } =
        new()
        {
            ["petal"] = new(Samples.Lens(16, 0.25)),
            ["square"] = new(Square),
            ["crescent"] = new(new Contour(new Vertex(0, 0, 0.9), new Vertex(16, 0, -0.7))),
            ["circle"] = new(new Circle(new(3, 4), 5).ToContour()),
            ["ring"] = new(
                new Circle(new(0, 0), 5).ToContour(),
                new Circle(new(0, 0), 3).ToContour().Reversed()
            ),
            ["corner inwards"] = new(
                Contour.Polygon(new(0, 0), new(2, 0), new(2, 1), new(1, 1), new(1, 2), new(0, 2))
            ),
            ["gap between circles"] = new(GapBetweenCircles()),
        };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_walls_cover_the_chip_and_nothing_else(string kind)
    {
        var chip = Chips[kind];
        var outline = new Region([chip.Outline, .. chip.Holes]);
        var rings = ChipWalls.Of(chip).Select(wall => wall.Ring(Transform.Identity, 0)).ToArray();
        // The valley is sampled: a hundredth of the area may be missing or twice there.
        rings.Sum(Area).ShouldBe(outline.Area, 0.01 * outline.Area);
        foreach (var corner in rings.SelectMany(ring => ring))
            if (outline.Locate(corner.Point) == Containment.Outside)
                chip.Outline.DistanceTo(corner.Point).ShouldBeLessThan(0.01);
    }

    /// <summary>The medial axis of a symmetric lens is the straight line between its tips: both arcs have one radius.</summary>
    [Fact]
    public void The_valley_of_a_petal_runs_straight_from_tip_to_tip()
    {
        foreach (var wall in ChipWalls.Of(Chips["petal"]))
        foreach (var corner in wall.Ring(Transform.Identity, 0))
        {
            var isOnSide = Chips["petal"].Outline.DistanceTo(corner.Point) < 1e-9;
            (isOnSide || Math.Abs(corner.Point.Y) < 0.01).ShouldBeTrue($"{corner.Point}");
        }
    }

    [Fact]
    public void An_outline_of_very_many_sides_has_no_walls_drawn()
    {
        var sides = Enumerable.Range(0, 1000).Select(i => Angle.OfTurn(i / 1000.0));
        var outline = Contour.Polygon(sides.Select(angle => Point.Origin.Polar(40, angle)));
        ChipWalls.Of(new(outline)).ShouldBeEmpty();
        Pattern
            .OfChips(outline)
            .Save(Stream.Null, FileFormat.Svg, For.Viewing)
            .ChipCount.ShouldBe(1);
    }

    /// <summary>Hip roof of equal slope over a square: four walls that meet over its middle.</summary>
    [Fact]
    public void The_walls_of_a_square_meet_in_the_middle()
    {
        var walls = ChipWalls.Of(Chips["square"]);
        walls.Count.ShouldBe(4);
        foreach (var wall in walls)
            wall.Ring(Transform.Identity, 0)
                .Min(corner => corner.Point.DistanceTo(new(3, 3)))
                .ShouldBeLessThan(0.01);
    }

    private static double Area(Vertex[] ring) => new Contour(ring).SignedArea;

    /// <summary>The gap between three circles of radius 1 that touch each other: three tips without width.</summary>
    private static Contour GapBetweenCircles()
    {
        var centres = Enumerable
            .Range(0, 3)
            .Select(i => Point.Origin.Polar(2 / Math.Sqrt(3), Angle.OfTurn(i / 3.0)))
            .ToArray();
        var touches = Enumerable
            .Range(0, 3)
            .Select(i => centres[i].Towards(centres[(i + 1) % 3], 0.5))
            .ToArray();
        // Each side is a sixth of a circle that bulges into the gap.
        var bulge = -Math.Tan(Math.PI / 12);
        return new Contour(touches.Select(touch => new Vertex(touch, bulge)));
    }
}
