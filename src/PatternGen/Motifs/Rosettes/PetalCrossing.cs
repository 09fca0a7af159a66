namespace PatternGen;

/// <summary>What becomes of petals where they lie over others.</summary>
public enum PetalCrossing
{
    /// <summary>All petals are drawn whole, through each other.</summary>
    Whole,

    /// <summary>Later petals stop at the outlines of earlier ones, as if they lay behind them.</summary>
    Stopped,
}
