using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Makes contours and chains of segments that follow one another.</summary>
internal static class SvgRuns
{
    /// <summary>Files carry up to six decimals; arcs of one circle come apart by as much.</summary>
    private const double LeastRounding = 1e-6;

    /// <summary>How far a run may lie off the file, in mm, when its numbers are rounded so far.</summary>
    /// <remarks>
    /// Both coordinates of a corner are rounded. The height of an arc of up to a quarter turn follows its chord by a half and
    /// its radius by less than that; and joined arcs may leave their pieces by as much as their corners were moved.
    /// </remarks>
    internal static double Accuracy(List<Segment> segments, double rounding)
    {
        var corner = Math.Sqrt(2) * rounding;
        return segments.TrueForAll(segment => segment.IsLine) ? corner : 2 * corner + Join(rounding);
    }

    /// <summary>How far arcs may lie off those that they are joined to: their ends, each moved by rounding, lean on a quarter turn.</summary>
    private static double Join(double rounding) => Math.Max(2 * rounding, LeastRounding);

    /// <summary>Returns the run; null if nothing is left of it.</summary>
    /// <param name="segments">What it is made of, at least one.</param>
    /// <param name="isClosed">Whether it goes back to its start.</param>
    /// <param name="rounding">How far the numbers of the file may be off, in mm.</param>
    internal static SegmentRun? Of(List<Segment> segments, bool isClosed, double rounding)
    {
        var tolerance = Tolerance.OfMerge(Join(rounding));
        var ring = isClosed ? Closed(segments, tolerance) : segments;
        if (ring.Count == 0)
            return null;
        // Out and straight back is one line.
        if (isClosed && ring.Count == 2 && ring[0].IsLine && ring[1].IsLine)
            return Chain.Of(ring[0]);
        var joined = ArcJoiner.Joined(ring, isClosed, tolerance);
        return isClosed ? Contour.Of(joined) : Chain.Of(joined);
    }

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
