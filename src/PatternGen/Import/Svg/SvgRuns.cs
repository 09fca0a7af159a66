using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Makes contours and chains of segments that follow one another.</summary>
internal static class SvgRuns
{
    /// <summary>Files carry up to six decimals; arcs of one circle come apart by as much.</summary>
    private const double LeastRounding = 1e-6;

    /// <summary>Returns the run and how far it may lie off the file, in mm; null if nothing is left of it.</summary>
    /// <param name="segments">What it is made of, at least one.</param>
    /// <param name="isClosed">Whether it goes back to its start.</param>
    /// <param name="rounding">How far the numbers of the file may have been moved, in mm.</param>
    internal static (SegmentRun Run, double Accuracy)? Of(
        List<Segment> segments,
        bool isClosed,
        double rounding
    )
    {
        // The ends of neighbouring arcs are moved apart by both of their roundings.
        var tolerance = Tolerance.OfMerge(Math.Max(2 * rounding, LeastRounding));
        var ring = isClosed ? Closed(segments, tolerance) : segments;
        if (ring.Count == 0)
            return null;
        var accuracy = Accuracy(ring, rounding);
        // Out and straight back is one line.
        if (isClosed && ring.Count == 2 && ring[0].IsLine && ring[1].IsLine)
            return (Chain.Of(ring[0]), accuracy);
        var (joined, moved) = ArcJoiner.Joined(ring, isClosed, tolerance);
        return (isClosed ? Contour.Of(joined) : Chain.Of(joined), accuracy + moved);
    }

    /// <remarks>
    /// Both coordinates of a corner are rounded. The middle of an arc of up to a quarter turn follows its ends, and its height
    /// the length of the chord by at most a half, together √2 times as far; it follows the radius by √2 - 1.
    /// </remarks>
    private static double Accuracy(List<Segment> segments, double rounding) =>
        segments.TrueForAll(segment => segment.IsLine)
            ? Math.Sqrt(2) * rounding
            : (2 + Math.Sqrt(2) - 1) * rounding;

    /// <summary>Brings the end to the start: by a line, or exactly if it is there but for rounding.</summary>
    private static List<Segment> Closed(List<Segment> segments, Tolerance tolerance)
    {
        var (first, last) = (segments[0], segments[^1]);
        if (last.End == first.Start)
            return segments;
        if (!tolerance.Same(last.End, first.Start))
            return [.. segments, new(last.End, first.Start)];
        var rest = segments[..^1];
        return last.Start == first.Start
            ? rest
            : [.. rest, new(last.Start, first.Start, last.Bulge)];
    }
}
