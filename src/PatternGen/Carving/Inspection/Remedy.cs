using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Something that clears a finding, with the number that does.</summary>
/// <remarks>
/// The number is rounded as it is printed, always to the side on which it still clears the finding. Immutable and safe to
/// share between threads.
/// </remarks>
public sealed class Remedy
{
    internal Remedy(RemedyKind kind, double value, Angle? direction, string text)
    {
        Kind = kind;
        Value = value;
        Direction = direction;
        Text = text;
    }

    /// <summary>What to do.</summary>
    public RemedyKind Kind { get; }

    /// <summary>The number that goes with it; <see cref="RemedyKind"/> says which.</summary>
    public double Value { get; }

    /// <summary>
    /// Where something is to be moved, counter-clockwise from x; null where nothing is, and where the places of the finding ask for
    /// different ones: from the edge or line, or from or to the first chip of each pair.
    /// </summary>
    public Angle? Direction { get; }

    /// <summary>What to do, in words.</summary>
    public string Text { get; }

    /// <summary>Returns what to do, in words.</summary>
    public override string ToString() => Text;
}
