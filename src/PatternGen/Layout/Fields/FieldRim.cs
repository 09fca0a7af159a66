namespace PatternGen;

/// <summary>What is done with cells that cross the edge of a field.</summary>
internal enum FieldRim
{
    /// <summary>They stay uncarved.</summary>
    WholeCells,

    /// <summary>What of them lies inside is carved.</summary>
    ClippedCells,

    /// <summary>They are drawn smaller, to lie inside.</summary>
    ShrunkCells,
}
