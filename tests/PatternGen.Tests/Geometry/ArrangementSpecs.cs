namespace PatternGen.Tests.Geometry;

public class ArrangementSpecs
{
    /// <summary>OEIS A007678 (regions) and A007569 (nodes): a regular n-gon with all diagonals.</summary>
    [Theory]
    [InlineData(3, 1, 3)]
    [InlineData(4, 4, 5)]
    [InlineData(6, 24, 19)]
    [InlineData(12, 444, 313)]
    [InlineData(17, 2500, 2397)]
    [InlineData(20, 4500, 3861)]
    public void A_regular_polygon_with_all_diagonals(int n, int regions, int nodes)
    {
        var corners = Enumerable
            .Range(0, n)
            .Select(i => Point.Origin.Polar(40, Angle.OfTurn((double)i / n)))
            .ToArray();
        var arrangement = Arrangement.Of(
            from i in Enumerable.Range(0, n)
            from j in Enumerable.Range(0, i)
            select new Curve(new Segment(corners[i], corners[j]))
        );
        arrangement.Validate().ShouldBeEmpty();
        arrangement.Nodes.Count.ShouldBe(nodes);
        arrangement.BoundedFaces.Count().ShouldBe(regions);
    }

    [Theory]
    [InlineData(3, 4, 12, 9)]
    [InlineData(4, 13, 28, 16)]
    [InlineData(6, 13, 36, 24)]
    [InlineData(8, 41, 88, 48)]
    [InlineData(12, 61, 144, 84)]
    [InlineData(24, 265, 576, 312)]
    public void Circles_through_the_centre_and_the_rim(int n, int nodes, int edges, int faces)
    {
        var circles = Enumerable
            .Range(0, n)
            .Select(i => new Circle(Point.Origin.Polar(40, Angle.OfTurn((double)i / n)), 40))
            .Append(new Circle(Point.Origin, 40));
        var arrangement = Arrangement.Of(circles.Select(circle => new Curve(circle)));
        arrangement.Validate().ShouldBeEmpty();
        arrangement.Nodes.Count.ShouldBe(nodes);
        arrangement.Edges.Count.ShouldBe(edges);
        arrangement.BoundedFaces.Count().ShouldBe(faces);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(100)]
    public void Grid(int k)
    {
        Arrangement arrangement = null!;
        for (var i = 0; i < (k == 100 ? 5 : 1); i++)
        {
            var watch = System.Diagnostics.Stopwatch.StartNew();
            arrangement = Arrangement.Of(
                from x in Enumerable.Range(0, k)
                from y in Enumerable.Range(0, k)
                select new Curve(new Circle(new Point(x, y), 0.75))
            );
            Console.WriteLine($"{k}: {watch.ElapsedMilliseconds} ms");
        }
        arrangement.Nodes.Count.ShouldBe(4 * (k - 1) * (2 * k - 1));
        arrangement.Edges.Count.ShouldBe(2 * arrangement.Nodes.Count);
        arrangement.BoundedFaces.Count().ShouldBe(arrangement.Nodes.Count + 1);
        if (k < 50)
            arrangement.Validate().ShouldBeEmpty();
    }
}
