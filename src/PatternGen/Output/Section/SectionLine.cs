using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The line that a section runs along.</summary>
internal sealed class SectionLine
{
    private readonly Segment _segment;

    /// <exception cref="ArgumentException">Both points are the same.</exception>
    internal SectionLine(Point from, Point to)
    {
        _segment = new(Guard.Place(from), Guard.Place(to));
        Length = _segment.Length;
        Near = Tolerance.For(_segment.Extents).Merge;
        if (Length <= Near)
            throw new ArgumentException(
                $"A section runs between two different points, but both are {from}.",
                nameof(to)
            );
        Direction = _segment.Chord / Length;
    }

    internal Point From => _segment.Start;

    internal Point To => _segment.End;

    internal double Length { get; }

    /// <summary>Direction of length 1.</summary>
    internal Vector Direction { get; }

    /// <summary>Places nearer than this in mm are one.</summary>
    internal double Near { get; }

    internal Extents Extents => _segment.Extents;

    internal Point At(double along) => From + Direction * along;

    internal double Along(Point point) => Direction.Dot(point - From);

    /// <summary>Distance of a point from the line drawn out, positive on its left.</summary>
    internal double Side(Point point) => Direction.Cross(point - From);

    /// <summary>Adds the places where a ring or chain is crossed, or run along for a stretch: the ends of that.</summary>
    internal void AddCrossings(List<double> places, SegmentRun run)
    {
        foreach (var side in run.Segments)
        {
            var meeting = side.Intersect(_segment);
            foreach (var point in meeting.Points)
                places.Add(Along(point));
            foreach (var stretch in meeting.Stretches)
            {
                places.Add(Along(stretch.Start));
                places.Add(Along(stretch.End));
            }
        }
    }

    /// <summary>Returns places on the line in order, those that are nearly the same once.</summary>
    internal List<double> Sorted(IEnumerable<double> places)
    {
        var sorted = new List<double>();
        foreach (var place in places.Select(place => Math.Clamp(place, 0, Length)).Order())
            if (sorted.Count == 0 || place - sorted[^1] > Near)
                sorted.Add(place);
        return sorted;
    }
}
