namespace PatternGen;

/// <summary>What one movement of the knife is.</summary>
public enum CutKind
{
    /// <summary>A leaning cut along a side, from tip to tip.</summary>
    Cut,

    /// <summary>The point is pressed in where the chip is deepest, with the blade upright, and drawn away from there.</summary>
    Stab,

    /// <summary>A leaning cut along a side that frees the wood between the stabs.</summary>
    Slice,
}
