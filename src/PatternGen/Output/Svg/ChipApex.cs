using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Where the walls of a chip are drawn to meet in a picture: where a knife goes deepest between three sides, which is the
/// incentre if they are straight, or else the centre of gravity.
/// </summary>
/// <param name="At">The point.</param>
/// <param name="Depth">Its distance in mm from the outline.</param>
internal sealed record ChipApex(Point At, double Depth)
{
    /// <summary>Returns the point, or null if it does not see all of the outline, as in a crescent.</summary>
    internal static ChipApex? Of(Contour shape)
    {
        var at = shape.Count == 3 ? Deepest(shape) : shape.Centroid;
        var apex = new ChipApex(at, shape.DistanceTo(at));
        return shape.Contains(at) && Array.TrueForAll(shape.ToSegments(), apex.Sees) ? apex : null;
    }

    /// <summary>Returns where a placement takes it.</summary>
    internal ChipApex Placed(Transform placement) =>
        new(placement.Apply(At), Depth * placement.Scale);

    private static Point Deepest(Contour shape) =>
        shape.Segments.All(side => side.IsLine)
            ? Incentre(shape.Vertices)
            : InsidePlace.Of(new(shape, [])).Point;

    /// <summary>The mean of the corners, each weighted by the length of the side opposite.</summary>
    private static Point Incentre(IReadOnlyList<Vertex> corners)
    {
        var (a, b, c) = (corners[0].Point, corners[1].Point, corners[2].Point);
        var (toB, toC) = (a.DistanceTo(c), a.DistanceTo(b));
        return a + ((b - a) * toB + (c - a) * toC) / (b.DistanceTo(c) + toB + toC);
    }

    /// <summary>Whether a side turns its inner face to the point all along.</summary>
    private bool Sees(Segment side) =>
        IsLeft(side.TangentAt(0), side.Start) && IsLeft(side.TangentAt(side.Length), side.End);

    private bool IsLeft(Vector direction, Point from) => direction.Cross(At - from) > 0;
}
