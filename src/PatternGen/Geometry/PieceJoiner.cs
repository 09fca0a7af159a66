namespace PatternGen.Geometry;

/// <summary>Joins neighbouring segments of a ring that lie on one line or circle, up to a half circle.</summary>
internal static class PieceJoiner
{
    internal static List<Segment> Joined(List<Segment> ring, Tolerance tolerance)
    {
        var first = FirstCorner(ring, (side, next) => Join(side, next, tolerance) is not null);
        var joined = new List<Segment> { ring[first] };
        for (var i = 1; i < ring.Count; i++)
        {
            var next = ring[(first + i) % ring.Count];
            if (Join(joined[^1], next, tolerance) is { } longer)
                joined[^1] = longer;
            else
                joined.Add(next);
        }
        return joined;
    }

    /// <summary>The first segment that does not go on from the one before, so that no ring starts in the middle of a side.</summary>
    internal static int FirstCorner(List<Segment> ring, Func<Segment, Segment, bool> goesOn)
    {
        for (var i = 0; i < ring.Count; i++)
            if (!goesOn(ring[(i + ring.Count - 1) % ring.Count], ring[i]))
                return i;
        return 0;
    }

    internal static Segment? Join(Segment segment, Segment next, Tolerance tolerance)
    {
        if (segment.IsLine != next.IsLine || segment.Start == next.End)
            return null;
        // The sweeps add up: the sum rule of the tangent, on a quarter of each.
        var (b, c) = (segment.Bulge, next.Bulge);
        var bulge = (b + c) / (1 - b * c);
        if (b * c < 0 || b * c >= 1 || Math.Abs(bulge) > 1 + tolerance.Merge)
            return null;
        var joined = new Segment(segment.Start, next.End, Math.Clamp(bulge, -1, 1));
        return IsOn(segment.Middle) && IsOn(segment.End) && IsOn(next.Middle) ? joined : null;

        bool IsOn(Point point) => joined.DistanceTo(point) <= tolerance.Merge;
    }
}
