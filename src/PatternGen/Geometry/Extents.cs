namespace PatternGen.Geometry;

/// <summary>The smallest upright rectangle that holds something, in mm. The default value is the single point (0, 0).</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct Extents
{
    /// <summary>Creates the rectangle between two corners.</summary>
    /// <exception cref="ArgumentException">The upper corner lies left of or below the lower corner, or is not finite.</exception>
    public Extents(Point min, Point max)
    {
        if (!(min.X <= max.X && min.Y <= max.Y && min.IsFinite && max.IsFinite))
            throw new ArgumentException(
                $"Extents run from the lower left to the upper right corner, but {min} to {max} do not.",
                nameof(max)
            );
        Min = min;
        Max = max;
    }

    /// <summary>The lower left corner.</summary>
    public Point Min { get; }

    /// <summary>The upper right corner.</summary>
    public Point Max { get; }

    /// <summary>Width in mm.</summary>
    public double Width => Max.X - Min.X;

    /// <summary>Height in mm.</summary>
    public double Height => Max.Y - Min.Y;

    /// <summary>The middle.</summary>
    public Point Centre => Min.Towards(Max, 0.5);

    /// <summary>Returns the extents of a single point.</summary>
    public static Extents Of(Point point) => new(point, point);

    /// <summary>Returns the extents that hold both.</summary>
    public Extents Including(Extents other) =>
        new(
            new(Math.Min(Min.X, other.Min.X), Math.Min(Min.Y, other.Min.Y)),
            new(Math.Max(Max.X, other.Max.X), Math.Max(Max.Y, other.Max.Y))
        );

    /// <summary>Returns the extents that hold the point too.</summary>
    public Extents Including(Point point) => Including(Of(point));

    /// <summary>Returns the extents widened by a margin (mm) on every side; a negative margin narrows them, at most to their centre.</summary>
    public Extents Grown(double margin)
    {
        var x = Math.Max(margin, -Width / 2);
        var y = Math.Max(margin, -Height / 2);
        return new(new(Min.X - x, Min.Y - y), new(Max.X + x, Max.Y + y));
    }

    /// <summary>Whether the point lies inside or on the edge.</summary>
    public bool Contains(Point point) =>
        point.X >= Min.X && point.X <= Max.X && point.Y >= Min.Y && point.Y <= Max.Y;

    /// <summary>Whether the other extents lie inside, edges included.</summary>
    public bool Contains(Extents other) => Contains(other.Min) && Contains(other.Max);

    /// <summary>Whether the two overlap or touch.</summary>
    public bool Touches(Extents other) =>
        Min.X <= other.Max.X
        && other.Min.X <= Max.X
        && Min.Y <= other.Max.Y
        && other.Min.Y <= Max.Y;

    /// <summary>Returns the corners, for messages.</summary>
    public override string ToString() => $"{Min} to {Max}";
}
