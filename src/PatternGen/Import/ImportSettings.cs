using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How a drawing is read from a file.</summary>
/// <remarks>Each method returns a changed copy. Immutable and safe to share between threads.</remarks>
public sealed class ImportSettings
{
    /// <summary>The widest gap in mm that can be asked to be joined: wider ones are no slips of a drawing.</summary>
    internal const double MostJoined = 10;

    private ImportSettings() { }

    private ImportSettings(ImportSettings other)
    {
        Accuracy = other.Accuracy;
        JoinWithin = other.JoinWithin;
        Unit = other.Unit;
        Layers = other.Layers;
        Limits = other.Limits;
    }

    /// <summary>Accuracy 0.01 mm, ends joined within 0.01 mm, the file's own unit, all layers, the usual limits.</summary>
    public static ImportSettings Default { get; } = new();

    /// <summary>How far arcs may lie off a free curve of the file, in mm. Default 0.01.</summary>
    public double Accuracy { get; private init; } = 0.01;

    /// <summary>Loose ends at most this far apart are joined, in mm. Default 0.01.</summary>
    public double JoinWithin { get; private init; } = 0.01;

    /// <summary>How many millimetres one unit of the file is, whatever the file says; null, the default, for what the file says.</summary>
    public double? Unit { get; private init; }

    /// <summary>The layers that are read; null, the default, for all.</summary>
    public IReadOnlyList<string>? Layers { get; private init; }

    /// <summary>What a file may ask of the reader. Default <see cref="ImportLimits.Default"/>.</summary>
    public ImportLimits Limits { get; private init; } = ImportLimits.Default;

    /// <summary>Returns settings with another accuracy of free curves.</summary>
    /// <param name="accuracy">In mm, from 0.0001 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public ImportSettings WithAccuracy(double accuracy) =>
        new(this) { Accuracy = Guard.Within(accuracy, 1e-4, 1) };

    /// <summary>Returns settings that join loose ends at most so far apart.</summary>
    /// <param name="distance">In mm, from 0 to 10; 0 joins only ends that are the same point but for rounding.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public ImportSettings WithJoinWithin(double distance) =>
        new(this) { JoinWithin = Guard.Within(distance, 0, MostJoined) };

    /// <summary>Returns settings that take one unit of the file for a number of millimetres, whatever the file says.</summary>
    /// <param name="millimetres">From 1e-6 to 1e6; 25.4 for a drawing in inches.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public ImportSettings WithUnit(double millimetres) =>
        new(this) { Unit = Guard.Within(millimetres, 1e-6, 1e6) };

    /// <summary>Returns settings that read some layers only.</summary>
    /// <param name="layers">Their names, upper or lower case alike: of an SVG the ids, labels or titles of groups. At least one.
    /// One that a file does not have is an <see cref="ImportException"/> there, which names those that it has.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    [Pure]
    public ImportSettings WithLayers(params string[] layers)
    {
        string[] names = [.. Guard.NotNull(layers).Select(name => Guard.NotNull(name))];
        return names.Length > 0
            ? new(this) { Layers = names }
            : throw new ArgumentException("Name at least one layer.", nameof(layers));
    }

    /// <summary>Returns settings with other limits.</summary>
    [Pure]
    public ImportSettings WithLimits(ImportLimits limits) =>
        new(this) { Limits = Guard.NotNull(limits) };
}
