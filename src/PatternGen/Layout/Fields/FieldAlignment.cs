using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Where the lattice of a field lies: one of its points on a place of the wood, and the way it is turned.</summary>
internal abstract record FieldAlignment
{
    /// <summary>A point of the lattice on the middle of the outline. Without a point, the lattice's own choice.</summary>
    internal sealed record OnMiddle(FieldMiddle Middle, FieldPoint? Point) : FieldAlignment;

    /// <summary>A row of cells along a straight side of the outline, a corner of cells at its middle.</summary>
    internal sealed record AlongSide(int Ring, int Side) : FieldAlignment;

    /// <summary>A corner of cells on a place, the lattice turned by an angle.</summary>
    internal sealed record FromPlace(Point Place, Angle Turn) : FieldAlignment;

    /// <summary>Returns the lattice laid where it is to lie.</summary>
    internal static Lattice Lay(FieldDesign design, CellLattice cells)
    {
        var (place, turn, point) = design.Alignment switch
        {
            AlongSide along => OfSide(design, along),
            FromPlace from => (from.Place, from.Turn, FieldPoint.Corner),
            OnMiddle on => (
                on.Middle == FieldMiddle.Centroid
                    ? design.Outline.Centroid
                    : design.Outline.Extents.Centre,
                Angle.Zero,
                on.Point ?? cells.Middle
            ),
            _ => throw new InvalidOperationException("No such alignment."),
        };
        turn += design.LatticeTurn;
        var anchor = point == FieldPoint.Corner ? cells.Corner : cells.Centre;
        var offset = Transform
            .Rotate(turn)
            .Apply(cells.On(Point.Origin, Angle.Zero).InFrame(anchor.I, anchor.J) - Point.Origin);
        return cells.On(place - offset, turn);
    }

    private static (Point, Angle, FieldPoint) OfSide(FieldDesign design, AlongSide along)
    {
        var side = design.Outline.Contours[along.Ring].At(along.Side);
        // Rings have the field on their left.
        return (
            side.Middle + side.Chord.Unit().Left * design.BorderGap,
            side.Chord.Direction,
            FieldPoint.Corner
        );
    }
}
