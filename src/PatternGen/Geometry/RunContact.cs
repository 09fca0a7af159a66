namespace PatternGen.Geometry;

/// <summary>How two runs meet at a place.</summary>
public enum ContactKind
{
    /// <summary>They pass through each other: each lies on both sides of the other.</summary>
    Crossing,

    /// <summary>They touch without passing through each other, or one of them ends there.</summary>
    Touching,

    /// <summary>They run along each other over a stretch of one line or circle.</summary>
    Overlapping,
}

/// <summary>A place where two runs, or two parts of one run, meet.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct RunContact
{
    internal RunContact(
        ContactKind kind,
        Point point,
        RunPlace first,
        RunPlace second,
        Segment? stretch
    )
    {
        Kind = kind;
        Point = point;
        LengthOnFirst = first.Length;
        LengthOnSecond = second.Length;
        SegmentOnFirst = first.Segment;
        SegmentOnSecond = second.Segment;
        Stretch = stretch;
    }

    /// <summary>How they meet.</summary>
    public ContactKind Kind { get; internal init; }

    /// <summary>Where they meet; where they overlap, the start of the stretch as the first run goes.</summary>
    public Point Point { get; }

    /// <summary>Distance in mm along the first run to <see cref="Point"/>.</summary>
    public double LengthOnFirst { get; }

    /// <summary>Distance in mm along the second run to <see cref="Point"/>.</summary>
    public double LengthOnSecond { get; }

    /// <summary>The place in the first run of the segment concerned; at a corner, of one of the two.</summary>
    public int SegmentOnFirst { get; }

    /// <summary>The place in the second run of the segment concerned; at a corner, of one of the two.</summary>
    public int SegmentOnSecond { get; }

    /// <summary>Where they overlap: the stretch, as the first run goes, for each pair of segments; null elsewhere.</summary>
    public Segment? Stretch { get; }
}
