namespace PatternGen;

/// <summary>One run of a V bit along valleys, from where it enters the wood to where it is lifted out: a polyline in space.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class GroovePath
{
    internal GroovePath(
        ChipId? chip,
        int? lineCut,
        GrooveEntry entry,
        IReadOnlyList<GroovePlace> places
    )
    {
        (Chip, LineCut) = (chip, lineCut);
        (Entry, Places) = (entry, places);
    }

    /// <summary>The chip whose valleys it runs along; null for a line cut.</summary>
    public ChipId? Chip { get; }

    /// <summary>Number of the line cut that it runs along, from 1 in the order of <see cref="Pattern.LineCuts"/>; null for a chip.</summary>
    public int? LineCut { get; }

    /// <summary>How the bit enters.</summary>
    public GrooveEntry Entry { get; }

    /// <summary>The corners of the polyline, two or more.</summary>
    public IReadOnlyList<GroovePlace> Places { get; }

    /// <summary>The greatest depth in mm.</summary>
    public double Deepest => Places.Max(place => place.Depth);

    /// <summary>Returns what it runs along, and between which places, for messages.</summary>
    public override string ToString()
    {
        var what = Chip is { } chip ? $"chip {chip}" : $"line cut {LineCut}";
        return $"{what}, from {Places[0]} to {Places[^1]}";
    }
}
