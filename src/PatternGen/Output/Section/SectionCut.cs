namespace PatternGen;

/// <summary>A chip or groove that a section runs through, with its deepest place there.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct SectionCut
{
    internal SectionCut(ChipId? chip, double start, double end, SectionPlace deepest)
    {
        (Chip, Start, End) = (chip, start, end);
        (Along, Depth) = (deepest.Along, deepest.Depth);
    }

    /// <summary>The chip; null for a groove.</summary>
    public ChipId? Chip { get; }

    /// <summary>Distance in mm from the start of the section to where it is entered.</summary>
    public double Start { get; }

    /// <summary>Distance in mm from the start of the section to where it is left.</summary>
    public double End { get; }

    /// <summary>Distance in mm from the start of the section to where it is deepest on it; the middle of a level stretch.</summary>
    public double Along { get; }

    /// <summary>Depth in mm there. It is the chip's own depth only if the section runs through its deepest point.</summary>
    public double Depth { get; }
}
