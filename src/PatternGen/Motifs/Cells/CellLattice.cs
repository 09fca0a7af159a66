using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A lattice of cells: what cells it repeats, by what steps, and how they are counted.</summary>
/// <remarks>
/// All corners and centres lie at points of a lattice finer than the repeats, so that each is told by two whole numbers.
/// The sizes say all: two lattices of the same family and sizes are the same.
/// </remarks>
internal sealed partial class CellLattice
{
    private CellLattice(LatticeSizes sizes) => Sizes = sizes;

    internal LatticeSizes Sizes { get; }

    /// <summary>First step of the fine lattice, level.</summary>
    internal required Vector A { get; init; }

    /// <summary>Second step of the fine lattice, to the left of the first.</summary>
    internal required Vector B { get; init; }

    /// <summary>Steps of the fine lattice to the next repeat.</summary>
    internal required (int I, int J) P { get; init; }

    /// <summary>Steps of the fine lattice to the next repeat in another direction.</summary>
    internal required (int I, int J) Q { get; init; }

    /// <summary>The cells of one repeat.</summary>
    internal required CellKind[] Kinds { get; init; }

    /// <summary>A corner of cells; those of a row stand on the level line through it.</summary>
    internal required CellCorner Corner { get; init; }

    /// <summary>The centre of a cell.</summary>
    internal required CellCorner Centre { get; init; }

    /// <summary>Which of the two makes the field most symmetric about its middle.</summary>
    internal FieldPoint Middle { get; private init; }

    /// <summary>The numbers that tell cells apart by turns.</summary>
    internal CellCounting Checkers { get; private init; } = new(1, 1);

    internal CellCounting Threes { get; private init; } = new(1, -1);

    internal CellCounting Rows { get; private init; } = new(0, 1);

    internal CellCounting Columns { get; private init; } = new(1, 0);

    /// <summary>The number of a cell under a scheme, from 0.</summary>
    internal int NumberOf(CellScheme scheme, int m, int n, int kind)
    {
        var (counting, kinds) = scheme switch
        {
            CellScheme.Checkerboard => (Checkers, 2),
            CellScheme.ThreeByTurns => (Threes, 3),
            CellScheme.Rows => (Rows, 2),
            CellScheme.Columns => (Columns, 2),
            _ => (Rows, 1),
        };
        var number = counting.Of(m, n, kind) % kinds;
        return number < 0 ? number + kinds : number;
    }

    /// <summary>How many kinds of cells a scheme tells apart.</summary>
    internal static int NumbersOf(CellScheme scheme) =>
        scheme switch
        {
            CellScheme.Alike => 1,
            CellScheme.ThreeByTurns => 3,
            _ => 2,
        };

    /// <summary>Area in mm² of a repeat.</summary>
    internal double RepeatArea => Math.Abs((double)P.I * Q.J - (double)P.J * Q.I) * A.Cross(B);

    internal Lattice On(Point origin, Angle turn) => new(A, B, origin, turn);

    /// <summary>A ring in the lattice's frame.</summary>
    internal Contour InFrame(CellCorner[] ring)
    {
        var lattice = On(Point.Origin, Angle.Zero);
        return new(
            ring.Select(corner => new Vertex(lattice.InFrame(corner.I, corner.J), corner.Bulge))
        );
    }
}
