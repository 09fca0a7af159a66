namespace PatternGen;

/// <summary>Which sides of a butted frame run through.</summary>
public enum FrameThrough
{
    /// <summary>The left and the right one, as the stiles of a door do. The default.</summary>
    Upright,

    /// <summary>The lower and the upper one.</summary>
    Level,
}
