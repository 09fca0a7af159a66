using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>Sample boards filled with a lattice.</summary>
internal static class FieldPieces
{
    private static readonly Contour Wood = Contour.Rectangle(new(0, 0), new(90, 70));
    private static readonly Contour Room = Contour.Rectangle(new(7, 7), new(83, 63));

    internal static IReadOnlyList<(Pattern Pattern, string Words)> All =>
        [
            (Board(room => room.Triangles(8)), "Triangles, whole cells"),
            (Board(room => room.Squares(9).Divided(CellDivision.FromCentre)), "Squares in four"),
            (Board(room => room.Diamonds(8, 12).ClippedCells()), "Diamonds, clipped"),
            (Board(room => room.Hexagons(6).ShrunkCells()), "Hexagons, shrunk at the edge"),
            (Board(room => room.Circles(10)), "Overlapping circles"),
            (Board(room => room.Scales(12)), "Scales"),
            (Board(room => room.BasketWeave(4)), "Basket weave"),
            (Board(room => room.Hourglasses(10)), "Hourglasses"),
            (
                Board(room =>
                    room.Squares(19).Cells(Rosette.Petals(6, 8.5).Carve(part => part.IsPetal))
                ),
                "A rosette in each cell"
            ),
        ];

    private static Pattern Board(Func<Field, Pattern> fill) =>
        Pattern.OfStock(Wood).With(fill(Field.Within(Room)));
}
