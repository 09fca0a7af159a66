using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A drawing read from a file: its closed and open curves as lines and arcs, in millimetres and y up, and what the reader had to say.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class ImportedDrawing
{
    private readonly Contour[] _contours;
    private readonly Chain[] _chains;

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

    /// <summary>How far the curves may lie off those of the file, in mm.</summary>
    public double Accuracy { get; }

    /// <summary>How many millimetres one unit of the file was taken for.</summary>
    public double Unit { get; }
}
