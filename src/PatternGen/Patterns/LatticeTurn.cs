using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A turn or mirroring about a point of a lattice that takes the lattice into itself: in whole numbers, so exact.</summary>
/// <remarks>The point (u, v) goes to (ii·u + ij·v, ji·u + jj·v). The default value is no turn of any lattice.</remarks>
internal readonly record struct LatticeTurn(int Ii, int Ij, int Ji, int Jj)
{
    /// <summary>Squares of steps that differ by less than this share are equal: far above rounding, far below any difference that is meant.</summary>
    private const double Alike = 1e-12;

    internal static LatticeTurn None { get; } = new(1, 0, 0, 1);

    internal bool IsMirrored => Ii * Jj - Ij * Ji < 0;

    internal int I(int u, int v) => Ii * u + Ij * v;

    internal int J(int u, int v) => Ji * u + Jj * v;

    /// <summary>Returns every turn, then every mirroring, that keeps a lattice with two steps: 12 if they are as long and 60 degrees apart, 8 for a square, 4 for a rectangle.</summary>
    /// <remarks>Of steps at 60 to 90 degrees, of which neither is much longer, every image is a sum of one of each at most.</remarks>
    internal static LatticeTurn[] Of(Vector a, Vector b)
    {
        var found = new List<LatticeTurn>();
        for (var code = 0; code < 81; code++)
        {
            LatticeTurn turn = new(code / 27 - 1, code / 9 % 3 - 1, code / 3 % 3 - 1, code % 3 - 1);
            if (Math.Abs(turn.Ii * turn.Jj - turn.Ij * turn.Ji) == 1 && turn.Keeps(a, b))
                found.Add(turn);
        }
        return [.. found.OrderBy(turn => turn.IsMirrored).ThenByDescending(turn => turn == None)];
    }

    /// <summary>The same as a similarity, of the frame of a lattice with two steps.</summary>
    internal Transform InFrame(Vector a, Vector b)
    {
        if (this == None)
            return Transform.Identity;
        // Where the x axis goes tells all: both steps lead there with some shares.
        var cross = a.Cross(b);
        var (u, v) = (b.Y / cross, -a.Y / cross);
        var turned = a * (Ii * u + Ij * v) + b * (Ji * u + Jj * v);
        var direction = turned.Direction;
        return IsMirrored
            ? Transform.Mirror(Point.Origin, direction / 2)
            : Transform.Rotate(direction);
    }

    private bool Keeps(Vector a, Vector b)
    {
        var (first, second) = (a * Ii + b * Ji, a * Ij + b * Jj);
        var size = a.LengthSquared + b.LengthSquared;
        return Same(first.LengthSquared, a.LengthSquared)
            && Same(second.LengthSquared, b.LengthSquared)
            && Same(first.Dot(second), a.Dot(b));

        bool Same(double one, double other) => Math.Abs(one - other) <= Alike * size;
    }
}
