namespace PatternGen;

/// <summary>Which way the triangles of a row point.</summary>
public enum Pointing
{
    /// <summary>The base stands on the lower rule, the tip touches the upper one.</summary>
    Up,

    /// <summary>The base hangs from the upper rule, the tip touches the lower one.</summary>
    Down,
}
