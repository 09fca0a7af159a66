namespace PatternGen;

/// <summary>How the bands of a frame turn its corners.</summary>
public enum FrameCorner
{
    /// <summary>They run into each other and are cut by the line that halves the corner, in which they are mirror images. The default.</summary>
    Mitre,

    /// <summary>They stop at a motif in each corner.</summary>
    Block,

    /// <summary>They stop at a corner piece of their own: its rules are mitred, and each cell between them is halved by its diagonal into two chips.</summary>
    Wrapped,

    /// <summary>Two sides run through to the ends of the piece, and the other two stop against them.</summary>
    Butt,

    /// <summary>They bend round it.</summary>
    Bent,
}
