using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The deepest point of a chip with three straight sides, where its walls meet: the incentre.</summary>
/// <param name="At">The point.</param>
/// <param name="Depth">Its distance in mm from the sides.</param>
internal sealed record ChipApex(Point At, double Depth)
{
    /// <summary>Returns the point, or null if the chip is another.</summary>
    internal static ChipApex? Of(ChipShape shape)
    {
        var outline = shape.Outline;
        if (outline.Count != 3 || shape.RingCount > 1 || outline.Segments.Any(side => !side.IsLine))
            return null;
        var at = Incentre(outline.Vertices);
        return new(at, outline.DistanceTo(at));
    }

    /// <summary>Returns where a placement takes it.</summary>
    internal ChipApex Placed(Transform placement) =>
        new(placement.Apply(At), Depth * placement.Scale);

    /// <summary>The mean of the corners, each weighted by the length of the side opposite.</summary>
    private static Point Incentre(IReadOnlyList<Vertex> corners)
    {
        var (a, b, c) = (corners[0].Point, corners[1].Point, corners[2].Point);
        var (toB, toC) = (a.DistanceTo(c), a.DistanceTo(b));
        return a + ((b - a) * toB + (c - a) * toC) / (b.DistanceTo(c) + toB + toC);
    }
}
