namespace PatternGen;

/// <summary>What was written.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class SaveResult
{
    private readonly Lazy<double> _sharedLength;
    private readonly Lazy<double> _repeatedLength;

    internal SaveResult(Pattern pattern)
    {
        ChipCount = pattern.ChipCount;
        _sharedLength = new(() => ChipSides.SharedLength(pattern));
        _repeatedLength = new(() => LineSides.RepeatedLength(pattern));
    }

    /// <summary>Number of chips in the pattern.</summary>
    public long ChipCount { get; }

    /// <summary>
    /// Millimetres of side that neighbouring chips have in common. Drawn twice with <see cref="SharedSides.Closed"/>,
    /// once with <see cref="SharedSides.Once"/>. Worked out when first asked for.
    /// </summary>
    public double SharedLength => _sharedLength.Value;

    /// <summary>
    /// Millimetres of layout line, line cut and outline of the wood that lie on others of their kind. Files for
    /// a machine hold them once, so that it goes over no line twice. Worked out when first asked for.
    /// </summary>
    public double RepeatedLength => _repeatedLength.Value;
}
