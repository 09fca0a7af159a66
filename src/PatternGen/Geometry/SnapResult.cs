namespace PatternGen.Geometry;

/// <summary>What snapping contours to a grid gave.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed record SnapResult
{
    internal SnapResult(
        IReadOnlyList<Contour> contours,
        double largestMove,
        IReadOnlyList<SnapRefusal> refusals
    )
    {
        Contours = contours;
        LargestMove = largestMove;
        Refusals = refusals;
    }

    /// <summary>The contours, in the order given.</summary>
    public IReadOnlyList<Contour> Contours { get; }

    /// <summary>How far the corner that moved most was moved, in mm.</summary>
    public double LargestMove { get; }

    /// <summary>The contours that were left as they were, because snapping would have spoilt them; empty if all went well.</summary>
    public IReadOnlyList<SnapRefusal> Refusals { get; }
}

/// <summary>A contour that snapping left as it was, and why.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed record SnapRefusal
{
    internal SnapRefusal(int contour, Point place, string reason)
    {
        Contour = contour;
        Place = place;
        Reason = reason;
    }

    /// <summary>The place of the contour among those given, from 0.</summary>
    public int Contour { get; }

    /// <summary>Where it would have been spoilt: a place on the contour as it was.</summary>
    public Point Place { get; }

    /// <summary>What would have become of it, as a sentence.</summary>
    public string Reason { get; }

    /// <summary>Returns the contour, the place and the reason, for messages.</summary>
    public override string ToString() => $"Contour {Contour} at {Place}: {Reason}";
}
