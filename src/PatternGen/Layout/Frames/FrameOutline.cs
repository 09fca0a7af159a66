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

    /// <summary>Whether every corner is a right angle that points out, so that it is a rectangle, turned or not.</summary>
    internal bool IsRectangle => _sides.Length == 4 && HasCorners(1);

    /// <summary>Whether it is a rectangle that stands upright, side 1 below: its sides are called by their places.</summary>
    internal bool HasNamedSides =>
        IsRectangle && (Along(0) - new Vector(1, 0)).Length <= Tolerance.ForExtent(1).Merge;

    /// <summary>Whether a side of a rectangle is one of the two that stand, or of a turned one, stand more than they lie.</summary>
    internal bool IsUpright(int side) =>
        side % 2 == (Math.Abs(Along(0).Y) > Math.Abs(Along(0).X) ? 0 : 1);

    /// <summary>The outline, or a line within it at the same distance everywhere.</summary>
    /// <param name="height">Distance from the outer edge in mm.</param>
    /// <param name="radius">Radius of the corners at the outer edge in mm; 0 for sharp ones.</param>
    internal Contour Ring(double height, double radius = 0) =>
        radius > 0
            ? Rounded(height, radius)
            : Contour.Polygon(_sides.Select(side => PointAt(side, height)));

    /// <summary>
    /// The outline, or a line within it, with rounded corners that have one centre each at all distances. It begins in the
    /// middle of side 1.
    /// </summary>
    /// <param name="height">Distance from the outer edge in mm.</param>
    /// <param name="radius">Radius in mm at the outer edge; farther in it is less, and more where a corner points in.</param>
    internal Contour Rounded(double height, double radius)
    {
        List<Vertex> line =
        [
            new(PointAt(_sides[0], height).Towards(PointAt(_sides[1], height), 0.5)),
        ];
        for (var i = 1; i <= _sides.Length; i++)
        {
            var (before, after) = (_sides[i - 1], _sides[i % _sides.Length]);
            var there = Math.Max(0, radius - Math.Sign(after.First) * height);
            var corner = PointAt(after, height);
            if (there == 0)
            {
                line.Add(new(corner));
                continue;
            }
            // The arc begins and ends as far from the corner, and turns as the sides do.
            var taken = there * Math.Abs(after.First);
            var turn = 2 * Math.Atan(after.First);
            line.Add(
                new(corner - before.Placement.Apply(new Vector(taken, 0)), Math.Tan(turn / 4))
            );
            line.Add(new(corner + after.Placement.Apply(new Vector(taken, 0))));
        }
        return new(line);
    }

    /// <summary>The largest radius at the outer edge for which each side has room for the arcs at both its ends.</summary>
    internal double LargestRadius =>
        _sides.Min(side => side.Length / (Math.Abs(side.First) + Math.Abs(side.Last)));

    /// <summary>
    /// How many times something has to be repeated to stand alike about each mirror of the outline that goes through the
    /// middle of side 1: 4 for a square, 2 for another rectangle, 1 if there may be no mirror.
    /// </summary>
    internal int Mirrors
    {
        get
        {
            var (length, merge) = (_sides[0].Length, Tolerance.ForExtent(_sides[0].Length).Merge);
            if (
                _sides.All(side => Math.Abs(side.Length - length) <= merge)
                && HasCorners(_sides[0].First)
            )
                return _sides.Length;
            return IsRectangle ? 2 : 1;
        }
    }

    /// <summary>Whether the line at a distance within still goes round something, without meeting itself.</summary>
    internal bool IsOpenAt(double height) =>
        _sides.All(side => side.LengthAt(height) > Tolerance.ForExtent(side.Length).Merge)
        && Ring(height).SelfIntersections().Count == 0;

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

    private bool HasCorners(double mitre) =>
        _sides.All(side => Math.Abs(side.First - mitre) <= Tolerance.ForExtent(1).Merge);

    private Vector Along(int side) => _sides[side].Placement.Apply(new Vector(1, 0));

    /// <summary>Cotangent of half the inside angle, by the half-angle formula: exactly 1 at a right angle.</summary>
    private static double Mitre(Vector before, Vector after) =>
        before.Cross(after) / (1 + before.Dot(after));
}
