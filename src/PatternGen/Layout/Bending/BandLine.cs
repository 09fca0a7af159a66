namespace PatternGen;

/// <summary>A line along a band.</summary>
public enum BandLine
{
    /// <summary>Half-way between the lowest and the highest rule. The default.</summary>
    Middle,

    /// <summary>The lowest rule.</summary>
    LowerEdge,

    /// <summary>The highest rule.</summary>
    UpperEdge,
}
