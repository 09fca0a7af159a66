using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A stretch of even curvature of the line that a band is bent along.</summary>
/// <remarks>
/// A place is told as on a rail: x along the line on which lengths are measured, y up from the band's lowest rule, which
/// is to the left. Whatever has the same x lies on one straight line across the band, whatever has the same y on one
/// parallel of the path.
/// </remarks>
/// <param name="Start">x where the stretch begins, in mm.</param>
/// <param name="Length">Its length where lengths are measured, in mm.</param>
internal abstract record BendPiece(double Start, double Length)
{
    /// <summary>x where the stretch ends.</summary>
    internal double End => Start + Length;

    /// <summary>Angle in radians that the stretch turns through for each mm of x, positive to the left.</summary>
    internal abstract double Turn { get; }

    /// <summary>What is the same for stretches on which all chips look alike.</summary>
    internal abstract (double Turn, double Radius) Likeness { get; }

    /// <summary>Where a place lies.</summary>
    internal abstract Point Map(double x, double y);

    /// <summary>The frame at a place on the lowest rule: its x axis runs along the band, its y axis across.</summary>
    internal abstract Transform Frame(double x);

    /// <summary>Where a place lies in the frame of the place x = 0, if the stretch reached so far.</summary>
    internal abstract Point Local(double x, double y);

    /// <summary>The direction of x there, by 1 mm, in the same frame.</summary>
    internal abstract Vector LocalAlong(double x, double y);

    /// <summary>The direction across the band there, of length 1, in the same frame.</summary>
    internal abstract Vector LocalAcross(double x);

    /// <summary>The inverse of <see cref="Local"/>.</summary>
    internal abstract BendPlace Place(Point local);
}
