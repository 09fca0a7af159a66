using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Cuts chips off along a mitre, and sets those corners on it that lie nearly there.</summary>
/// <param name="Start">Where the mitre begins on the line y = 0, in mm.</param>
/// <param name="Slope">How far it goes along x for each mm of y. The chips lie right of it.</param>
/// <param name="Near">Corners this near to it, along x, are drawn onto it.</param>
internal sealed record MitreCut(double Start, double Slope, double Near)
{
    internal double At(double y) => Start + y * Slope;

    /// <summary>
    /// Returns what is right of the mitre, closed along it: the chip itself if the mitre is clear of it, null if nothing
    /// is left, or if what is left is in pieces.
    /// </summary>
    internal Contour? Apply(Contour chip, double merge)
    {
        var isNear = chip.Vertices.Any(vertex => Math.Abs(Off(vertex.Point)) <= Near);
        var turned = Turned(chip);
        return isNear || turned.Extents.Min.X < 0 ? Cut(turned, merge) : chip;
    }

    private double Off(Point point) => point.X - At(point.Y);

    private Transform Turn =>
        Transform.Move(-Start, 0).Then(Transform.Rotate(Angle.FromRadians(Math.Atan(Slope))));

    /// <summary>The chip turned so that the mitre is upright at x = 0.</summary>
    private Contour Turned(Contour chip)
    {
        var turn = Turn;
        return new(
            chip.Vertices.Select(vertex =>
            {
                var isOn = Math.Abs(Off(vertex.Point)) <= Near;
                var place = turn.Apply(
                    isOn ? new Point(At(vertex.Point.Y), vertex.Point.Y) : vertex.Point
                );
                // Exactly on the line, so that no cut falls a hair beside a corner.
                return new Vertex(isOn ? new Point(0, place.Y) : place, vertex.Bulge);
            })
        );
    }

    private Contour? Cut(Contour turned, double merge)
    {
        if (UprightCut.Right(turned, 0) is not { } part || part.Count < 2)
            return null;
        var keepsItsTurn = Math.Sign(part.SignedArea) == Math.Sign(turned.SignedArea);
        var onLine = part.Vertices.Count(vertex => Math.Abs(vertex.Point.X) <= merge);
        if (!keepsItsTurn || onLine > 2 || part.CrossesItself())
            return null;
        return part.Transformed(Turn.Inverse());
    }
}
