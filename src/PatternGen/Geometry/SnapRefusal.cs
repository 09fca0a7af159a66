namespace PatternGen.Geometry;

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
