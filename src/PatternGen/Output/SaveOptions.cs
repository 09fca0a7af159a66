using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How a pattern is written. Immutable; each With… method returns a changed copy.</summary>
public sealed class SaveOptions
{
    internal const int MaxDecimals = 9;

    private SaveOptions() { }

    private SaveOptions(SaveOptions other)
    {
        SharedSides = other.SharedSides;
        Repeats = other.Repeats;
        Decimals = other.Decimals;
        DxfVersion = other.DxfVersion;
        Wording = other.Wording;
    }

    /// <summary>Closed chips, each written out, six decimals, DXF release 2000, English.</summary>
    public static SaveOptions Default { get; } = new();

    /// <summary>How sides are drawn that neighbouring chips have in common. Default <see cref="SharedSides.Closed"/>.</summary>
    public SharedSides SharedSides { get; private init; } = SharedSides.Closed;

    /// <summary>How chips are written that are drawn more than once. Default <see cref="Repeats.InFull"/>.</summary>
    public Repeats Repeats { get; private init; } = Repeats.InFull;

    /// <summary>Decimals of a coordinate in mm. Default 6, a millionth of a millimetre.</summary>
    public int Decimals { get; private init; } = 6;

    /// <summary>The dialect of DXF. Default <see cref="DxfVersion.R2000"/>.</summary>
    public DxfVersion DxfVersion { get; private init; } = DxfVersion.R2000;

    /// <summary>The words that are printed. Default English.</summary>
    public Wording Wording { get; private init; } = Wording.English;

    /// <summary>Returns a copy that draws shared sides as given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public SaveOptions WithSharedSides(SharedSides sharedSides) =>
        new(this) { SharedSides = Guard.Defined(sharedSides) };

    /// <summary>Returns a copy that writes repeated chips as given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public SaveOptions WithRepeats(Repeats repeats) =>
        new(this) { Repeats = Guard.Defined(repeats) };

    /// <summary>Returns a copy with the given number of decimals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 3 or more than 9 decimals.</exception>
    [Pure]
    public SaveOptions WithDecimals(int decimals) =>
        new(this) { Decimals = Guard.Within(decimals, 3, MaxDecimals) };

    /// <summary>Returns a copy that writes the given dialect of DXF.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public SaveOptions WithDxfVersion(DxfVersion version) =>
        new(this) { DxfVersion = Guard.Defined(version) };

    /// <summary>Returns a copy that prints other words.</summary>
    [Pure]
    public SaveOptions WithWording(Wording wording) =>
        new(this) { Wording = Guard.NotNull(wording) };
}
