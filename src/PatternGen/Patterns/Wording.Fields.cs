namespace PatternGen;

public partial class Wording
{
    /// <summary>What a field is called: <c>Field of triangles, side 8 mm, 200 × 150 mm</c>.</summary>
    /// <param name="lattice">What it is filled with.</param>
    /// <param name="width">The lattice's size: the side, the width, the radius, or the width of a strip, in mm.</param>
    /// <param name="height">The other size in mm, of a lattice that has two; else as the first.</param>
    /// <param name="strips">Number of strips in each cell of a basket weave; else 1.</param>
    /// <param name="fieldWidth">Width of the field's outline in mm.</param>
    /// <param name="fieldHeight">Height of the field's outline in mm.</param>
    public virtual string Field(
        FieldLattice lattice,
        double width,
        double height,
        int strips,
        double fieldWidth,
        double fieldHeight
    )
    {
        var what = lattice switch
        {
            FieldLattice.Triangles => $"triangles, side {Millimetres(width)}",
            FieldLattice.Squares => $"squares, side {Millimetres(width)}",
            FieldLattice.Diamonds => $"diamonds {Size(width, height)}",
            FieldLattice.Hexagons => $"hexagons, side {Millimetres(width)}",
            FieldLattice.Circles => $"overlapping circles, radius {Millimetres(width)}",
            FieldLattice.CirclesOnSquares =>
                $"overlapping circles on squares, radius {Millimetres(width)}",
            FieldLattice.Scales => $"scales {Size(width, height)}",
            FieldLattice.BasketWeave => $"basket weave, {strips} strips {Millimetres(width)} wide",
            _ => $"hourglasses {Size(width, height)}",
        };
        return $"Field of {what}, {Size(fieldWidth, fieldHeight)}";
    }

    /// <summary>What stands in the cells of a field that holds motifs: <c>6 petals, radius 9 mm, in each cell</c>.</summary>
    /// <param name="motifs">What the motifs are called.</param>
    public virtual string FieldMotifs(IReadOnlyList<string> motifs) =>
        motifs.Count == 1
            ? $"{motifs[0]}, in each cell"
            : $"by turns in the cells: {string.Join("; ", motifs)}";

    /// <summary>
    /// How the cells of a field came out: <c>612 cells whole, 48 clipped, 12 left out at the edge, 78.3 % of the area
    /// carved</c>.
    /// </summary>
    /// <param name="whole">Cells that lie inside as they are.</param>
    /// <param name="clipped">Cells clipped at the edge.</param>
    /// <param name="shrunk">Cells drawn smaller at the edge.</param>
    /// <param name="leftOut">Cells at the edge without any chip.</param>
    /// <param name="share">Share of the outline's area that chips cover, from 0 to 1.</param>
    public virtual string FieldFit(int whole, int clipped, int shrunk, int leftOut, double share)
    {
        List<string> parts = [$"{whole} {(whole == 1 ? "cell" : "cells")} whole"];
        if (clipped > 0)
            parts.Add($"{clipped} clipped");
        if (shrunk > 0)
            parts.Add($"{shrunk} drawn smaller");
        if (leftOut > 0)
            parts.Add($"{leftOut} left out at the edge");
        parts.Add($"{Number(100 * share, 1)} % of the area carved");
        return string.Join(", ", parts);
    }

    /// <summary>What clipped chips were dropped: <c>7 slivers narrower than 2 mm dropped, 3.2 mm² in all</c>.</summary>
    /// <param name="slivers">How many.</param>
    /// <param name="narrowest">The width in mm that they fall short of.</param>
    /// <param name="area">Area of all of them in mm².</param>
    public virtual string FieldSlivers(int slivers, double narrowest, double area) =>
        $"{slivers} {(slivers == 1 ? "sliver" : "slivers")} narrower than {Millimetres(narrowest)} dropped, {Number(area, 1)} mm² in all";

    /// <summary>What cells were too small to be drawn smaller: <c>cells under 0.4 of their size left out</c>.</summary>
    /// <param name="smallest">The smallest size, as a share of the whole one.</param>
    public virtual string FieldSmallest(double smallest) =>
        $"cells that would be under {Number(100 * smallest, 1)} % of their size left out";
}
