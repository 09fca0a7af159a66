namespace PatternGen;

/// <summary>Where something lies that may cross the edge of a field.</summary>
internal enum EdgePlace
{
    /// <summary>Wholly inside; it may touch the edge.</summary>
    Inside,

    /// <summary>Wholly outside; it may touch the edge.</summary>
    Outside,

    /// <summary>Partly inside.</summary>
    Crossing,
}
