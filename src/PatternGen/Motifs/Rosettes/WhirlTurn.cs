namespace PatternGen;

/// <summary>Which way the curved radii of a whirl turn on their way from the centre to the rim.</summary>
public enum WhirlTurn
{
    /// <summary>To the left: counter-clockwise.</summary>
    Left,

    /// <summary>To the right: clockwise.</summary>
    Right,
}
