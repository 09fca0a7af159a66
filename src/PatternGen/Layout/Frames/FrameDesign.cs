namespace PatternGen;

/// <summary>All that is asked of a frame's bands.</summary>
/// <param name="Rings">The bands, from the outside in.</param>
internal sealed record FrameDesign(IReadOnlyList<FrameRing> Rings)
{
    internal FrameCorner Corner { get; init; } = FrameCorner.Mitre;

    /// <summary>What is carved in the corners; null for what the treatment draws itself.</summary>
    internal Pattern? Motif { get; init; }

    /// <summary>Side of the corner block in mm; null for the width of the members.</summary>
    internal double? BlockSize { get; init; }

    /// <summary>Ground between block and bands in mm; null for as the treatment has it.</summary>
    internal double? Margin { get; init; }

    internal FrameTurn MotifTurn { get; init; } = FrameTurn.ToTheCorner;

    internal FrameThrough Through { get; init; } = FrameThrough.Upright;

    /// <summary>Radius at the outer edge round which bands bend, in mm; null for the wood's own.</summary>
    internal double? Radius { get; init; }

    internal bool SamePitch { get; init; }

    /// <summary>Whether leaning bands turn round at the middle of each side, so that the frame has the mirrors of its outline.</summary>
    internal bool Mirrored { get; init; } = true;

    /// <summary>Radius at the outer edge round which the bands bend on a frame, in mm; 0 if they turn the corners sharply.</summary>
    internal double BendRadiusOn(Frame frame) =>
        Corner == FrameCorner.Bent ? Radius ?? frame.CornerRadius : 0;

    /// <summary>The design with another innermost band.</summary>
    internal FrameDesign WithLast(FrameRing ring) =>
        this with
        {
            Rings = [.. Rings.SkipLast(1), ring],
        };
}
