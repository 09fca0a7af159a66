namespace PatternGen;

/// <summary>Which ends of a piece of wood are end grain, where chips break out more easily.</summary>
public enum EndGrain
{
    /// <summary>Both: a board sawn to length. The default.</summary>
    AtBothEnds,

    /// <summary>Neither, as where both ends are capped or run into a joint.</summary>
    AtNoEnd,

    /// <summary>Only the end from which the grain is measured: the left one where the grain runs along x.</summary>
    AtFirstEnd,

    /// <summary>Only the end towards which the grain is measured: the right one where the grain runs along x.</summary>
    AtLastEnd,
}
