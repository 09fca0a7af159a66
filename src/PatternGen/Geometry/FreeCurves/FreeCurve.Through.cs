namespace PatternGen.Geometry;

public sealed partial class FreeCurve
{
    /// <inheritdoc cref="Through(IEnumerable{Point})"/>
    public static FreeCurve Through(params Point[] points) => Through((IEnumerable<Point>)points);

    /// <summary>Returns the natural cubic spline through points.</summary>
    /// <remarks>
    /// Its direction and curvature are continuous and it does not bend at its ends; the parameter goes by the chords between
    /// the points. Two points make a straight line. A point given twice in a row counts once.
    /// </remarks>
    /// <exception cref="ArgumentException">There are not two different points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point lies beyond 2 km.</exception>
    public static FreeCurve Through(IEnumerable<Point> points) =>
        ThroughDirected(points, null, null);

    /// <summary>Returns the cubic spline through points, at its ends in given directions or else natural.</summary>
    /// <remarks>
    /// Its direction and curvature are continuous; the parameter goes by the chords between the points. A point given twice in
    /// a row counts once.
    /// </remarks>
    /// <param name="points">The points, in order.</param>
    /// <param name="leaving">Direction at the start, of any length; if null, the curve does not bend there.</param>
    /// <param name="arriving">Direction at the end, of any length; if null, the curve does not bend there.</param>
    /// <exception cref="ArgumentException">There are not two different points, or a direction is the zero vector.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point lies beyond 2 km, or a direction is not finite.</exception>
    public static FreeCurve ThroughDirected(
        IEnumerable<Point> points,
        Vector? leaving,
        Vector? arriving
    )
    {
        var all = Usable([.. Guard.NotNull(points)], nameof(points));
        return new(
            SplineThrough.Open(
                Distinct(all),
                Unit(leaving, nameof(leaving)),
                Unit(arriving, nameof(arriving))
            )
        );
    }

    /// <inheritdoc cref="ThroughClosed(IEnumerable{Point})"/>
    public static FreeCurve ThroughClosed(params Point[] points) =>
        ThroughClosed((IEnumerable<Point>)points);

    /// <summary>Returns the closed cubic spline through points, smooth all round.</summary>
    /// <remarks>
    /// Its direction and curvature are continuous, at the first point too; the parameter goes by the chords between the
    /// points. A point given twice in a row counts once, and so does the first one if it is given again at the end.
    /// </remarks>
    /// <exception cref="ArgumentException">There are fewer than three different points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point lies beyond 2 km.</exception>
    public static FreeCurve ThroughClosed(IEnumerable<Point> points)
    {
        var distinct = Distinct(Usable([.. Guard.NotNull(points)], nameof(points)));
        if (Same(distinct[0], distinct[^1]))
            distinct = distinct[..^1];
        return distinct.Length >= 3
            ? new(SplineThrough.Closed(distinct))
            : throw new ArgumentException(
                $"A closed curve needs at least three different points, but has {distinct.Length}.",
                nameof(points)
            );
    }

    /// <summary>The points without those that repeat the one before.</summary>
    private static Point[] Distinct(Point[] points)
    {
        var distinct = new List<Point> { points[0] };
        foreach (var point in points)
            if (!Same(point, distinct[^1]))
                distinct.Add(point);
        return distinct.Count > 1
            ? [.. distinct]
            : throw new ArgumentException(
                $"A curve needs at least two different points, but all are within 0.000000001 mm of {points[0]}.",
                nameof(points)
            );
    }

    private static bool Same(Point a, Point b) => Tolerance.ForExtent(0).Same(a, b);

    private static Vector? Unit(Vector? direction, string name)
    {
        if (direction is not { } given)
            return null;
        Guard.Finite(given.X, name);
        Guard.Finite(given.Y, name);
        var length = given.Length;
        return length > 0 && double.IsFinite(length)
            ? given / length
            : throw new ArgumentException(
                "A direction has a length, but this is the zero vector or too long for a number; null makes a natural end.",
                name
            );
    }
}
