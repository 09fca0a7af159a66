using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class CarvedField
{
    /// <summary>Returns the field with the lattice laid about the middle of the outline.</summary>
    /// <param name="point">What lies on the middle: the centre of a cell, or a corner where cells meet.</param>
    /// <param name="middle">What counts as the middle; that of the extents by default.</param>
    /// <remarks>
    /// Without this the extents' middle is a corner of triangles, a point where petals meet, or the centre of any other cell:
    /// what makes the field most symmetric.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A choice is not defined.</exception>
    [Pure]
    public CarvedField Centred(FieldPoint point, FieldMiddle middle = FieldMiddle.Extents)
    {
        var alignment = new FieldAlignment.OnMiddle(Guard.Defined(middle), Guard.Defined(point));
        return With(design => design with { Alignment = alignment });
    }

    /// <summary>Returns the field with a row of cells along a straight side of the outline, a corner of cells at its middle.</summary>
    /// <param name="side">Number of the side in its ring, from 0.</param>
    /// <param name="ring">Number of the ring in <see cref="Region.Contours"/>; 0, the first outer ring, by default.</param>
    /// <remarks>With a border gap, the row stands on the border.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no such side or ring.</exception>
    /// <exception cref="PatternException">The side is an arc.</exception>
    [Pure]
    public CarvedField AlongSide(int side, int ring = 0)
    {
        Guard.Within(ring, 0, Outline.Contours.Count - 1);
        var contour = Outline.Contours[ring];
        Guard.Within(side, 0, contour.Count - 1);
        if (!contour.At(side).IsLine)
            throw new PatternException(
                $"Side {side} of ring {ring} is an arc, and cells stand along straight sides only.",
                contour.At(side).Middle,
                ["a straight side", "the lattice about the middle of the outline"]
            );
        return With(design => design with { Alignment = new FieldAlignment.AlongSide(ring, side) });
    }

    /// <summary>Returns the field with a corner of cells on a place.</summary>
    /// <param name="origin">The place, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate lies beyond 2 km or is not finite.</exception>
    [Pure]
    public CarvedField From(Point origin)
    {
        Guard.Place(origin);
        return With(design =>
            design with
            {
                Alignment = new FieldAlignment.FromPlace(origin, Angle.Zero),
            }
        );
    }

    /// <summary>Returns the field with a corner of cells on the origin of a grid, and turned as the grid is.</summary>
    /// <param name="grid">
    /// The grid. Squares with its step as their side then lie on it everywhere: <c>Field.Within(lid).Squares(5).On(Grid.Square(5))</c>.
    /// </param>
    [Pure]
    public CarvedField On(Grid grid)
    {
        Guard.NotNull(grid);
        return With(design =>
            design with
            {
                Alignment = new FieldAlignment.FromPlace(grid.Origin, grid.Turn),
            }
        );
    }

    /// <summary>Returns the field with the lattice turned about the point that it was laid by.</summary>
    /// <param name="degrees">Counter-clockwise, from where the lattice was laid; 0 by default. Another call replaces it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    [Pure]
    public CarvedField LatticeTurned(double degrees) => LatticeTurned(Angle.FromDegrees(degrees));

    /// <inheritdoc cref="LatticeTurned(double)"/>
    /// <param name="turn">Counter-clockwise, from where the lattice was laid; 0 by default. Another call replaces it.</param>
    [Pure]
    public CarvedField LatticeTurned(Angle turn) =>
        With(design => design with { LatticeTurn = turn });
}
