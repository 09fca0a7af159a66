namespace PatternGen;

/// <summary>A corner of a cell at a point of its lattice.</summary>
/// <param name="I">Number of first steps to it.</param>
/// <param name="J">Number of second steps to it.</param>
/// <param name="Bulge">Bulge of the side that starts there, counter-clockwise round the cell.</param>
internal readonly record struct CellCorner(int I, int J, double Bulge = 0);
