using static PatternGen.Tests.Geometry.Arrangements;

namespace PatternGen.Tests.Geometry;

/// <summary>Nodes, edges and faces against published counts.</summary>
public class ArrangementCountSpecs
{
    /// <summary>OEIS A007678 (regions) and A007569 (nodes); for n = 13 to 16 and 18 to 20 from memory, and n = 16 counted by merging the crossings of each four corners' diagonals.</summary>
    [Theory]
    [InlineData(3, 1, 3)]
    [InlineData(4, 4, 5)]
    [InlineData(5, 11, 10)]
    [InlineData(6, 24, 19)]
    [InlineData(7, 50, 42)]
    [InlineData(8, 80, 57)]
    [InlineData(9, 154, 135)]
    [InlineData(10, 220, 171)]
    [InlineData(11, 375, 341)]
    [InlineData(12, 444, 313)]
    [InlineData(13, 781, 728)]
    [InlineData(14, 952, 771)]
    [InlineData(15, 1456, 1380)]
    [InlineData(16, 1696, 1393)]
    [InlineData(17, 2500, 2397)]
    [InlineData(18, 2466, 1855)]
    [InlineData(19, 4029, 3895)]
    [InlineData(20, 4500, 3861)]
    public void A_regular_polygon_with_all_diagonals(int corners, int regions, int nodes) =>
        Sound(PolygonWithDiagonals(corners)).ShouldHave(nodes, nodes + regions - 1, regions);

    /// <summary>OEIS A006533: chords of a circle with the circle itself.</summary>
    [Theory]
    [InlineData(6, 30)]
    [InlineData(8, 88)]
    [InlineData(12, 456)]
    public void A_circle_with_all_chords_of_points_on_it(int points, int regions) =>
        Sound(PolygonWithDiagonals(points).Append(new Circle(Point.Origin, 40)))
            .BoundedFaces.Count()
            .ShouldBe(regions);

    /// <summary>Computed in exact arithmetic. Where 3 divides n, the rim and two circles meet in points that need the root of 3.</summary>
    [Theory]
    [InlineData(3, 4, 12, 9)]
    [InlineData(4, 13, 28, 16)]
    [InlineData(6, 13, 36, 24)]
    [InlineData(8, 41, 88, 48)]
    [InlineData(12, 61, 144, 84)]
    [InlineData(24, 265, 576, 312)]
    public void Circles_through_the_middle_with_their_rim(int n, int nodes, int edges, int faces) =>
        Sound(RosetteAndRim(n)).ShouldHave(nodes, edges, faces);

    /// <summary>Computed in exact arithmetic.</summary>
    [Theory]
    [InlineData(3, 4, 9, 6)]
    [InlineData(4, 5, 12, 8)]
    [InlineData(6, 13, 30, 18)]
    [InlineData(8, 25, 56, 32)]
    [InlineData(12, 61, 132, 72)]
    [InlineData(24, 265, 552, 288)]
    public void Circles_through_the_middle(int n, int nodes, int edges, int faces) =>
        Sound(Rosette(n)).ShouldHave(nodes, edges, faces);

    /// <summary>By counting along rows: V = 4(k - 1)(2k - 1), E = 2V, and F = V + 1 by Euler.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(10)]
    [InlineData(30)]
    public void A_grid_of_circles(int side)
    {
        var nodes = 4 * (side - 1) * (2 * side - 1);
        Sound(Grid(side)).ShouldHave(nodes, 2 * nodes, nodes + 1);
    }

    /// <summary>OEIS A359046 (regions) and A331702 (points): circles on each corner of a regular polygon through every other one.</summary>
    [Theory]
    [InlineData(2, 3, 2)]
    [InlineData(3, 7, 6)]
    [InlineData(4, 45, 40)]
    [InlineData(5, 66, 55)]
    [InlineData(6, 186, 145)]
    [InlineData(7, 267, 238)]
    [InlineData(8, 657, 584)]
    [InlineData(9, 721, 612)]
    public void Circles_on_corners_through_the_others(int corners, int regions, int points)
    {
        var ring = Ring(corners, 10);
        var arrangement = Sound(
            from centre in ring
            from other in ring
            where other != centre
            select new Curve(new Circle(centre, centre.DistanceTo(other)))
        );
        arrangement.Nodes.Count.ShouldBe(points);
        arrangement.BoundedFaces.Count().ShouldBe(regions);
    }

    /// <summary>OEIS A371374: all circles of the rim's radius through two of n points on it.</summary>
    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 9)]
    [InlineData(4, 9)]
    [InlineData(5, 51)]
    [InlineData(6, 48)]
    [InlineData(7, 211)]
    [InlineData(8, 217)]
    public void Equal_circles_through_each_two_points_of_a_rim(int points, int regions)
    {
        var ring = Ring(points, 10);
        // The rim's centre mirrored in each chord; the rim itself is one of the circles.
        var circles =
            from i in Enumerable.Range(0, points)
            from j in Enumerable.Range(0, i)
            select new Curve(
                new Circle(Point.Origin + 2 * (ring[i].Towards(ring[j], 0.5) - Point.Origin), 10)
            );
        Sound(circles.Append(new Circle(Point.Origin, 10))).BoundedFaces.Count().ShouldBe(regions);
    }

    /// <summary>OEIS A374337: from two points, in each round an equal circle on every crossing so far.</summary>
    [Fact]
    public void Circles_that_grow_from_two_points()
    {
        var centres = new List<Point> { new(0, 0), new(10, 0) };
        foreach (var regions in (int[])[3, 11, 27, 55])
        {
            var arrangement = Sound(centres.Select(centre => new Curve(new Circle(centre, 10))));
            arrangement.BoundedFaces.Count().ShouldBe(regions);
            centres.AddRange(
                arrangement
                    .Nodes.Select(node => node.Point)
                    .Where(point => centres.TrueForAll(known => known.DistanceTo(point) > 1e-6))
                    .ToArray()
            );
        }
    }

    /// <summary>13 points, 36 arcs, 24 regions: by Euler's formula.</summary>
    [Fact]
    public void The_six_petal_figure() =>
        Sound(Rosette(6, 1).Append(new Circle(Point.Origin, 1))).ShouldHave(13, 36, 24);

    /// <summary>31 points, 108 arcs, 78 regions: by Euler's formula.</summary>
    [Fact]
    public void Nineteen_circles_on_a_triangular_grid()
    {
        var across = new Vector(0.5, Math.Sqrt(3) / 2);
        Sound(
                from i in Enumerable.Range(-2, 5)
                from j in Enumerable.Range(-2, 5)
                where Math.Abs(i + j) <= 2
                select new Curve(new Circle(new Point(i, 0) + across * j, 1))
            )
            .ShouldHave(31, 108, 78);
    }

    /// <summary>OEIS A000124: (n² + n + 2) / 2 with the outer face; lines long enough to cross all others, of which the ends dangle.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(25)]
    public void Lines_in_general_position(int n)
    {
        // Tangents of a parabola: each two cross, no three in one point.
        var lines = Enumerable
            .Range(0, n)
            .Select(i => Line(-100, -100.0 * i - i * i / 4.0, 100, 100.0 * i - i * i / 4.0));
        var crossings = n * (n - 1) / 2;
        Sound(lines).ShouldHave(crossings + 2 * n, n * n, (n - 1) * (n - 2) / 2);
    }

    /// <summary>OEIS A014206: n² - n + 2 regions with the outer face.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(13)]
    public void Circles_in_general_position(int n) =>
        Sound(Ring(n, 3).Select((centre, i) => new Curve(new Circle(centre, 10 + i * 0.01))))
            .ShouldHave(n * (n - 1), 2 * n * (n - 1), n * n - n + 1);
}
