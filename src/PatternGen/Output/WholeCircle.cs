using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Knows the rings that are one whole circle, in however many arcs: formats have an element for those.</summary>
internal static class WholeCircle
{
    /// <summary>Returns the circle that a ring is, or null.</summary>
    /// <param name="ring">The ring.</param>
    /// <param name="decimals">Decimals of a coordinate: arcs whose circles differ by less are arcs of one circle.</param>
    internal static Circle? Of(ReadOnlySpan<Vertex> ring, int decimals)
    {
        foreach (ref readonly var vertex in ring)
            if (vertex.Bulge == 0 || (vertex.Bulge > 0) != (ring[0].Bulge > 0))
                return null;
        var unit = Math.Pow(10, -decimals);
        var first = ArcFrom(ring, 0);
        double turned = 0;
        for (var i = 0; i < ring.Length; i++)
        {
            var arc = ArcFrom(ring, i);
            if (arc.Start == arc.End || !AreOnOneCircle(first, arc, unit))
                return null;
            turned += Math.Abs(arc.Sweep.Radians);
        }
        var isOnce = turned is > 0.5 * Math.Tau and < 1.5 * Math.Tau;
        return isOnce && first.Radius >= unit && first.Radius <= Guard.MaxSize
            ? new(first.Centre, first.Radius)
            : null;
    }

    private static Segment ArcFrom(ReadOnlySpan<Vertex> ring, int at) =>
        new(ring[at].Point, ring[at + 1 < ring.Length ? at + 1 : 0].Point, ring[at].Bulge);

    private static bool AreOnOneCircle(Segment a, Segment b, double unit) =>
        a.Centre.DistanceTo(b.Centre) < unit && Math.Abs(a.Radius - b.Radius) < unit;
}
