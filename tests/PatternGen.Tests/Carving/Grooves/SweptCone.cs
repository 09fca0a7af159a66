namespace PatternGen.Tests.Carving.Grooves;

/// <summary>
/// What a cone cuts that is swept along polylines, and what the ideal chip is, from elementary geometry alone: distances of points
/// from lines and arcs, and from the cone's side. Nothing of the library but the corners of outlines and paths.
/// </summary>
internal sealed class SweptCone
{
    private readonly double _slope;
    private readonly (double X, double Y, double R)[][] _paths;

    /// <param name="paths">The paths.</param>
    /// <param name="wallDegrees">Angle between the cone's side and the surface.</param>
    public SweptCone(IEnumerable<GroovePath> paths, double wallDegrees)
    {
        _slope = Math.Tan(wallDegrees * Math.PI / 180);
        _paths =
        [
            .. paths.Select(path =>
                path.Places.Select(at => (at.Point.X, at.Point.Y, at.Depth / _slope)).ToArray()
            ),
        ];
    }

    /// <summary>How deep it cuts at a place, in mm; negative where the cone passes above the wood.</summary>
    public double DepthAt(double x, double y)
    {
        var best = double.NegativeInfinity;
        foreach (var path in _paths)
            for (var i = 1; i < path.Length; i++)
                best = Math.Max(best, Reach(path[i - 1], path[i], x, y));
        return best * _slope;
    }

    /// <summary>How far into walls the cone reaches when its point is anywhere on the paths, in mm as seen from above: its circle less the distance to the outline.</summary>
    public double DeepestCrossing(IReadOnlyList<Contour> rings, int samples)
    {
        var worst = double.NegativeInfinity;
        foreach (var path in _paths)
            for (var i = 1; i < path.Length; i++)
            for (var k = 0; k <= samples; k++)
            {
                var t = (double)k / samples;
                var (a, b) = (path[i - 1], path[i]);
                var (x, y) = (a.X + (b.X - a.X) * t, a.Y + (b.Y - a.Y) * t);
                var free = rings.Min(ring => Distance(ring, x, y));
                worst = Math.Max(worst, a.R + (b.R - a.R) * t - free);
            }
        return worst;
    }

    /// <summary>Distance of a point from an outline of lines and arcs.</summary>
    public static double Distance(Contour ring, double x, double y)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i < ring.Vertices.Count; i++)
        {
            var from = ring.Vertices[i];
            var to = ring.Vertices[(i + 1) % ring.Vertices.Count];
            best = Math.Min(best, Distance(from.Point, to.Point, from.Bulge, x, y));
        }
        return best;
    }

    public static double Distance(Point from, Point to, double bulge, double x, double y)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        if (bulge == 0)
        {
            var square = dx * dx + dy * dy;
            var t = Math.Clamp(((x - from.X) * dx + (y - from.Y) * dy) / square, 0, 1);
            return double.Hypot(x - from.X - dx * t, y - from.Y - dy * t);
        }
        // The centre of an arc of bulge b lies (1 - b²)/(4b) chords to the left of the chord's middle.
        var left = (1 - bulge * bulge) / (4 * bulge);
        var (cx, cy) = ((from.X + to.X) / 2 - dy * left, (from.Y + to.Y) / 2 + dx * left);
        var radius = double.Hypot(from.X - cx, from.Y - cy);
        var start = Math.Atan2(from.Y - cy, from.X - cx);
        var sweep = 4 * Math.Atan(bulge);
        var turned = (Math.Atan2(y - cy, x - cx) - start) * Math.Sign(sweep);
        turned -= Math.Tau * Math.Floor(turned / Math.Tau);
        return turned <= Math.Abs(sweep)
            ? Math.Abs(double.Hypot(x - cx, y - cy) - radius)
            : Math.Min(double.Hypot(x - from.X, y - from.Y), double.Hypot(x - to.X, y - to.Y));
    }

    /// <summary>
    /// The largest r(t) - |p - q(t)| of a piece. With the radius growing by m for each mm, and p at the height h above the piece, at s along it, the
    /// slope m - (t - s)/√(h² + (t - s)²) is 0 at t = s + h m/√(1 - m²); the function is concave.
    /// </summary>
    private static double Reach(
        (double X, double Y, double R) a,
        (double X, double Y, double R) b,
        double x,
        double y
    )
    {
        var length = double.Hypot(b.X - a.X, b.Y - a.Y);
        if (length == 0)
            return Math.Max(a.R, b.R) - double.Hypot(x - a.X, y - a.Y);
        var (ux, uy) = ((b.X - a.X) / length, (b.Y - a.Y) / length);
        var along = (x - a.X) * ux + (y - a.Y) * uy;
        var beside = Math.Abs((x - a.X) * uy - (y - a.Y) * ux);
        var growth = (b.R - a.R) / length;
        var best =
            Math.Abs(growth) < 1
                ? along + beside * growth / Math.Sqrt(1 - growth * growth)
                : growth * double.PositiveInfinity;
        var t = Math.Clamp(best, 0, length);
        return a.R + growth * t - double.Hypot(beside, along - t);
    }
}
