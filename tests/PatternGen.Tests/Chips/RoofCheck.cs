namespace PatternGen.Tests.Chips;

/// <summary>What must hold of every roof, asked of the outline itself: its segments, and nothing that the roof is made from.</summary>
internal static class RoofCheck
{
    /// <summary>Share of the chip's size by which places and distances may be off.</summary>
    private const double Near = 1e-9;

    /// <summary>Two feet of one valley place are apart by more than this share of its clearance, or the two sides go on smoothly.</summary>
    private const double FeetApart = 3e-9;

    private static readonly double[] Shares = [0, 0.11, 0.37, 0.5, 0.82, 1];

    internal static Roof Sound(Contour outline, string? what = null)
    {
        var roof = Roof.Over(outline);
        ShouldBeSound(roof, what ?? Geometry.Draw.Print(outline));
        return roof;
    }

    internal static void ShouldBeSound(Roof roof, string what)
    {
        var size = Math.Max(roof.Outline.Extents.Width, roof.Outline.Extents.Height);
        var near = Near * size;
        WallsShouldCoverTheChip(roof, what);
        DistanceFrom(roof, roof.Deepest).ShouldBe(roof.Clearance, near, $"deepest of {what}");
        WallsShouldEndWhereTheyAreNearest(roof, near, what);
        ValleysShouldTouchTwice(roof, near, what);
        foreach (var node in roof.Nodes)
        {
            DistanceFrom(roof, node.Place).ShouldBe(node.Clearance, near, $"node {node} of {what}");
            node.Clearance.ShouldBeLessThanOrEqualTo(roof.Clearance + near, what);
        }
    }

    /// <summary>
    /// The valleys of a chip without holes are a tree, which has one node more than valleys; each hole closes one more way
    /// round. A disc has neither: all of its wall meets in the middle.
    /// </summary>
    internal static void ValleysShouldHangTogether(Roof roof, string what)
    {
        if (roof.Valleys.Count == 0)
            roof.Area.ShouldBe(
                Math.PI * roof.Clearance * roof.Clearance,
                1e-9 * roof.Area,
                $"a disc: {what}"
            );
        else
            (roof.Nodes.Count - roof.Valleys.Count).ShouldBe(1 - roof.Holes.Count, what);
    }

    internal static double DistanceFrom(Roof roof, Point point) =>
        Sides(roof).Min(side => side.DistanceTo(point));

    internal static IEnumerable<Segment> Sides(Roof roof) =>
        roof.Holes.Prepend(roof.Outline).SelectMany(ring => ring.Segments);

    private static void WallsShouldCoverTheChip(Roof roof, string what)
    {
        var area = roof.Outline.Area - roof.Holes.Sum(hole => hole.Area);
        roof.Walls.Sum(wall => wall.Area).ShouldBe(area, 1e-9 * area, $"walls of {what}");
    }

    private static void WallsShouldEndWhereTheyAreNearest(Roof roof, double near, string what)
    {
        foreach (var wall in roof.Walls)
        foreach (var share in Shares)
        {
            var fall = wall.FallAt(share);
            DistanceFrom(roof, fall.Valley)
                .ShouldBe(fall.Length, near, $"wall {wall.Ring}/{wall.Index} at {share} of {what}");
            fall.Inward.Length.ShouldBe(1, 1e-12, what);
            fall.Length.ShouldBeLessThanOrEqualTo(roof.Clearance + near, what);
        }
    }

    private static void ValleysShouldTouchTwice(Roof roof, double near, string what)
    {
        foreach (var valley in roof.Valleys)
        foreach (var share in Shares)
        {
            var place = valley.PlaceAt(share);
            DistanceFrom(roof, place.Point)
                .ShouldBe(place.Clearance, near, $"{valley} at {share} of {what}");
            // At the ends a tip has clearance 0, and rounding is all that is left.
            if (share is > 0 and < 1 && place.Clearance > 1e3 * near)
                IsTouchedTwice(roof, place, near).ShouldBeTrue($"{valley} at {share} of {what}");
        }
    }

    private static bool IsTouchedTwice(Roof roof, ValleyPlace place, double near)
    {
        var feet = Sides(roof)
            .Select(side => side.Nearest(place.Point))
            .Where(foot => foot.DistanceTo(place.Point) <= place.Clearance + 2 * near)
            .ToArray();
        return feet.Any(foot => foot.DistanceTo(feet[0]) > FeetApart * place.Clearance);
    }
}
