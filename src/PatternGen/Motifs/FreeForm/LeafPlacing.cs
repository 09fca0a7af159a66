namespace PatternGen;

/// <summary>How leaves stand on a stem.</summary>
public enum LeafPlacing
{
    /// <summary>One at a time, left and right in turn.</summary>
    Alternating,

    /// <summary>In pairs, left and right at the same place.</summary>
    Opposite,
}
