namespace PatternGen.Geometry;

/// <summary>A corner of a contour or chain, with the bulge of the segment that starts there.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is exact.</remarks>
public readonly record struct Vertex
{
    /// <summary>Creates a corner.</summary>
    /// <param name="point">The place, in mm.</param>
    /// <param name="bulge">
    /// tan(sweep / 4) of the segment from here to the next corner: 0 (the default) is a straight line, 1 a half circle,
    /// positive turns counter-clockwise, so that the arc lies to the right of its chord. A quarter circle has 0.41421.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate lies beyond 2 km, the bulge beyond 1e9, or a number is not finite.</exception>
    public Vertex(Point point, double bulge = 0)
    {
        Point = Guard.Place(point);
        Bulge = Guard.Within(bulge, -Guard.MaxBulge, Guard.MaxBulge);
    }

    /// <summary>Creates a corner from coordinates in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate lies beyond 2 km, the bulge beyond 1e9, or a number is not finite.</exception>
    public Vertex(double x, double y, double bulge = 0)
        : this(new Point(Guard.Coordinate(x), Guard.Coordinate(y)), bulge) { }

    /// <summary>The place, in mm.</summary>
    public Point Point { get; }

    /// <summary>tan(sweep / 4) of the segment that starts here; 0 is a straight line.</summary>
    public double Bulge { get; }

    /// <summary>A corner whose next segment is straight.</summary>
    public static implicit operator Vertex(Point point) => new(point);
}
