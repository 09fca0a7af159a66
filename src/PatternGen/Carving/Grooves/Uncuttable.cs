namespace PatternGen;

/// <summary>What becomes of chips and line cuts that a bit can't cut.</summary>
public enum Uncuttable
{
    /// <summary>They are an error that says which, why, and what would work. The default.</summary>
    Refuse,

    /// <summary>They are left out, and <see cref="GroovePaths.LeftOut"/> says which and why.</summary>
    LeaveOut,
}
