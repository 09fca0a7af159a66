namespace PatternGen;

/// <summary>How the cells of a field are divided into chips.</summary>
public enum CellDivision
{
    /// <summary>Each cell is a chip. The default.</summary>
    Whole,

    /// <summary>From the centre of each cell a chip to each of its sides: a square is four triangles.</summary>
    FromCentre,

    /// <summary>As <see cref="FromCentre"/>, with every second chip left standing: a hexagon is three triangles tip to tip.</summary>
    EverySecondFromCentre,
}
