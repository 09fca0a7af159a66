namespace PatternGen;

/// <summary>The hand that holds the knife.</summary>
public enum Hand
{
    /// <summary>The default.</summary>
    Right,

    /// <summary>All directions and turns are those of a right-handed carver, mirrored.</summary>
    Left,
}
