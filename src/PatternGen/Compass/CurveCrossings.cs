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
        foreach (var part in one.Segments)
        foreach (var otherPart in other.Segments)
        {
            var meeting = part.Intersect(otherPart, tolerance);
            if (meeting.StretchCount > 0)
                throw new PatternException(
                    "The curves run along each other, so that no place is the one where they cross.",
                    meeting.StretchAt(0).Start,
                    ["a curve that crosses the other"]
                );
            for (var i = 0; i < meeting.PointCount; i++)
                places.IdOf(meeting.PointAt(i));
        }
        return [.. places.Points];
    }

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
