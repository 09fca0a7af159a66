using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Where the walls of a chip are drawn to meet in a picture: the point farthest from its outline, which is where the
/// knife goes deepest.
/// </summary>
/// <param name="At">The point.</param>
/// <param name="Depth">Its distance in mm from the outline.</param>
internal readonly record struct ChipApex(Point At, double Depth)
{
    /// <summary>Steps of the search. They bring the point to within about 1 % of the chip, which no picture shows.</summary>
    private const int Steps = 100;

    /// <summary>Returns the point, or null if it does not see all of the outline, as in a crescent.</summary>
    internal static ChipApex? Of(Contour shape)
    {
        var apex = Farthest(shape);
        return shape.Contains(apex.At) && shape.Segments.All(apex.Sees) ? apex : null;
    }

    /// <summary>Returns where a placement takes it.</summary>
    internal ChipApex Placed(Transform placement) =>
        new(placement.Apply(At), Depth * placement.Scale);

    /// <summary>Walks away from whatever side is nearest, in ever shorter steps.</summary>
    private static ChipApex Farthest(Contour shape)
    {
        var at = shape.Centroid;
        var nearest = shape.Nearest(at);
        var best = new ChipApex(at, nearest.Distance);
        for (var step = 2; step < Steps && nearest.Distance > 0; step++)
        {
            at += (at - nearest.Point).Unit() * (best.Depth / step);
            nearest = shape.Nearest(at);
            if (nearest.Distance > best.Depth)
                best = new(at, nearest.Distance);
        }
        return best;
    }

    /// <summary>Whether a side turns its inner face to the point all along.</summary>
    private bool Sees(Segment side) =>
        IsLeft(side.TangentAt(0), side.Start) && IsLeft(side.TangentAt(side.Length), side.End);

    private bool IsLeft(Vector direction, Point from) => direction.Cross(At - from) > 0;
}
