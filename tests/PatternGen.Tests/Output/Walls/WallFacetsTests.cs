using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Output.Walls;

public class WallFacetsTests
{
    /// <summary>Facets that neither overlap nor reach past the valley.</summary>
    private static readonly FacetDetail Bare = FacetDetail.Fine with
    {
        Past = 0,
        Overlaps = false,
        Valley = 2e-4,
    };

    private static readonly Contour Square = Contour.Rectangle(new(0, 0), new(6, 6));

    /// <summary>Chips of every kind that one point does not shade.</summary>
    public static TheoryData<string> Kinds => [.. Chips.Keys];

    private static Dictionary<string, ChipShape> Chips { get; } =
        new()
        {
            ["petal"] = new(Samples.Lens(16, 0.25)),
            ["square"] = new(Square),
            ["triangle"] = new(Contour.Polygon(new(0, 0), new(4, 0), new(0, 3))),
            ["slanted"] = new(
                Contour.Polygon(new(0, 0), new(9, -1), new(11, 3), new(5, 6), new(1, 4))
            ),
            ["hollow"] = new(
                new Contour(
                    new Vertex(0, 0, -0.2),
                    new Vertex(14, 0, -0.2),
                    new Vertex(7, 12, -0.2)
                )
            ),
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

    /// <summary>
    /// The walls seen from above are the chip: their areas add up to the outline's, and no corner lies outside. Valleys
    /// between straight sides are straight, so there the sum is exact; elsewhere chords may miss a thousandth of the area.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_facets_cover_the_chip_and_nothing_else(string kind)
    {
        var chip = Chips[kind];
        var outline = new Region([chip.Outline, .. chip.Holes]);
        var rings = WallFacets.Of(chip.Roof, Bare).Select(facet => facet.Ring).ToArray();
        var isStraight = kind is "square" or "triangle" or "slanted";
        rings.Sum(Area).ShouldBe(outline.Area, (isStraight ? 1e-12 : 1e-3) * outline.Area);
        rings.ShouldAllBe(ring => Area(ring) > 0);
        foreach (var corner in rings.SelectMany(ring => ring))
            if (outline.Locate(corner.Point) == Containment.Outside)
                outline.Contours.Min(ring => ring.DistanceTo(corner.Point)).ShouldBeLessThan(1e-9);
    }

    /// <summary>What is left free along the sides is the parallel inside: NetTopologySuite's area of that.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_is_left_free_along_the_sides_has_one_width(string kind)
    {
        var chip = Chips[kind];
        var free = 0.2 * chip.Roof.Clearance;
        var expected = Flat.Of(new Region([chip.Outline, .. chip.Holes]), 1e-5)
            .Buffer(-free, 32)
            .Area;
        var facets = WallFacets.Of(chip.Roof, Bare with { Free = free });
        facets.Sum(facet => Area(facet.Ring)).ShouldBe(expected, 2e-3 * chip.Roof.Area);
    }

    /// <summary>
    /// Where the picture is drawn, facets reach a little under each other; no point of the chip is left bare, or the floor
    /// would show as a line.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void No_point_of_a_chip_is_left_bare(string kind)
    {
        var chip = Chips[kind];
        var rings = WallFacets
            .Of(chip.Roof, FacetDetail.Fine)
            .Select(f => new Contour(f.Ring))
            .ToArray();
        var outline = new Region([chip.Outline, .. chip.Holes]);
        var extents = chip.Outline.Extents;
        for (var i = 0; i < 40; i++)
        for (var j = 0; j < 40; j++)
        {
            var point = new Point(
                extents.Min.X + extents.Width * (i + 0.37) / 40,
                extents.Min.Y + extents.Height * (j + 0.61) / 40
            );
            if (outline.Locate(point) == Containment.Inside)
                rings.ShouldContain(
                    ring => ring.Contains(point) || ring.DistanceTo(point) < 1e-9,
                    $"{point}"
                );
        }
    }

    /// <summary>Below a side the wall faces straight away from it.</summary>
    [Fact]
    public void Facets_face_away_from_their_sides()
    {
        WallFacets
            .Of(Chips["square"].Roof, Bare)
            .Select(facet => facet.Downhill)
            .ShouldBe([new(0, 1), new(-1, 0), new(0, -1), new(1, 0)]);
    }

    /// <summary>The medial axis of a symmetric lens is the straight line between its tips: both arcs have one radius.</summary>
    [Fact]
    public void The_valley_of_a_petal_runs_straight_from_tip_to_tip()
    {
        foreach (var facet in WallFacets.Of(Chips["petal"].Roof, Bare))
        foreach (var corner in facet.Ring)
        {
            var isOnSide = Chips["petal"].Outline.DistanceTo(corner.Point) < 1e-9;
            (isOnSide || Math.Abs(corner.Point.Y) < 1e-9).ShouldBeTrue($"{corner.Point}");
        }
    }

    [Fact]
    public void An_outline_of_very_many_sides_has_no_walls_drawn()
    {
        var sides = Enumerable.Range(0, 3000).Select(i => Angle.OfTurn(i / 3000.0));
        var outline = Contour.Polygon(sides.Select(angle => Point.Origin.Polar(40, angle)));
        new KnownFacets(FacetDetail.Coarse).Of(new(outline), 1).ShouldBeEmpty();
        Pattern
            .OfChips(outline)
            .Save(Stream.Null, FileFormat.Svg, For.Viewing)
            .ChipCount.ShouldBe(1);
    }

    /// <summary>Euclid IV.4: the inscribed circle of the 3-4-5 triangle has radius 1, so its walls meet in (1, 1).</summary>
    [Fact]
    public void The_walls_of_a_triangle_meet_at_its_incentre()
    {
        var facets = WallFacets.Of(Chips["triangle"].Roof, Bare);
        facets.Count.ShouldBe(3);
        foreach (var facet in facets)
        {
            facet.Ring.Length.ShouldBe(3);
            facet.Ring.Min(corner => corner.Point.DistanceTo(new(1, 1))).ShouldBeLessThan(1e-12);
        }
    }

    /// <summary>The floor of a stab-cut chip goes down from the base straight towards the apex's height.</summary>
    [Fact]
    public void A_stab_cut_chip_has_one_floor()
    {
        var shape = new ChipShape(Contour.Polygon(new(0, 0), new(6, 0), new(2, 4))).WithCut(
            ChipCut.Stabbed(2)
        );
        var floor = new KnownFacets(FacetDetail.Fine).Of(shape, 1).Single();
        floor.Downhill.ShouldBe(new Vector(0, 1));
        Area(floor.Ring).ShouldBe(12, 1e-9);
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
