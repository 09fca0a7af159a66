namespace PatternGen;

/// <summary>A side of the way from one point to another.</summary>
public enum LineSide
{
    /// <summary>On the left hand.</summary>
    Left,

    /// <summary>On the right hand.</summary>
    Right,
}
