namespace PatternGen.Geometry;

/// <summary>A whole circle.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is exact. The default value is the point circle at the origin, which no method accepts.</remarks>
public readonly record struct Circle
{
    /// <summary>Creates a circle.</summary>
    /// <param name="centre">Centre, in mm.</param>
    /// <param name="radius">Radius in mm, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive, or a number is not finite.</exception>
    public Circle(Point centre, double radius)
    {
        Centre = Guard.Place(centre);
        Radius = Guard.Positive(radius);
    }

    private Circle(Segment arc)
    {
        Centre = arc.Centre;
        Radius = arc.Radius;
    }

    /// <summary>Centre, in mm.</summary>
    public Point Centre { get; }

    /// <summary>Radius in mm.</summary>
    public double Radius { get; }

    /// <summary>Circumference in mm, 2πR.</summary>
    public double Length => Math.Tau * Radius;

    /// <summary>Area in mm², πR². Radius 1 has 3.14159.</summary>
    public double Area => Math.PI * Radius * Radius;

    /// <summary>The point opposite to where a walk starts.</summary>
    internal Point LeftMost => Centre - new Vector(Radius, 0);

    /// <summary>Where a walk round the circle starts: the point on the right.</summary>
    internal Point RightMost => Centre + new Vector(Radius, 0);

    /// <summary>The upright square that holds the circle.</summary>
    public Extents Extents => Extents.Of(Centre).Grown(Radius);

    /// <summary>The circle that an arc lies on, which may be larger than those that a caller may ask for.</summary>
    internal static Circle Under(Segment arc) => new(arc);

    /// <summary>Returns the circle as a counter-clockwise contour of two half circles, starting on the right.</summary>
    public Contour ToContour() => new([new(RightMost, 1), new(LeftMost, 1)]);

    /// <summary>The upper and the lower half, counter-clockwise; <see cref="Segment.IntersectHalf"/> meets them.</summary>
    internal (Segment Upper, Segment Lower) Halves =>
        (new(RightMost, LeftMost, 1), new(LeftMost, RightMost, 1));

    /// <summary>Returns the circle moved, turned, mirrored or scaled.</summary>
    public Circle Transformed(Transform transform) =>
        new(
            Guard.Moved(transform.Apply(Centre), Centre, nameof(transform)),
            Radius * transform.Scale
        );
}
