namespace PatternGen;

/// <summary>Which side of its chip a side is, as drawn: where the ground beyond it lies as seen from the chip; or which side of its hole.</summary>
public enum SideFacing
{
    /// <summary>The right side.</summary>
    Right,

    /// <summary>The upper right side.</summary>
    UpperRight,

    /// <summary>The upper side.</summary>
    Upper,

    /// <summary>The upper left side.</summary>
    UpperLeft,

    /// <summary>The left side.</summary>
    Left,

    /// <summary>The lower left side.</summary>
    LowerLeft,

    /// <summary>The lower side.</summary>
    Lower,

    /// <summary>The lower right side.</summary>
    LowerRight,
}
