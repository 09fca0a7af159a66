namespace PatternGen.Geometry;

/// <summary>How two segments meet.</summary>
public enum IntersectionKind
{
    /// <summary>They have no point in common.</summary>
    None,

    /// <summary>They cross in one point, or an end of one touches the other.</summary>
    One,

    /// <summary>They touch without crossing, away from their ends.</summary>
    Tangent,

    /// <summary>They have two separate points in common.</summary>
    Two,

    /// <summary>They run along each other over a stretch, on the same line or circle.</summary>
    Overlapping,
}

/// <summary>What two segments have in common. The default value is nothing.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct SegmentIntersection
{
    internal SegmentIntersection(
        IntersectionKind kind,
        ReadOnlySpan<Point> points,
        ReadOnlySpan<Segment> stretches
    )
    {
        Kind = kind;
        PointCount = points.Length;
        First = points.Length > 0 ? points[0] : default;
        Second = points.Length > 1 ? points[1] : default;
        StretchCount = stretches.Length;
        FirstStretch = stretches.Length > 0 ? stretches[0] : default;
        SecondStretch = stretches.Length > 1 ? stretches[1] : default;
    }

    /// <summary>How they meet.</summary>
    public IntersectionKind Kind { get; }

    /// <summary>The separate points in common, in order along the first segment; the ends of shared stretches are not among them.</summary>
    public IReadOnlyList<Point> Points =>
        PointCount switch
        {
            0 => [],
            1 => [First],
            _ => [First, Second],
        };

    /// <summary>The stretches in common, as parts of the first segment. More than one only where two arcs of over a half circle meet.</summary>
    public IReadOnlyList<Segment> Stretches =>
        StretchCount switch
        {
            0 => [],
            1 => [FirstStretch],
            _ => [FirstStretch, SecondStretch],
        };

    /// <summary>One of the points, without the list that <see cref="Points"/> makes.</summary>
    internal Point PointAt(int index) => index == 0 ? First : Second;

    /// <summary>One of the stretches, without the list that <see cref="Stretches"/> makes.</summary>
    internal Segment StretchAt(int index) => index == 0 ? FirstStretch : SecondStretch;

    internal int PointCount { get; }
    internal Point First { get; }
    internal Point Second { get; }
    internal int StretchCount { get; }
    internal Segment FirstStretch { get; }
    internal Segment SecondStretch { get; }
}
