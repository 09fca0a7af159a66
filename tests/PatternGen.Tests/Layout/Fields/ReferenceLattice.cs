namespace PatternGen.Tests.Layout.Fields;

/// <summary>A lattice worked out anew by elementary formulas: what its cells are, from a corner at the origin.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Fill">How a field is filled with it.</param>
/// <param name="Cells">All cells within a distance of the origin: what must lie inside, and the chips in it.</param>
/// <param name="Tiles">Whether the chips fill the plane.</param>
internal sealed record ReferenceLattice(
    string Name,
    Func<Field, CarvedField> Fill,
    Func<double, IEnumerable<(Contour Room, Contour[] Chips)>> Cells,
    bool Tiles
)
{
    private static readonly double Root3 = Math.Sqrt(3);

    /// <summary>Whether each cell is one chip.</summary>
    internal bool IsPlain { get; } = Cells(1).All(cell => cell.Chips.Length == 1);

    internal static IEnumerable<ReferenceLattice> All(double size) =>
        [
            Triangles(size),
            Squares(size),
            Diamonds(size, 1.6 * size),
            Hexagons(0.6 * size),
            Petals(1.8 * size),
            HollowTriangles(1.8 * size),
            SquarePetals(1.4 * size),
            HollowSquares(1.4 * size),
            Scales(1.5 * size, 0.6 * size),
            BasketWeave(0.5 * size, 3),
            BasketWeave(0.6 * size, 2),
            Hourglasses(1.2 * size, 0.9 * size, HourglassTurn.ByTurns),
            Hourglasses(size, size, HourglassTurn.Level),
        ];

    public override string ToString() => Name;

    private static ReferenceLattice Triangles(double side)
    {
        var height = side * Root3 / 2;
        return new(
            "triangles",
            field => field.Triangles(side),
            reach =>
                Plain(
                    Steps(reach, side, height)
                        .SelectMany(at =>
                        {
                            var (x, y) = (side * (at.M + at.N / 2.0), height * at.N);
                            return (Contour[])
                                [
                                    Polygon((x, y), (x + side, y), (x + side / 2, y + height)),
                                    Polygon(
                                        (x + side, y),
                                        (x + 1.5 * side, y + height),
                                        (x + side / 2, y + height)
                                    ),
                                ];
                        })
                ),
            true
        );
    }

    private static ReferenceLattice Squares(double side) =>
        new(
            "squares",
            field => field.Squares(side),
            reach =>
                Plain(
                    Steps(reach, side, side).Select(at => Box(at.M * side, at.N * side, side, side))
                ),
            true
        );

    private static ReferenceLattice Diamonds(double width, double height) =>
        new(
            "diamonds",
            field => field.Diamonds(width, height),
            reach =>
                Plain(
                    Steps(reach, width / 2, height / 2)
                        .Where(at => (at.M + at.N) % 2 == 0)
                        .Select(at =>
                        {
                            var (x, low) = (at.M * width / 2, at.N * height / 2);
                            return Polygon(
                                (x, low),
                                (x + width / 2, low + height / 2),
                                (x, low + height),
                                (x - width / 2, low + height / 2)
                            );
                        })
                ),
            true
        );

    private static ReferenceLattice Hexagons(double side)
    {
        var half = side * Root3 / 2;
        return new(
            "hexagons",
            field => field.Hexagons(side),
            reach =>
                Plain(
                    Steps(reach, 1.5 * side, half)
                        .Where(at => (at.M + at.N) % 2 == 0)
                        .Select(at =>
                        {
                            // The origin is the left end of the lower side.
                            var (x, y) = (side / 2 + 1.5 * side * at.M, half + half * at.N);
                            return Contour.Polygon(
                                Enumerable
                                    .Range(0, 6)
                                    .Select(k => new Point(x, y).Polar(side, Angle.OfTurn(k / 6.0)))
                            );
                        })
                ),
            true
        );
    }

    /// <summary>From a point to each of three of its neighbours a lens of two arcs of 60 degrees.</summary>
    private static ReferenceLattice Petals(double radius) =>
        new(
            "petals",
            field => field.Circles(radius),
            reach =>
                Plain(
                    TriangularPoints(reach, radius)
                        .SelectMany(at =>
                            Enumerable
                                .Range(0, 3)
                                .Select(k => Arcs(60, at, at.Polar(radius, Angle.OfTurn(k / 6.0))))
                        )
                ),
            false
        );

    private static ReferenceLattice HollowTriangles(double radius) =>
        new(
            "hollow triangles",
            field => field.Circles(radius, parts: CircleParts.Between),
            reach =>
                Plain(
                    TriangularPoints(reach, radius)
                        .SelectMany(at =>
                        {
                            var right = at.Polar(radius, Angle.Zero);
                            var up = at.Polar(radius, Angle.OfTurn(1 / 6.0));
                            var down = at.Polar(radius, Angle.OfTurn(-1 / 6.0));
                            return (Contour[])
                                [Arcs(-60, at, right, up), Arcs(-60, at, down, right)];
                        })
                ),
            false
        );

    private static ReferenceLattice SquarePetals(double radius)
    {
        var side = radius * Math.Sqrt(2);
        return new(
            "petals on squares",
            field => field.Circles(radius, CircleGrid.Square),
            reach =>
                Plain(
                    Steps(reach, side, side)
                        .SelectMany(at =>
                        {
                            Point here = new(at.M * side, at.N * side);
                            return (Contour[])
                                [
                                    Arcs(90, here, here + new Vector(side, 0)),
                                    Arcs(90, here, here + new Vector(0, side)),
                                ];
                        })
                ),
            false
        );
    }

    private static ReferenceLattice HollowSquares(double radius)
    {
        var side = radius * Math.Sqrt(2);
        return new(
            "hollow squares",
            field => field.Circles(radius, CircleGrid.Square, CircleParts.Between),
            reach =>
                Plain(
                    Steps(reach, side, side)
                        .Select(at =>
                        {
                            var (x, y) = (at.M * side, at.N * side);
                            return Arcs(
                                -90,
                                new(x, y),
                                new(x + side, y),
                                new(x + side, y + side),
                                new(x, y + side)
                            );
                        })
                ),
            false
        );
    }

    /// <summary>The round side is an arc through both ends and the lowest point, which is at the origin.</summary>
    private static ReferenceLattice Scales(double width, double height)
    {
        // tan of a quarter of the sweep is 2 × sagitta / chord; each half of the arc has half the sweep.
        var half = Math.Atan(2 * height / width) * 2 / Math.PI * 180;
        return new(
            "scales",
            field => field.Scales(width, height),
            reach =>
                Plain(
                    Steps(reach, width / 2, height)
                        .Where(at => (at.M + at.N) % 2 == 0)
                        .Select(at =>
                        {
                            var (x, low) = (at.M * width / 2, at.N * height);
                            var bulge = Math.Tan(half / 4 / 180 * Math.PI);
                            return new Contour([
                                new(x - width / 2, low + height, bulge),
                                new(x, low, bulge),
                                new(x + width / 2, low + height, -bulge),
                                new(x, low + 2 * height, -bulge),
                            ]);
                        })
                ),
            true
        );
    }

    private static ReferenceLattice BasketWeave(double strip, int strips)
    {
        var side = strip * strips;
        return new(
            $"basket weave of {strips}",
            field => field.BasketWeave(strip, strips),
            reach =>
                Steps(reach, side, side)
                    .Select(at =>
                    {
                        var (x, y) = (at.M * side, at.N * side);
                        var isUpright = (at.M + at.N) % 2 == 0;
                        return (
                            Box(x, y, side, side),
                            Enumerable
                                .Range(0, strips)
                                .Select(k =>
                                    isUpright
                                        ? Box(x + k * strip, y, strip, side)
                                        : Box(x, y + k * strip, side, strip)
                                )
                                .ToArray()
                        );
                    }),
            true
        );
    }

    private static ReferenceLattice Hourglasses(double width, double height, HourglassTurn turn) =>
        new(
            $"hourglasses {turn}",
            field => field.Hourglasses(width, height, turn),
            reach =>
                Steps(reach, width, height)
                    .Select(at =>
                    {
                        var (x, y) = (at.M * width, at.N * height);
                        var isUpright = turn == HourglassTurn.ByTurns && (at.M + at.N) % 2 == 0;
                        var (right, high) = (x + width, y + height);
                        var middle = (x + width / 2, y + height / 2);
                        return (
                            Box(x, y, width, height),
                            isUpright
                                ? (Contour[])
                                    [
                                        Polygon((x, y), (right, y), middle),
                                        Polygon((right, high), (x, high), middle),
                                    ]
                                :
                                [
                                    Polygon((right, y), (right, high), middle),
                                    Polygon((x, high), (x, y), middle),
                                ]
                        );
                    }),
            false
        );

    private static IEnumerable<(Contour, Contour[])> Plain(IEnumerable<Contour> cells) =>
        cells.Select(cell => (cell, (Contour[])[cell]));

    private static IEnumerable<Point> TriangularPoints(double reach, double side) =>
        Steps(reach, side, side * Root3 / 2)
            .Select(at => new Point(side * (at.M + at.N / 2.0), side * Root3 / 2 * at.N));

    /// <summary>Whole numbers of steps that reach at least as far, sheared ones too.</summary>
    private static IEnumerable<(int M, int N)> Steps(double reach, double x, double y)
    {
        var rows = (int)(reach / y) + 3;
        var columns = (int)(reach / x) + rows + 3;
        return from n in Enumerable.Range(-rows, 2 * rows + 1)
            from m in Enumerable.Range(-columns, 2 * columns + 1)
            select (m, n);
    }

    private static Contour Box(double x, double y, double width, double height) =>
        Contour.Rectangle(new(x, y), new(x + width, y + height));

    private static Contour Polygon(params (double X, double Y)[] corners) =>
        Contour.Polygon(corners.Select(corner => new Point(corner.X, corner.Y)));

    /// <summary>A ring of arcs that all turn by the same angle.</summary>
    private static Contour Arcs(double degrees, params Point[] corners) =>
        new(corners.Select(corner => new Vertex(corner, Math.Tan(degrees / 4 / 180 * Math.PI))));
}
