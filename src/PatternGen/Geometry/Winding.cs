namespace PatternGen.Geometry;

/// <summary>How often closed rings run round a point, counter-clockwise positive.</summary>
/// <remarks>
/// A ring is the polygon of its chords plus, for each arc, the small closed loop along the arc and back along the chord.
/// The polygon is counted by the chords that cross the level ray to the right of the point; the loop of an arc counts
/// once if the point lies between arc and chord. Both ask for the side of the chord in one way, so that a point on a
/// chord is never counted twice or missed.
/// </remarks>
internal static class Winding
{
    /// <summary>Winding number of the rings that the segments make up, all of at most a half circle.</summary>
    internal static int Of(ReadOnlySpan<Segment> rings, Point point)
    {
        var turns = 0;
        foreach (var segment in rings)
            turns += Share(segment, point);
        return turns;
    }

    internal static int Of(SegmentRun ring, Point point)
    {
        var turns = 0;
        for (var i = 0; i < ring.Count; i++)
            turns += Share(ring.At(i), point);
        return turns;
    }

    /// <summary>What one segment adds to the winding number of its ring.</summary>
    internal static int Share(Segment segment, Point point)
    {
        var (start, end) = (segment.Start, segment.End);
        var reach = segment.IsLine ? 0 : Math.Abs(segment.Sagitta);
        if (
            Math.Max(start.Y, end.Y) + reach < point.Y
            || Math.Min(start.Y, end.Y) - reach > point.Y
        )
            return 0;
        var isLeft = IsLeftOfChord(start, end, point);
        return ChordShare(start, end, point, isLeft) + ArcShare(segment, point, isLeft);
    }

    private static int ChordShare(Point start, Point end, Point point, bool isLeft)
    {
        var startsAbove = start.Y > point.Y;
        var endsAbove = end.Y > point.Y;
        if (startsAbove == endsAbove)
            return 0;
        if (endsAbove)
            return isLeft ? 1 : 0;
        return isLeft ? 0 : -1;
    }

    private static int ArcShare(Segment segment, Point point, bool isLeft)
    {
        if (segment.Bulge > 0)
            return !isLeft && IsWithinCircle(segment, point) ? 1 : 0;
        if (segment.Bulge < 0)
            return isLeft && IsWithinCircle(segment, point) ? -1 : 0;
        return 0;
    }

    /// <summary>
    /// Side of the chord; a point on it counts as moved a little to the right and, far less, up. That is the rule by which
    /// the upper end of a chord belongs to it and the lower one does not.
    /// </summary>
    private static bool IsLeftOfChord(Point start, Point end, Point point)
    {
        var chord = end - start;
        var side = chord.Cross(point - start);
        if (side != 0)
            return side > 0;
        return chord.Y != 0 ? chord.Y < 0 : chord.X > 0;
    }

    private static bool IsWithinCircle(Segment segment, Point point)
    {
        var side = new ArcFrame(segment).Side(point);
        return segment.Bulge > 0 ? side > 0 : side < 0;
    }
}
