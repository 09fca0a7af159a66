namespace PatternGen;

internal sealed partial class CellLattice
{
    /// <summary>Thirds of the side, so that the centres of triangles are points too.</summary>
    internal static CellLattice OfTriangles(LatticeSizes sizes) =>
        new(sizes)
        {
            A = new(sizes.Width / 3, 0),
            B = new(sizes.Width / 6, sizes.Width * Math.Sqrt(3) / 6),
            P = (3, 0),
            Q = (0, 3),
            Kinds =
            [
                CellKind.Plain(new(1, 1), new(0, 0), new(3, 0), new(0, 3)),
                CellKind.Plain(new(2, 2), new(3, 3), new(0, 3), new(3, 0)),
            ],
            Corner = new(0, 0),
            Centre = new(1, 1),
            Middle = FieldPoint.Corner,
            Checkers = new(0, 0, 0, 1),
            Columns = new(2, 1, 0, 1),
        };

    internal static CellLattice OfSquares(LatticeSizes sizes) =>
        new(sizes)
        {
            A = new(sizes.Width / 2, 0),
            B = new(0, sizes.Width / 2),
            P = (2, 0),
            Q = (0, 2),
            Kinds = [Square(0, 0)],
            Corner = new(0, 0),
            Centre = new(1, 1),
        };

    internal static CellLattice OfDiamonds(LatticeSizes sizes) =>
        new(sizes)
        {
            A = new(sizes.Width / 2, 0),
            B = new(0, sizes.Height / 2),
            P = (1, 1),
            Q = (-1, 1),
            Kinds = [CellKind.Plain(new(0, 0), new(1, 0), new(0, 1), new(-1, 0), new(0, -1))],
            Corner = new(0, -1),
            Centre = new(0, 0),
            Rows = new(1, 1),
            Columns = new(1, -1),
        };

    internal static CellLattice OfHexagons(LatticeSizes sizes) =>
        new(sizes)
        {
            A = new(sizes.Width, 0),
            B = new(sizes.Width / 2, sizes.Width * Math.Sqrt(3) / 2),
            P = (2, -1),
            Q = (1, 1),
            Kinds =
            [
                CellKind.Plain(
                    new(0, 0),
                    new(0, -1),
                    new(1, -1),
                    new(1, 0),
                    new(0, 1),
                    new(-1, 1),
                    new(-1, 0)
                ),
            ],
            Corner = new(0, -1),
            Centre = new(0, 0),
            Columns = new(1, 1),
        };

    /// <summary>A strip is as long as all strips of its cell are wide.</summary>
    internal static CellLattice OfBasketWeave(LatticeSizes sizes)
    {
        var n = sizes.Strips;
        // Whole strips would do for corners; halves make the centres of cells points too.
        var upright = new CellKind(
            Box(0, 0, 2 * n, 2 * n),
            new(n, n),
            [.. Enumerable.Range(0, n).Select(k => Box(2 * k, 0, 2 * k + 2, 2 * n))]
        );
        var level = upright with
        {
            Parts = [.. Enumerable.Range(0, n).Select(k => Box(0, 2 * k, 2 * n, 2 * k + 2))],
        };
        return new(sizes)
        {
            A = new(sizes.Width / 2, 0),
            B = new(0, sizes.Width / 2),
            P = (4 * n, 0),
            Q = (2 * n, 2 * n),
            Kinds = [upright, level.Moved(2 * n, 0)],
            Corner = new(0, 0),
            Centre = new(n, n),
            Checkers = new(0, 0, 0, 1),
            Threes = new(2, -1, 0, 1),
            Columns = new(2, 1, 0, 1),
        };
    }

    internal static CellLattice OfHourglasses(LatticeSizes sizes)
    {
        var upright = new CellKind(
            Box(0, 0, 2, 2),
            new(1, 1),
            [new(0, 0), new(2, 0), new(1, 1)],
            [new(2, 2), new(0, 2), new(1, 1)]
        );
        var level = upright with
        {
            Parts =
            [
                [new(2, 0), new(2, 2), new(1, 1)],
                [new(0, 2), new(0, 0), new(1, 1)],
            ],
        };
        var byTurns = sizes.Turn == HourglassTurn.ByTurns;
        return new(sizes)
        {
            A = new(sizes.Width / 2, 0),
            B = new(0, sizes.Height / 2),
            P = byTurns ? (4, 0) : (2, 0),
            Q = byTurns ? (2, 2) : (0, 2),
            Kinds = byTurns
                ? [upright, level.Moved(2, 0)]
                : [sizes.Turn == HourglassTurn.Level ? level : upright],
            Corner = new(0, 0),
            Centre = new(1, 1),
            Checkers = byTurns ? new(0, 0, 0, 1) : new(1, 1),
            Threes = byTurns ? new(2, -1, 0, 1) : new(1, -1),
            Columns = byTurns ? new(2, 1, 0, 1) : new(1, 0),
        };
    }

    private static CellKind Square(int i, int j) =>
        CellKind.Plain(new(i + 1, j + 1), Box(i, j, i + 2, j + 2));

    private static CellCorner[] Box(int left, int low, int right, int high) =>
        [new(left, low), new(right, low), new(right, high), new(left, high)];
}
