using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>Sample boards filled with a lattice.</summary>
internal static class FieldPieces
{
    private static readonly Contour Wood = Contour.Rectangle(new(0, 0), new(90, 72));
    private static readonly Contour Room = Contour.Rectangle(new(9, 9), new(81, 63));

    internal static IReadOnlyList<(Pattern Pattern, string Words)> All =>
        [
            (Board(room => room.Triangles(8)), "Triangles, whole cells"),
            (Board(room => room.Squares(9).Divided(CellDivision.FromCentre)), "Squares in four"),
            (Board(room => room.Diamonds(9, 13.5)), "Diamonds"),
            (Board(room => room.Hexagons(6).ClippedCells()), "Hexagons, clipped"),
            (Board(room => room.Circles(9)), "Overlapping circles"),
            (Board(room => room.Scales(12)), "Scales"),
            (Board(room => room.BasketWeave(6)), "Basket weave"),
            (Board(room => room.Hourglasses(9)), "Hourglasses"),
            (
                Board(room =>
                    room.Squares(18).Cells(Rosette.Petals(6, 8).Carve(part => part.IsPetal))
                ),
                "A rosette in each cell"
            ),
        ];

    private static Pattern Board(Func<Field, Pattern> fill) =>
        Pattern.OfStock(Wood).With(fill(Field.Within(Room)));
}
