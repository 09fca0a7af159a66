using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip or line cut that a bit can't cut.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class LeftOutGroove
{
    internal LeftOutGroove(ChipId? chip, int? lineCut, Point place, BitTrouble trouble)
    {
        (Chip, LineCut, Place) = (chip, lineCut, place);
        Trouble = trouble;
    }

    /// <summary>The chip; null for a line cut.</summary>
    public ChipId? Chip { get; }

    /// <summary>Number of the line cut, from 1 in the order of <see cref="Pattern.LineCuts"/>; null for a chip.</summary>
    public int? LineCut { get; }

    /// <summary>The deepest point of the chip, or the start of the line cut.</summary>
    public Point Place { get; }

    /// <summary>Why the bit can't cut it.</summary>
    public string Reason => Trouble.Reason;

    internal BitTrouble Trouble { get; }

    /// <summary>Returns which, where and why, for messages.</summary>
    public override string ToString()
    {
        var what = Chip is { } chip ? $"chip {chip}" : $"line cut {LineCut}";
        return $"{what} at {Place} {Reason}";
    }
}
