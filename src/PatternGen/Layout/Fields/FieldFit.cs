namespace PatternGen;

/// <summary>How the cells of a field came out.</summary>
/// <remarks>Cells that are left standing by choice are not counted. Immutable and safe to share between threads.</remarks>
public sealed class FieldFit
{
    internal FieldFit(
        (int Whole, int Clipped, int Shrunk, int LeftOut) cells,
        (int Count, double Narrowest, double Area) slivers,
        double carvedArea,
        double fieldArea
    )
    {
        (WholeCells, ClippedCells, ShrunkCells, LeftOutCells) = cells;
        (Slivers, Narrowest, SliverArea) = slivers;
        CarvedArea = carvedArea;
        FieldArea = fieldArea;
    }

    /// <summary>Cells that lie inside as they are.</summary>
    public int WholeCells { get; }

    /// <summary>Cells of which the edge cut something off, and of which some chip is left.</summary>
    public int ClippedCells { get; }

    /// <summary>Cells that were drawn smaller to lie inside.</summary>
    public int ShrunkCells { get; }

    /// <summary>Cells that cross the edge and have no chip.</summary>
    public int LeftOutCells { get; }

    /// <summary>Clipped chips that were dropped because they are narrower than <see cref="Narrowest"/>.</summary>
    public int Slivers { get; }

    /// <summary>Clipped chips are dropped whose largest circle is narrower than this, in mm.</summary>
    public double Narrowest { get; }

    /// <summary>Area in mm² of the clipped chips that were dropped.</summary>
    public double SliverArea { get; }

    /// <summary>Area in mm² of all chips.</summary>
    public double CarvedArea { get; }

    /// <summary>Area in mm² of the field's outline, holes taken off.</summary>
    public double FieldArea { get; }

    /// <summary>Share of the outline's area that chips cover, from 0 to 1.</summary>
    public double CarvedShare => CarvedArea / FieldArea;

    /// <summary>Returns the fit in words: <c>612 cells whole, 48 clipped, 12 left out at the edge, 78.3 % of the area carved</c>.</summary>
    /// <param name="wording">The language; English by default.</param>
    public string InWords(Wording? wording = null)
    {
        var words = wording ?? Wording.English;
        var fit = words.FieldFit(WholeCells, ClippedCells, ShrunkCells, LeftOutCells, CarvedShare);
        return Slivers == 0 ? fit : $"{fit}; {words.FieldSlivers(Slivers, Narrowest, SliverArea)}";
    }

    /// <summary>Returns the fit in English words.</summary>
    public override string ToString() => InWords();
}
