using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One of the places at which something was found.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct FindingPlace
{
    internal FindingPlace(ChipId chip, ChipId? other, Point place)
    {
        Chip = chip;
        Other = other;
        Place = place;
    }

    /// <summary>The chip.</summary>
    public ChipId Chip { get; }

    /// <summary>The second chip, of findings between two; null otherwise.</summary>
    public ChipId? Other { get; }

    /// <summary>Where, in the pattern's coordinates (mm).</summary>
    public Point Place { get; }
}
