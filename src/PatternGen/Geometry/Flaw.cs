namespace PatternGen.Geometry;

/// <summary>What can be wrong with a contour or region.</summary>
public enum FlawKind
{
    /// <summary>Two neighbouring corners are one point.</summary>
    DoubledCorner,

    /// <summary>Two neighbouring segments run back along each other.</summary>
    Spike,

    /// <summary>A ring passes through itself.</summary>
    SelfCrossing,

    /// <summary>A ring touches itself in a point.</summary>
    SelfTouching,

    /// <summary>Two parts of a ring that are no neighbours run along each other.</summary>
    SelfOverlapping,

    /// <summary>A ring encloses no area.</summary>
    NoArea,

    /// <summary>Two rings of a region pass through each other.</summary>
    RingsCrossing,

    /// <summary>Two rings of a region run along each other.</summary>
    RingsOverlapping,
}

/// <summary>One thing that is wrong with a contour or region, and where.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed record Flaw
{
    internal Flaw(FlawKind kind, Point place, int segment, string reason, int ring = 0)
    {
        Kind = kind;
        Place = place;
        Segment = segment;
        Reason = reason;
        Ring = ring;
    }

    /// <summary>What is wrong.</summary>
    public FlawKind Kind { get; }

    /// <summary>Where, in mm.</summary>
    public Point Place { get; }

    /// <summary>The first segment concerned, from 0.</summary>
    public int Segment { get; }

    /// <summary>The ring concerned, from 0; always 0 for a single contour.</summary>
    public int Ring { get; }

    /// <summary>What is wrong, in words.</summary>
    public string Reason { get; }

    /// <summary>Returns reason and place, for messages.</summary>
    public override string ToString() => $"At {Place}: {Reason}";
}
