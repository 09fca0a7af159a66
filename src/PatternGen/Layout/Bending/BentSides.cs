namespace PatternGen;

/// <summary>What becomes of the straight slanted sides of chips when a band is bent.</summary>
public enum BentSides
{
    /// <summary>They stay straight, from corner to corner, as a knife cuts them. The default.</summary>
    Straight,

    /// <summary>They follow the curve as the whole band does: arcs that meet smoothly, to an accuracy.</summary>
    Following,
}
