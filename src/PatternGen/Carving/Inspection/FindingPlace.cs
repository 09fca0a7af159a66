using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One of the places at which something was found.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct FindingPlace
{
    private readonly ChipId[]? _all;

    internal FindingPlace(ChipId chip, ChipId? other, Point place, ChipId[]? all = null)
    {
        _all = all;
        Chip = chip;
        Other = other;
        Place = place;
    }

    /// <summary>The chip.</summary>
    public ChipId Chip { get; }

    /// <summary>The second chip, of findings between two; null otherwise.</summary>
    public ChipId? Other { get; }

    /// <summary>All chips concerned there, in the order of their ids: one, two, or all whose tips meet.</summary>
    public IReadOnlyList<ChipId> Chips => _all ?? (Other is { } other ? [Chip, other] : [Chip]);

    /// <summary>Where, in the pattern's coordinates (mm).</summary>
    public Point Place { get; }
}
