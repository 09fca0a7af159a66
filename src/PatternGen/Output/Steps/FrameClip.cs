using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Cuts curves off at the edge of a picture.</summary>
internal static class FrameClip
{
    internal static IEnumerable<Chain> Inside(Curve curve, Extents frame)
    {
        if (frame.Contains(curve.Extents))
            return [Whole(curve)];
        var segments = curve.IsCircle
            ? curve.Circle.ToContour().Segments
            : Chain.Of(curve.Segment).Segments;
        return segments.SelectMany(segment => Parts(segment, frame));
    }

    private static Chain Whole(Curve curve)
    {
        if (!curve.IsCircle)
            return Chain.Of(curve.Segment);
        // Once round and back, which is written as a circle.
        var ring = curve.Circle.ToContour().Vertices;
        return new([.. ring, ring[0]]);
    }

    private static IEnumerable<Chain> Parts(Segment segment, Extents frame)
    {
        var cuts = new List<double> { 0, segment.Length };
        foreach (var side in Contour.Rectangle(frame.Min, frame.Max).Segments)
            cuts.AddRange(side.Intersect(segment).Points.Select(segment.LengthAt));
        cuts.Sort();
        var path = Chain.Of(segment);
        for (var i = 1; i < cuts.Count; i++)
            if (
                cuts[i] > cuts[i - 1]
                && frame.Contains(segment.PointAt((cuts[i - 1] + cuts[i]) / 2))
            )
                yield return path.Part(cuts[i - 1], cuts[i]);
    }
}
