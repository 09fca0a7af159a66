using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Cuts curves off at the edge of a picture.</summary>
internal static class FrameClip
{
    internal static IEnumerable<Chain> Inside(Curve curve, Extents frame)
    {
        if (frame.Contains(curve.Extents))
            return [Chain.Of(curve.Segments)];
        return Chain.Of(curve.Segments).Segments.SelectMany(segment => Parts(segment, frame));
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
