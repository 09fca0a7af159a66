namespace PatternGen;

/// <summary>How the two ends of a band match.</summary>
public enum EndMatch
{
    /// <summary>They differ.</summary>
    Different,

    /// <summary>Each is the other's mirror image.</summary>
    Alike,

    /// <summary>Turned round by half a turn, each looks as the other did.</summary>
    AlikeByHalfTurn,
}
