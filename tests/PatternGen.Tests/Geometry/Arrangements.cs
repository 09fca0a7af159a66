namespace PatternGen.Tests.Geometry;

/// <summary>Drawings for arrangements, and what must hold of every one.</summary>
internal static class Arrangements
{
    /// <summary>The arrangement of a drawing, checked.</summary>
    internal static Arrangement Sound(params Curve[] curves) => Sound((IEnumerable<Curve>)curves);

    internal static Arrangement Sound(IEnumerable<Curve> curves)
    {
        var arrangement = Arrangement.Of(curves);
        arrangement.Validate().ShouldBeEmpty();
        foreach (var face in arrangement.BoundedFaces)
            face.ToPart().Area.ShouldBe(face.Area, 1e-9 * face.Area + SliverOf(face));
        return arrangement;

        // Joining pieces of one curve may move a side by the merge distance.
        double SliverOf(Face face) =>
            arrangement.Tolerance.Merge
            * face.Walks.Sum(walk =>
                walk.Sum(halfEdge => halfEdge.Segments.Sum(segment => segment.Length))
            );
    }

    internal static void ShouldHave(this Arrangement arrangement, int nodes, int edges, int faces)
    {
        arrangement.Nodes.Count.ShouldBe(nodes);
        arrangement.Edges.Count.ShouldBe(edges);
        arrangement.BoundedFaces.Count().ShouldBe(faces);
    }

    internal static Curve Circle(double x, double y, double radius) =>
        new Circle(new(x, y), radius);

    internal static Curve Line(double x1, double y1, double x2, double y2) =>
        new Segment(new(x1, y1), new(x2, y2));

    internal static Point[] Ring(int count, double radius) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => Point.Origin.Polar(radius, Angle.OfTurn((double)i / count))),
        ];

    internal static IEnumerable<Curve> PolygonWithDiagonals(int corners, double radius = 40)
    {
        var ring = Ring(corners, radius);
        return from i in Enumerable.Range(0, corners)
            from j in Enumerable.Range(0, i)
            select new Curve(new Segment(ring[i], ring[j]));
    }

    /// <summary>Equal circles through the middle, their centres evenly on a rim of the same radius.</summary>
    internal static IEnumerable<Curve> Rosette(int circles, double radius = 40) =>
        Ring(circles, radius).Select(centre => new Curve(new Circle(centre, radius)));

    internal static IEnumerable<Curve> RosetteAndRim(int circles, double radius = 40) =>
        Rosette(circles, radius).Append(new Circle(Point.Origin, radius));

    internal static IEnumerable<Curve> Grid(int side, double radius = 0.75) =>
        from x in Enumerable.Range(0, side)
        from y in Enumerable.Range(0, side)
        select Circle(x, y, radius);

    internal static IEnumerable<Curve> Curves(Contour ring) =>
        ring.Segments.Select(segment => new Curve(segment));

    /// <summary>Areas of the bounded faces, the smallest first: what two drawings have in common whose faces are numbered differently.</summary>
    internal static double[] Areas(Arrangement arrangement) =>
        [.. arrangement.BoundedFaces.Select(face => face.Area).Order()];

    internal static void ShouldBeTheSame(Arrangement one, Arrangement other, double scale = 1)
    {
        other.ShouldHave(one.Nodes.Count, one.Edges.Count, one.Faces.Count - 1);
        other.ComponentCount.ShouldBe(one.ComponentCount);
        var (areas, others) = (Areas(one), Areas(other));
        for (var i = 0; i < areas.Length; i++)
            (others[i] / (scale * scale)).ShouldBe(areas[i], 1e-6 * areas[^1]);
    }
}
