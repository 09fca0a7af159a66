namespace PatternGen;

/// <summary>What was written.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class SaveResult
{
    private readonly Lazy<double> _sharedLength;
    private readonly Lazy<RepeatedLines> _repeated;
    private readonly Lazy<int> _leftOut;

    internal SaveResult(Pattern pattern, SaveOptions options)
    {
        ChipCount = pattern.ChipCount;
        _sharedLength = new(() => ChipSides.SharedLength(pattern));
        _repeated = new(() => LineSides.Repeated(pattern));
        _leftOut = new(() => Vanishing.CountSpecks(pattern, options.Decimals));
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
    public double RepeatedLength => _repeated.Value.Length;

    /// <summary>
    /// Number of stretches and outlines that <see cref="RepeatedLength"/> is the length of: what files for a machine leave
    /// out because it is drawn already. Worked out when first asked for.
    /// </summary>
    public int RepeatedCount => _repeated.Value.Count;

    /// <summary>
    /// Number of layout lines, line cuts and strokes of labels that are shorter than the last two units of the file's
    /// decimals (0.000002 mm by default) and so left out. A chip, hole or outline that small is an error instead. Worked
    /// out when first asked for.
    /// </summary>
    public int LeftOut => _leftOut.Value;
}
