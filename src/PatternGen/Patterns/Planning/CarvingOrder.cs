namespace PatternGen;

/// <summary>In which order a plan takes the cuts.</summary>
public enum CarvingOrder
{
    /// <summary>One chip after the other, the largest first, by the wood that is taken out.</summary>
    ByChip,

    /// <summary>All cuts that run one way, then the board is turned for the next way: the fewest turns.</summary>
    ByPasses,
}
