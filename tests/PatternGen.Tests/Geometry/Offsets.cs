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

    internal static void ShouldHaveTheAreaOfABuffer(Contour ring, double distance)
    {
        var flat = Flat.Polygon(ring, 64);
        // Not simplified: by default the input may move by a hundredth of the distance.
        var parameters = new BufferParameters(64) { SimplifyFactor = 1e-6 };
        var buffer = BufferOp.Buffer(flat, distance, parameters);
        // A line in 64 to the quarter leaves 7.5e-5 of the radius between arc and chord.
        var slack = 7.5e-5 * 100 * (ring.Length + buffer.Length);
        ring.Offset(distance).Area.ShouldBe(buffer.Area, slack);
    }
}
