using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A piece of a pattern that snapping to a grid left as it was, and why.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class UnsnappedPiece
{
    internal UnsnappedPiece(ChipId? chip, Layer layer, Point place, string reason)
    {
        Chip = chip;
        Layer = layer;
        Place = place;
        Reason = reason;
    }

    /// <summary>The chip; null if it is a line.</summary>
    public ChipId? Chip { get; }

    /// <summary>The layer that it is drawn on.</summary>
    public Layer Layer { get; }

    /// <summary>Where it would have been spoilt: a place on the piece as it was.</summary>
    public Point Place { get; }

    /// <summary>What would have become of it, as a sentence.</summary>
    public string Reason { get; }

    /// <summary>Returns the piece, the place and the reason, for messages.</summary>
    public override string ToString() =>
        $"{(Chip is { } chip ? $"Chip {chip}" : $"A line of {Layer}")} at {Place}: {Reason}";
}
