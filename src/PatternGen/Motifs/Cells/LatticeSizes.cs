namespace PatternGen;

/// <summary>What a lattice of cells is made from.</summary>
/// <param name="Family">What kind of lattice.</param>
/// <param name="Width">Side, width, radius, or the width of a strip, in mm.</param>
/// <param name="Height">The other size in mm; as the first where there is but one.</param>
/// <param name="Strips">Number of strips in each cell of a basket weave.</param>
/// <param name="Parts">Which parts between circles are carved.</param>
/// <param name="Turn">How hourglasses stand.</param>
internal sealed record LatticeSizes(
    FieldLattice Family,
    double Width,
    double Height,
    int Strips = 1,
    CircleParts Parts = CircleParts.Petals,
    HourglassTurn Turn = HourglassTurn.ByTurns
)
{
    internal LatticeSizes Scaled(double factor) =>
        this with
        {
            Width = Width * factor,
            Height = Height * factor,
        };

    internal CellLattice ToLattice() =>
        Family switch
        {
            FieldLattice.Triangles => CellLattice.OfTriangles(this),
            FieldLattice.Squares => CellLattice.OfSquares(this),
            FieldLattice.Diamonds => CellLattice.OfDiamonds(this),
            FieldLattice.Hexagons => CellLattice.OfHexagons(this),
            FieldLattice.Circles => CellLattice.OfCircles(this),
            FieldLattice.CirclesOnSquares => CellLattice.OfCirclesOnSquares(this),
            FieldLattice.Scales => CellLattice.OfScales(this),
            FieldLattice.BasketWeave => CellLattice.OfBasketWeave(this),
            _ => CellLattice.OfHourglasses(this),
        };
}
