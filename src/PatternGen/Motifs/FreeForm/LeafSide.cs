using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a side of a leaf beside its midrib.</summary>
internal static class LeafSide
{
    /// <summary>Returns the side from the start of the midrib to its end: one arc, or two that run smoothly into each other where it is widest.</summary>
    /// <param name="midrib">The midrib.</param>
    /// <param name="offset">How far the side is to the left of the midrib where it is widest, in mm; negative for the right.</param>
    /// <param name="widestAt">Where that is, as a share of the midrib's length.</param>
    internal static IReadOnlyList<Segment> Of(Segment midrib, double offset, double widestAt)
    {
        var along = midrib.Length * widestAt;
        var joint = midrib.PointAt(along) + midrib.NormalAt(along) * offset;
        var onward = midrib.TangentAt(along);
        var first = Biarc.Leaving(joint, -onward, midrib.Start).Reversed();
        var whole = Biarc.Leaving(midrib.Start, first.TangentAt(0), midrib.End);
        var isOneCircle = whole.DistanceTo(joint) <= Tolerance.For(whole.Extents).Merge;
        return isOneCircle ? [whole] : [first, Biarc.Leaving(joint, onward, midrib.End)];
    }

    /// <summary>Returns the outline between two ways from the start of the midrib to its end.</summary>
    internal static Contour Between(IReadOnlyList<Segment> right, IReadOnlyList<Segment> left) =>
        Contour.Of([.. right, .. left.Reverse().Select(segment => segment.Reversed())]);
}
