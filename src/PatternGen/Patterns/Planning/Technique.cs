namespace PatternGen;

/// <summary>With which cuts chips are taken out.</summary>
public enum Technique
{
    /// <summary>One leaning cut along each side: three of a triangle, two of a petal. The default.</summary>
    ThreeCuts,

    /// <summary>The valleys are stabbed first, with the blade upright and its point in the deepest place; then each side is sliced.</summary>
    StabAndSlice,
}
