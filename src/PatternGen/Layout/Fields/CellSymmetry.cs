using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Which turns take cells into cells: asked of whole numbers, so that the answer is exact.</summary>
internal static class CellSymmetry
{
    /// <summary>Directions nearer than this, in radians, are the same: far above rounding, and far below what a carver can draw.</summary>
    private const double SameDirection = 1e-9;

    /// <summary>
    /// Returns the whole numbers of steps that take a ring, turned about the point (0, 0), to another one; null if
    /// none does.
    /// </summary>
    internal static (int I, int J)? OffsetTo(
        CellCorner[] ring,
        CellCorner[] other,
        LatticeTurn turn
    )
    {
        if (ring.Length != other.Length)
            return null;
        var turned = Turned(ring, default, turn);
        for (var start = 0; start < other.Length; start++)
        {
            var (i, j) = (other[start].I - turned[0].I, other[start].J - turned[0].J);
            if (AreSame(start, i, j))
                return (i, j);
        }
        return null;

        bool AreSame(int start, int i, int j)
        {
            for (var k = 0; k < turned.Length; k++)
                if (
                    other[(start + k) % other.Length]
                    != turned[k] with
                    {
                        I = turned[k].I + i,
                        J = turned[k].J + j,
                    }
                )
                    return false;
            return true;
        }
    }

    /// <summary>Returns a ring turned about a point; it stays counter-clockwise.</summary>
    internal static CellCorner[] Turned(CellCorner[] ring, CellCorner about, LatticeTurn turn)
    {
        CellCorner[] turned =
        [
            .. ring.Select(corner => new CellCorner(
                about.I + turn.I(corner.I - about.I, corner.J - about.J),
                about.J + turn.J(corner.I - about.I, corner.J - about.J),
                corner.Bulge
            )),
        ];
        if (!turn.IsMirrored)
            return turned;
        // Mirrored, and so walked the other way: the side that starts at a corner is the one that ended there, and
        // its bulge has changed its sign twice.
        var count = turned.Length;
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(k =>
                    turned[(count - k) % count] with
                    {
                        Bulge = ring[(2 * count - k - 1) % count].Bulge,
                    }
                ),
        ];
    }

    /// <summary>Returns the turn of the lattice that is a given one, mirrored left to right first, if it takes a cell into itself.</summary>
    internal static LatticeTurn? Find(
        CellLattice cells,
        LatticeTurn[] turns,
        CellKind kind,
        Angle angle,
        bool mirrored
    )
    {
        var asked = Vector.Towards(mirrored ? angle + Angle.OfTurn(0.5) : angle);
        foreach (var turn in turns)
        {
            var direction = turn.InFrame(cells.A, cells.B).Apply(new Vector(1, 0));
            if (
                turn.IsMirrored == mirrored
                && (direction - asked).Length <= SameDirection
                && OffsetTo(kind.Room, kind.Room, turn) is { } offset
                && offset == Back(kind.Centre, turn)
            )
                return turn;
        }
        return null;
    }

    /// <summary>What brings the centre back, turned about the point (0, 0).</summary>
    private static (int I, int J) Back(CellCorner centre, LatticeTurn turn) =>
        (centre.I - turn.I(centre.I, centre.J), centre.J - turn.J(centre.I, centre.J));
}
