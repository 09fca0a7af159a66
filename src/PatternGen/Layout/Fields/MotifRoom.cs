using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The room that a motif takes in its cell: a circle round it if that fits in, else the whole cell.</summary>
internal static class MotifRoom
{
    /// <summary>How near to the largest size that fits a message comes, as a share.</summary>
    private const double Accuracy = 1e-3;

    /// <param name="chips">The chips of the motif, about the origin.</param>
    /// <param name="cell">The cell, less the ridges round it.</param>
    /// <param name="middle">Where the motif's origin is to lie in it.</param>
    /// <exception cref="PatternException">The motif does not fit in its cell.</exception>
    internal static Contour Of(StampChip[] chips, Contour cell, Point middle)
    {
        var edge = new FieldEdge(new(cell));
        var reach = chips.Max(chip => MotifReach.Of(chip.Rings[0]));
        var circle = new Circle(middle, reach).ToContour();
        if (Fits(edge, circle, middle))
            return circle;
        var move = Transform.Move(middle - Point.Origin);
        if (FitsScaled(1))
            return cell;
        double fits = 0,
            over = 1;
        while (over - fits > Accuracy)
        {
            var half = (fits + over) / 2;
            if (FitsScaled(half))
                fits = half;
            else
                over = half;
        }
        throw FieldTrouble.MotifTooLarge(reach, fits);

        bool FitsScaled(double factor)
        {
            var resize = Transform.Resize(factor).Then(move);
            return Array.TrueForAll(
                chips,
                chip => Fits(edge, chip.Rings[0].Transformed(resize), resize.Apply(chip.Inner))
            );
        }
    }

    private static bool Fits(FieldEdge edge, Contour ring, Point inner) =>
        edge.PlaceOf([ring], inner, [.. Enumerable.Range(0, edge.Sides.Length)])
        == EdgePlace.Inside;
}
