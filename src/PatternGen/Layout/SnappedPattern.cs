using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A pattern with its corners on the points of a grid, and what that did to it.</summary>
/// <remarks>Worked out when first needed. Immutable and safe to share between threads.</remarks>
public sealed class SnappedPattern : Pattern
{
    private readonly Lazy<PatternSnap> _snap;

    internal SnappedPattern(Pattern original, ISnapGrid grid)
    {
        Original = original;
        SnapGrid = grid;
        _snap = new(() => PatternSnap.Of(original, grid));
    }

    /// <summary>The pattern as it was.</summary>
    public Pattern Original { get; }

    /// <inheritdoc/>
    public override string? Name => Original.Name;

    /// <summary>How far the corner that moved most was moved, in mm.</summary>
    public double LargestMove => _snap.Value.LargestMove;

    /// <summary>What was left as it was, because snapping would have spoilt it; empty if all went well.</summary>
    public IReadOnlyList<UnsnappedPiece> LeftAlone => _snap.Value.LeftAlone;

    internal ISnapGrid SnapGrid { get; }

    internal override IEnumerable<string> Facts(Wording words) =>
        Original
            .Facts(words)
            .Append(words.Snapped(LargestMove, LeftAlone.Count, _snap.Value.PieceCount));

    private protected override PatternNode Draw() => _snap.Value.Root;
}
