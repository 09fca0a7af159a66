using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A circle, arc or straight line that a step of a compass drawing draws.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class DrawnCurve
{
    internal DrawnCurve(Curve curve, PencilLine line)
    {
        Curve = curve;
        Line = line;
    }

    /// <summary>Its geometry.</summary>
    public Curve Curve { get; }

    /// <summary>Whether it belongs to the figure.</summary>
    public PencilLine Line { get; }

    /// <summary>Where the needle stood for a circle or arc; null for a straight line, and for the short arcs that only find a place.</summary>
    public MarkedPoint? Needle { get; internal init; }

    /// <summary>Where it starts; null for a whole circle, and where no point is marked.</summary>
    public MarkedPoint? From { get; internal init; }

    /// <summary>Where it ends; null for a whole circle, and where no point is marked.</summary>
    public MarkedPoint? To { get; internal init; }

    /// <summary>
    /// Whether it is a straight line that does not run from <see cref="From"/> to <see cref="To"/>, but halves the way
    /// between them; or, without <see cref="To"/>, stands square to a line at <see cref="From"/>.
    /// </summary>
    public bool IsAcross { get; internal init; }
}
