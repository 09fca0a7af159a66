using System.Globalization;

namespace PatternGen;

/// <summary>The stable name of a chip in a pattern: its row and its place in that row, both counted from 1.</summary>
/// <remarks>
/// Rows count on through combined patterns, so an id is unique in its pattern and stays the same each time the same
/// pattern is made. Immutable and safe to share between threads. Ordered by row, then by place. The default value,
/// (0, 0), names no chip.
/// </remarks>
public readonly record struct ChipId : IComparable<ChipId>
{
    /// <summary>Creates an id.</summary>
    /// <param name="row">Row, from 1; the lowest row of a band comes first.</param>
    /// <param name="index">Place in the row, from 1; from left to right as drawn.</param>
    public ChipId(int row, int index)
    {
        Row = row;
        Index = index;
    }

    /// <summary>Row, from 1; the lowest row of a band comes first.</summary>
    public int Row { get; }

    /// <summary>Place in the row, from 1; from left to right as drawn.</summary>
    public int Index { get; }

    /// <inheritdoc/>
    public int CompareTo(ChipId other) =>
        Row != other.Row ? Row.CompareTo(other.Row) : Index.CompareTo(other.Index);

    /// <summary>Whether one id comes before another.</summary>
    public static bool operator <(ChipId a, ChipId b) => a.CompareTo(b) < 0;

    /// <summary>Whether one id comes after another.</summary>
    public static bool operator >(ChipId a, ChipId b) => a.CompareTo(b) > 0;

    /// <summary>Whether one id comes before another or is the same.</summary>
    public static bool operator <=(ChipId a, ChipId b) => a.CompareTo(b) <= 0;

    /// <summary>Whether one id comes after another or is the same.</summary>
    public static bool operator >=(ChipId a, ChipId b) => a.CompareTo(b) >= 0;

    /// <summary>Returns row and place as <c>2.17</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Row}.{Index}");
}
