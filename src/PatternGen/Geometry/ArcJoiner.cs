namespace PatternGen.Geometry;

/// <summary>Joins neighbouring arcs of a run that lie on one circle, up to a half circle; straight sides stay as they are.</summary>
internal static class ArcJoiner
{
    /// <summary>
    /// Most arcs joined to one. All of them are measured each time, so that many small steps can't lead away, and a run of
    /// many must not take the square of their number.
    /// </summary>
    private const int Most = 16;

    internal static List<Segment> Joined(List<Segment> run, bool isClosed, Tolerance tolerance)
    {
        var first = isClosed ? FirstCorner(run, tolerance) : 0;
        var joined = new List<Segment>(run.Count);
        var pieces = new List<Segment>();
        for (var i = 0; i < run.Count; i++)
        {
            var next = run[(first + i) % run.Count];
            if (i > 0 && Join(joined[^1], next, pieces, tolerance) is { } longer)
            {
                joined[^1] = longer;
            }
            else
            {
                joined.Add(next);
                pieces.Clear();
            }
            pieces.Add(next);
        }
        return joined;
    }

    /// <summary>The first segment that does not go on from the one before, so that no ring starts in the middle of an arc.</summary>
    private static int FirstCorner(List<Segment> ring, Tolerance tolerance)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            var before = ring[(i + ring.Count - 1) % ring.Count];
            if (Join(before, ring[i], [], tolerance) is null)
                return i;
        }
        return 0;
    }

    private static Segment? Join(
        Segment arc,
        Segment next,
        List<Segment> pieces,
        Tolerance tolerance
    )
    {
        if (arc.IsLine || next.IsLine || pieces.Count >= Most)
            return null;
        return
            PieceJoiner.Join(arc, next, tolerance) is { } joined
            && pieces.TrueForAll(piece => IsOn(joined, piece.Middle) && IsOn(joined, piece.End))
            ? joined
            : null;

        bool IsOn(Segment segment, Point point) => segment.DistanceTo(point) <= tolerance.Merge;
    }
}
