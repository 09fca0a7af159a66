namespace PatternGen;

/// <summary>How the motifs in the corners of a frame are turned.</summary>
public enum FrameTurn
{
    /// <summary>Their upper edge points to the corner, along the line that halves it. The default.</summary>
    ToTheCorner,

    /// <summary>They stand upright, as drawn.</summary>
    Upright,
}
