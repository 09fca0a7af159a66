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
