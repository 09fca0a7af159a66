namespace PatternGen;

/// <summary>How hard to press.</summary>
public enum Pressure
{
    /// <summary>As the depth needs.</summary>
    Full,

    /// <summary>Less, in two or three passes if need be: on the other side of the ridge the wood is gone already.</summary>
    Light,
}
