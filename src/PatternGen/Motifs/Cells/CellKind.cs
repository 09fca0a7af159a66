namespace PatternGen;

/// <summary>One of the cells that a lattice repeats.</summary>
/// <param name="Room">The cell.</param>
/// <param name="Centre">The point about which it is divided, and where a motif in it stands.</param>
/// <param name="Parts">The chips in it; of most cells, one that fills it.</param>
internal sealed record CellKind(CellCorner[] Room, CellCorner Centre, params CellCorner[][] Parts)
{
    /// <summary>Returns a cell that is a chip as a whole.</summary>
    internal static CellKind Plain(CellCorner centre, params CellCorner[] corners) =>
        new(corners, centre, corners);

    /// <summary>Returns the cell moved within its lattice.</summary>
    internal CellKind Moved(int i, int j) =>
        new(Moved(Room, i, j), Moved(Centre, i, j), [.. Parts.Select(part => Moved(part, i, j))]);

    /// <summary>The parts from the centre to each side: of a square, four triangles.</summary>
    internal IEnumerable<CellCorner[]> FromCentre() =>
        Room.Select(
            (corner, k) =>
                (CellCorner[])[corner, Room[(k + 1) % Room.Length] with { Bulge = 0 }, Centre]
        );

    private static CellCorner[] Moved(CellCorner[] ring, int i, int j) =>
        [.. ring.Select(corner => Moved(corner, i, j))];

    private static CellCorner Moved(CellCorner corner, int i, int j) =>
        corner with
        {
            I = corner.I + i,
            J = corner.J + j,
        };
}
