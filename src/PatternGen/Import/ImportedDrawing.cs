using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A drawing read from a file: its closed and open curves as lines and arcs, in millimetres and y up, and what the reader had to say.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed partial class ImportedDrawing
{
    private readonly Contour[] _contours;
    private readonly Chain[] _chains;
    private readonly Lazy<GapFinder> _gaps;

    internal ImportedDrawing(
        IEnumerable<Contour> contours,
        IEnumerable<Chain> chains,
        IReadOnlyList<ImportNote> notes,
        double accuracy,
        double unit
    )
    {
        _contours = [.. contours];
        _chains = [.. chains];
        _gaps = new(() => new GapFinder(_chains));
        Notes = notes;
        Accuracy = accuracy;
        Unit = unit;
    }

    /// <summary>The closed curves, in the order of the file, each as it runs there.</summary>
    public IReadOnlyList<Contour> Contours => _contours;

    /// <summary>The open curves, in the order of the file.</summary>
    public IReadOnlyList<Chain> Chains => _chains;

    /// <summary>What was skipped, taken for granted or changed, and where.</summary>
    public IReadOnlyList<ImportNote> Notes { get; }

    /// <summary>
    /// Where the open curves end, and how far it is from there to the nearest other loose end, the narrowest gap first: what
    /// may have been meant to close. Of more than a thousand open curves, the longest thousand are looked at.
    /// </summary>
    public IReadOnlyList<ImportGap> Gaps => _gaps.Value.Gaps;

    /// <summary>How far the curves may lie off those of the file, in mm.</summary>
    public double Accuracy { get; }

    /// <summary>How many millimetres one unit of the file was taken for.</summary>
    public double Unit { get; }

    /// <summary>The smallest upright rectangle that holds all curves; null if there are none.</summary>
    public Extents? Extents
    {
        get
        {
            Extents? all = null;
            foreach (var run in _contours.Concat<SegmentRun>(_chains))
                all = all?.Including(run.Extents) ?? run.Extents;
            return all;
        }
    }

    /// <summary>Returns how many curves there are, for messages: <c>3 closed and 2 open curves</c>.</summary>
    public override string ToString() =>
        FormattableString.Invariant(
            $"{_contours.Length} closed and {_chains.Length} open {(_contours.Length + _chains.Length == 1 ? "curve" : "curves")}"
        );
}
