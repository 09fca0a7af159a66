namespace PatternGen.Geometry;

public sealed partial class Contour
{
    /// <summary>Returns whether a point lies inside, outside or on the edge, whatever the direction of the ring.</summary>
    /// <remarks>
    /// On the edge means within the merge distance of the tolerance for the contour's extents. Where the ring crosses
    /// itself, every part that it runs round counts as inside.
    /// </remarks>
    public Containment Locate(Point point)
    {
        var extents = Extents;
        var merge = Tolerance.For(extents).Merge;
        if (!extents.Grown(merge).Contains(point))
            return Containment.Outside;
        if (DistanceTo(point) <= merge)
            return Containment.OnEdge;
        return Winding.Of(this, point) != 0 ? Containment.Inside : Containment.Outside;
    }

    /// <summary>Returns whether a point lies inside or on the edge.</summary>
    public bool Contains(Point point) => Locate(point) != Containment.Outside;
}
