using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The outer edge of a frame as sides and corners, counter-clockwise; corner i is where side i begins.</summary>
internal sealed class FrameOutline
{
    private readonly Point[] _corners;
    private readonly FrameSide[] _sides;

    /// <param name="corners">Counter-clockwise, no three in a row on one line.</param>
    internal FrameOutline(Point[] corners)
    {
        _corners = corners;
        var along = new Vector[corners.Length];
        for (var i = 0; i < corners.Length; i++)
            along[i] = (corners[(i + 1) % corners.Length] - corners[i]).Unit();
        _sides = new FrameSide[corners.Length];
        for (var i = 0; i < corners.Length; i++)
            _sides[i] = new(
                corners[i].DistanceTo(corners[(i + 1) % corners.Length]),
                Transform
                    .Rotate(along[i].Direction)
                    .Then(Transform.Move(corners[i] - Point.Origin)),
                Mitre(along[(i + corners.Length - 1) % corners.Length], along[i]),
                Mitre(along[i], along[(i + 1) % corners.Length])
            );
    }

    internal IReadOnlyList<FrameSide> Sides => _sides;

    internal IReadOnlyList<Point> Corners => _corners;

    /// <summary>Whether every corner is a right angle that points out, so that it is a rectangle.</summary>
    internal bool IsRectangle => _sides.Length == 4 && _sides.All(side => side.First == 1);

    /// <summary>The outline, or a line within it at the same distance everywhere.</summary>
    internal Contour Ring(double height) =>
        Contour.Polygon(_sides.Select(side => PointAt(side, height)));

    /// <summary>Whether the line at a distance within still goes round something, without crossing itself.</summary>
    internal bool IsOpenAt(double height) =>
        _sides.All(side => side.LengthAt(height) > Tolerance.ForExtent(side.Length).Merge)
        && !Ring(height).CrossesItself();

    /// <summary>The mitres, one for each corner, that remember their points.</summary>
    internal MitreLine[] Mitres() => [.. _sides.Select(side => new MitreLine(side))];

    /// <summary>The direction from a corner into the wood, half-way between its sides.</summary>
    internal Angle Bisector(int corner)
    {
        var side = _sides[corner];
        return side.Placement.Apply(new Vector(side.First, 1)).Direction;
    }

    internal static Point PointAt(FrameSide side, double height) =>
        side.Placement.Apply(new Point(side.StartAt(height), height));

    /// <summary>Cotangent of half the inside angle, by the half-angle formula: exactly 1 at a right angle.</summary>
    private static double Mitre(Vector before, Vector after) =>
        before.Cross(after) / (1 + before.Dot(after));
}
