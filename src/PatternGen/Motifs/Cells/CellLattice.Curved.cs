namespace PatternGen;

internal sealed partial class CellLattice
{
    /// <summary>
    /// Petals along the sides of equilateral triangles, each of two arcs of 60 degrees about the tips of the triangles
    /// beside it. Sixths of the side, so that middles of sides and of triangles are points too.
    /// </summary>
    internal static CellLattice OfCircles(LatticeSizes sizes)
    {
        var bulge = Math.Tan(Math.PI / 12);
        CellKind[] petals =
        [
            CellKind.Plain(new(3, 0), new(0, 0, bulge), new(6, 0, bulge)),
            CellKind.Plain(new(0, 3), new(0, 0, bulge), new(0, 6, bulge)),
            CellKind.Plain(new(3, 3), new(6, 0, bulge), new(0, 6, bulge)),
        ];
        CellKind[] between =
        [
            CellKind.Plain(new(2, 2), new(0, 0, -bulge), new(6, 0, -bulge), new(0, 6, -bulge)),
            CellKind.Plain(new(4, 4), new(6, 6, -bulge), new(0, 6, -bulge), new(6, 0, -bulge)),
        ];
        return new(sizes)
        {
            A = new(sizes.Width / 6, 0),
            B = new(sizes.Width / 12, sizes.Width * Math.Sqrt(3) / 12),
            P = (6, 0),
            Q = (0, 6),
            Kinds = Chosen(sizes.Parts, petals, between),
            Corner = new(0, 0),
            Centre = new(2, 2),
            Middle = FieldPoint.Corner,
            Checkers = new(0, 0, Numbers(sizes.Parts, [0, 1, 0], [0, 1])),
            Threes = new(0, 0, Numbers(sizes.Parts, [0, 1, 2], [0, 1])),
            Columns = new(2, 1, Numbers(sizes.Parts, [0, 0, 0], [0, 1])),
        };
    }

    /// <summary>Petals along the sides of squares, each of two arcs of 90 degrees about the middles of the squares beside it.</summary>
    internal static CellLattice OfCirclesOnSquares(LatticeSizes sizes)
    {
        var bulge = Math.Tan(Math.PI / 8);
        var side = sizes.Width * Math.Sqrt(2);
        CellKind[] petals =
        [
            CellKind.Plain(new(1, 0), new(0, 0, bulge), new(2, 0, bulge)),
            CellKind.Plain(new(0, 1), new(0, 0, bulge), new(0, 2, bulge)),
        ];
        CellKind[] between =
        [
            CellKind.Plain(
                new(1, 1),
                new(0, 0, -bulge),
                new(2, 0, -bulge),
                new(2, 2, -bulge),
                new(0, 2, -bulge)
            ),
        ];
        return new(sizes)
        {
            A = new(side / 2, 0),
            B = new(0, side / 2),
            P = (2, 0),
            Q = (0, 2),
            Kinds = Chosen(sizes.Parts, petals, between),
            Corner = new(0, 0),
            Centre = new(1, 1),
            Middle = FieldPoint.Corner,
            Checkers = new(1, 1, Numbers(sizes.Parts, [0, 1], [0])),
        };
    }

    /// <summary>
    /// The arc of a scale rises by the height of a row over its chord, so that its lowest point is the tip of a scale of
    /// the row below, and there the two halves of an arc meet.
    /// </summary>
    internal static CellLattice OfScales(LatticeSizes sizes)
    {
        // The whole arc has the bulge 2 × sagitta / chord; a half of it has half the sweep.
        var bulge = Math.Tan(Math.Atan(2 * sizes.Height / sizes.Width) / 2);
        return new(sizes)
        {
            A = new(sizes.Width / 2, 0),
            B = new(0, sizes.Height / 2),
            P = (2, 0),
            Q = (1, 2),
            Kinds =
            [
                CellKind.Plain(
                    new(0, -1),
                    new(-1, 0, bulge),
                    new(0, -2, bulge),
                    new(1, 0, -bulge),
                    new(0, 2, -bulge)
                ),
            ],
            Corner = new(0, -2),
            Centre = new(0, -1),
            Checkers = new(0, 1),
            Columns = new(2, 1),
        };
    }

    private static CellKind[] Chosen(CircleParts parts, CellKind[] petals, CellKind[] between) =>
        parts switch
        {
            CircleParts.Petals => petals,
            CircleParts.Between => between,
            _ => [.. petals, .. between],
        };

    private static int[] Numbers(CircleParts parts, int[] petals, int[] between) =>
        parts switch
        {
            CircleParts.Petals => petals,
            CircleParts.Between => between,
            _ => [.. petals, .. between],
        };
}
