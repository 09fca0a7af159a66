using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The smallest circle round some points.</summary>
/// <remarks>
/// Points are taken one after the other; one that lies outside the circle so far lies on the edge of the next one (E.
/// Welzl, Smallest enclosing disks, 1991; here in the order given, which is quick enough for the few that meet).
/// </remarks>
internal readonly record struct EnclosingCircle(Point Centre, double Radius)
{
    /// <summary>Share of its radius by which a point on the edge may seem to lie outside.</summary>
    private const double Edge = 1e-12;

    internal static EnclosingCircle Of(ReadOnlySpan<Point> points)
    {
        var circle = new EnclosingCircle(points[0], 0);
        for (var i = 1; i < points.Length; i++)
            if (!circle.Holds(points[i]))
                circle = Through(points[i], points[..i]);
        return circle;
    }

    private static EnclosingCircle Through(Point edge, ReadOnlySpan<Point> points)
    {
        var circle = Over(edge, points[0]);
        for (var i = 1; i < points.Length; i++)
        {
            if (circle.Holds(points[i]))
                continue;
            circle = Over(edge, points[i]);
            for (var j = 0; j < i; j++)
                if (!circle.Holds(points[j]))
                    circle = Through(edge, points[i], points[j]);
        }
        return circle;
    }

    private static EnclosingCircle Over(Point a, Point b) =>
        new(a.Towards(b, 0.5), a.DistanceTo(b) / 2);

    private static EnclosingCircle Through(Point a, Point b, Point c)
    {
        var (u, v) = (b - a, c - a);
        var twice = 2 * u.Cross(v);
        if (twice == 0)
            return Over(a, u.LengthSquared > v.LengthSquared ? b : c);
        var centre = (v.LengthSquared * u.Left - u.LengthSquared * v.Left) / twice;
        return new(a + centre, centre.Length);
    }

    private bool Holds(Point point) => Centre.DistanceTo(point) <= Radius * (1 + Edge);
}
