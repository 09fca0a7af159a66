namespace PatternGen;

/// <summary>How much a finding matters.</summary>
public enum FindingSeverity
{
    /// <summary>Good to know when cutting; nothing is wrong.</summary>
    Note,

    /// <summary>Common practice avoids it: it can be cut, but with care, or it may not last.</summary>
    Warning,

    /// <summary>It cannot be cut as drawn, or would spoil the piece.</summary>
    Error,
}
