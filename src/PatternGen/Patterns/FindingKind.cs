namespace PatternGen;

/// <summary>What an inspection finds at a chip, or between chips.</summary>
public enum FindingKind
{
    /// <summary>A chip reaches beyond the wood. Value: by how many mm. Limit: 0.</summary>
    OffStock,

    /// <summary>Two chips cut away the same wood. Value: the least move in mm that parts them. Limit: 0.</summary>
    ChipsOverlap,

    /// <summary>Too little wood stays below the deepest point. Value: the floor left, in mm. Limit: the least.</summary>
    TooDeepForStock,

    /// <summary>A chip is deeper than the blade reaches. Value: its depth in mm. Limit: the reach.</summary>
    BeyondReach,

    /// <summary>A chip is wider than the bit. Value: its width in mm. Limit: the bit's diameter.</summary>
    WiderThanBit,

    /// <summary>A chip is deeper than is comfortable to cut. Value: its depth in mm. Limit: the comfortable depth.</summary>
    OverComfortableDepth,

    /// <summary>A chip is too narrow to be cut cleanly. Value: its width in mm. Limit: the least.</summary>
    TooNarrow,

    /// <summary>A chip ends in too sharp a tip. Value: its angle in degrees. Limit: the least.</summary>
    TipTooSharp,

    /// <summary>A side that curves into the chip is tighter than the blade follows. Value: its radius in mm. Limit: the least.</summary>
    HollowTooTight,

    /// <summary>
    /// The ridge between two chips is thin, but not sharp. Value: its width in mm. Limit: the least, which is more where
    /// the ridge runs across the grain.
    /// </summary>
    RidgeTooThin,

    /// <summary>Ground that comes to a thin point lies across the grain, so that it may break out. Value: its angle in degrees. Limit: the least.</summary>
    ShortGrain,

    /// <summary>Many tips meet in one place. Value: how many. Limit: the most without a plain centre.</summary>
    TipsMeeting,

    /// <summary>A chip comes near the edge of the wood. Value: the wood left, in mm. Limit: the least, which is more at end grain.</summary>
    NearEdge,

    /// <summary>A chip about as high as the space between two ruled lines falls short of one of them, or crosses it. Value: by how many mm, negative if it falls short. Limit: the most either way.</summary>
    OffRuledLine,

    /// <summary>The walls of a wide chip are flatter than the knife is held, to keep it from getting too deep. Value: their angle in degrees. Limit: the angle that the knife is held at.</summary>
    WallsFlattened,
}
