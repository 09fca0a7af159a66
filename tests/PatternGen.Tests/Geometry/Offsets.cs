using NetTopologySuite.Operation.Buffer;

namespace PatternGen.Tests.Geometry;

/// <summary>What must hold of every offset.</summary>
internal static class Offsets
{
    /// <summary>Places are known to the merge distance, where curves touch only to its square root; distances to a few merges.</summary>
    private const double Accuracy = 1e-6;

    internal static void ShouldLieAtTheDistance(Contour ring, double distance)
    {
        var offset = ring.Offset(distance);
        foreach (var contour in offset.Contours)
        foreach (var segment in contour.Segments)
        foreach (var share in (double[])[0, 0.2, 0.5, 0.8])
        {
            var point = segment.PointAt(segment.Length * share);
            ring.DistanceTo(point).ShouldBe(Math.Abs(distance), Accuracy, $"{point} of {segment}");
            if (Math.Abs(distance) > Accuracy)
                ring.Locate(point)
                    .ShouldBe(distance > 0 ? Containment.Outside : Containment.Inside);
        }
    }

    internal static void ShouldHaveTheAreaOfABuffer(Contour ring, double distance) =>
        ShouldHaveTheAreaOfABuffer(new Region(ring), distance);

    /// <summary>The ring with a smaller copy of itself as a hole, where that lies inside.</summary>
    internal static void OfAHoleShouldHaveTheAreaOfABuffer(Contour ring, double distance)
    {
        var hole = ring.Transformed(Transform.Resize(0.3));
        if (ring.Contains(hole.PointAt(0)) && ring.Intersections(hole).Count == 0)
            ShouldHaveTheAreaOfABuffer(new Region(ring, hole), distance);
    }

    private static void ShouldHaveTheAreaOfABuffer(Region region, double distance)
    {
        // Not simplified: by default the input may move by a hundredth of the distance.
        var parameters = new BufferParameters(64) { SimplifyFactor = 1e-6 };
        var buffer = BufferOp.Buffer(Flat.Of(region), distance, parameters);
        // 64 lines to a quarter stray 7.5e-5 of the radius.
        var astray = Flat.Accuracy + 7.5e-5 * Math.Abs(distance);
        var offset = region.Offset(distance);
        offset.Area.ShouldBe(buffer.Area, astray * (region.Length + buffer.Length));
        offset.Validate().IsValid.ShouldBeTrue(offset.Validate().ToString());
    }
}
