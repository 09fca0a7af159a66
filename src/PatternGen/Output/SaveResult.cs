namespace PatternGen;

/// <summary>What was written.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class SaveResult
{
    private readonly Lazy<double> _sharedLength;

    internal SaveResult(Pattern pattern)
    {
        ChipCount = pattern.ChipCount;
        _sharedLength = new(() => ChipSides.SharedLength(pattern));
    }

    /// <summary>Number of chips in the pattern.</summary>
    public long ChipCount { get; }

    /// <summary>
    /// Millimetres of side that neighbouring chips have in common. Drawn twice with <see cref="SharedSides.Closed"/>,
    /// once with <see cref="SharedSides.Once"/>. Worked out when first asked for.
    /// </summary>
    public double SharedLength => _sharedLength.Value;
}
