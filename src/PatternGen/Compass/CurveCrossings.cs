using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Where two curves of a drawing cross or touch.</summary>
internal static class CurveCrossings
{
    /// <summary>Each place once.</summary>
    /// <exception cref="PatternException">They run along each other.</exception>
    internal static IReadOnlyList<Point> Between(Curve one, Curve other, Tolerance tolerance)
    {
        using var places = new PointMerger(tolerance.Merge);
        if (one.IsCircle && other.IsCircle)
            AddMeeting(one.Circle, other.Circle, tolerance, places);
        else if (one.IsCircle)
            AddMeeting(one.Circle, other.Segment, tolerance, places);
        else if (other.IsCircle)
            AddMeeting(other.Circle, one.Segment, tolerance, places);
        else
            AddMeeting(one.Segment.Intersect(other.Segment, tolerance), places);
        return [.. places.Points];
    }

    private static void AddMeeting(
        Circle one,
        Circle other,
        Tolerance tolerance,
        PointMerger places
    )
    {
        var meeting = CircleMeeting.Of(one, other, tolerance);
        if (meeting.IsSameCircle)
            throw AlongEachOther(one.RightMost);
        if (meeting.Count > 0)
            places.IdOf(meeting.First);
        if (meeting.Count > 1)
            places.IdOf(meeting.Second);
    }

    private static void AddMeeting(SegmentIntersection meeting, PointMerger places)
    {
        if (meeting.StretchCount > 0)
            throw AlongEachOther(meeting.StretchAt(0).Start);
        for (var i = 0; i < meeting.PointCount; i++)
            places.IdOf(meeting.PointAt(i));
    }

    private static void AddMeeting(
        Circle circle,
        Segment segment,
        Tolerance tolerance,
        PointMerger places
    )
    {
        AddMeeting(segment.IntersectHalf(circle.Halves.Upper, tolerance), places);
        AddMeeting(segment.IntersectHalf(circle.Halves.Lower, tolerance), places);
    }

    private static PatternException AlongEachOther(Point place) =>
        new(
            "The curves run along each other, so that no place is the one where they cross.",
            place,
            ["a curve that crosses the other"]
        );

    /// <summary>How far the nearest and the farthest place of a curve are from a point.</summary>
    internal static (double Nearest, double Farthest) Reach(
        Curve curve,
        Point from,
        Tolerance tolerance
    )
    {
        var parts = curve.Segments.ToArray();
        // A far place is an end, or the place straight beyond the centre of an arc.
        IEnumerable<Point> far = parts.SelectMany(part => (Point[])[part.Start, part.End]);
        if (!parts[0].IsLine)
        {
            var centre = parts[0].Centre;
            var beyond = centre.Polar(parts[0].Radius, (centre - from).Direction);
            if (parts.Any(part => part.DistanceTo(beyond) <= tolerance.Merge))
                far = far.Append(beyond);
        }
        return (parts.Min(part => part.DistanceTo(from)), far.Max(from.DistanceTo));
    }
}
