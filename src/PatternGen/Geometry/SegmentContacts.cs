using System.Runtime.CompilerServices;

namespace PatternGen.Geometry;

/// <summary>Collects the common points of two segments: four ends and two crossings at most, without allocating.</summary>
internal struct SegmentContacts(Segment first, Segment second, Tolerance tolerance)
{
    private const int MostPoints = 6;
    private const int MostStretches = 2;

    private Points _points;
    private int _count;
    private bool _isTangent;

    internal readonly Tolerance Tolerance => tolerance;

    /// <summary>Ends that lie on the other segment.</summary>
    internal void AddEnds()
    {
        AddIfOn(first, second.Start);
        AddIfOn(first, second.End);
        AddEndsOfFirst();
    }

    /// <summary>Ends of the first segment that lie on the second, whose own ends are none.</summary>
    internal void AddEndsOfFirst()
    {
        AddIfOn(second, first.Start);
        AddIfOn(second, first.End);
    }

    /// <summary>A point of the first segment that lies on the whole line or circle of the second.</summary>
    /// <remarks>
    /// An end that touches may lie up to the merge distance off the other curve, and so, where they cross at a small angle,
    /// much farther along it from the crossing. It is the same contact if the curves stay together all the way.
    /// </remarks>
    internal void AddCrossing(Point point)
    {
        for (var i = 0; i < _count; i++)
            if (StayTogether(_points[i], point))
                return;
        AddIfOn(second, point);
    }

    /// <summary>A tangency next to an end that touches is that touch: where along the curves it lies is only known to the square root.</summary>
    internal void AddTangency(Point point, double spread)
    {
        if (second.DistanceTo(point) > tolerance.Merge)
            return;
        var before = _count;
        Add(point, Math.Max(spread, tolerance.AtTangency));
        _isTangent = _count > before && before == 0;
    }

    /// <summary>Between two contacts the segments run along each other if the middle of that part lies on the second too.</summary>
    internal readonly bool TryFindStretches(out SegmentIntersection found)
    {
        found = default;
        if (_count < 2)
            return false;
        var ordered = Ordered();
        var (stretches, stretchCount) = (new Stretches(), 0);
        var (loose, looseCount) = (new Points(), 0);
        var joinedToLast = false;
        for (var i = 0; i < _count; i++)
        {
            var joinedToNext =
                i + 1 < _count
                && stretchCount < MostStretches
                && IsShared(ordered[i], ordered[i + 1], out stretches[stretchCount]);
            if (joinedToNext)
                stretchCount++;
            else if (!joinedToLast)
                loose[looseCount++] = ordered[i];
            joinedToLast = joinedToNext;
        }
        if (stretchCount == 0)
            return false;
        ReadOnlySpan<Point> points = loose;
        ReadOnlySpan<Segment> shared = stretches;
        found = new(
            IntersectionKind.Overlapping,
            points[..Math.Min(2, looseCount)],
            shared[..stretchCount]
        );
        return true;
    }

    internal readonly SegmentIntersection ToIntersection()
    {
        var kind = _count switch
        {
            0 => IntersectionKind.None,
            1 => _isTangent ? IntersectionKind.Tangent : IntersectionKind.One,
            _ => IntersectionKind.Two,
        };
        var ordered = Ordered();
        ReadOnlySpan<Point> points = ordered;
        return new(kind, points[..Math.Min(2, _count)], []);
    }

    private void AddIfOn(Segment segment, Point point)
    {
        if (segment.DistanceTo(point) <= tolerance.Merge)
            Add(point, tolerance.Merge);
    }

    private void Add(Point point, double sameWithin)
    {
        for (var i = 0; i < _count; i++)
            if (_points[i].DistanceTo(point) <= sameWithin)
                return;
        if (_count < MostPoints)
            _points[_count++] = point;
    }

    /// <summary>The contacts in order along the first segment.</summary>
    private readonly Points Ordered()
    {
        var ordered = new Points();
        for (var i = 0; i < _count; i++)
        {
            var point = _points[i];
            var at = first.LengthAt(point);
            var j = i;
            for (; j > 0 && first.LengthAt(ordered[j - 1]) > at; j--)
                ordered[j] = ordered[j - 1];
            ordered[j] = point;
        }
        return ordered;
    }

    /// <summary>Whether a stretch in common runs between two contacts: as the first segment goes, and as the second does.</summary>
    /// <remarks>
    /// Two ends next to each other may lie farther apart along one segment than the merge distance and not along the other;
    /// so both are asked, for the answer not to hang on which one comes first.
    /// </remarks>
    private readonly bool IsShared(Point from, Point to, out Segment stretch)
    {
        var length = first.LengthAt(to) - first.LengthAt(from);
        var lengthOnSecond = Math.Abs(second.LengthAt(to) - second.LengthAt(from));
        stretch = new(from, to, first.PartBulge(length / first.Length));
        return Math.Min(length, lengthOnSecond) > tolerance.Merge && StayTogether(from, to);
    }

    /// <summary>Whether, half-way between two contacts, each segment is still on the other.</summary>
    private readonly bool StayTogether(Point from, Point to) =>
        IsOnHalfWay(first, second, from, to) && IsOnHalfWay(second, first, from, to);

    private readonly bool IsOnHalfWay(Segment one, Segment other, Point from, Point to) =>
        other.DistanceTo(one.PointAt((one.LengthAt(from) + one.LengthAt(to)) / 2))
        <= tolerance.Merge;

    [InlineArray(MostPoints)]
    private struct Points
    {
        private Point _first;
    }

    [InlineArray(MostStretches)]
    private struct Stretches
    {
        private Segment _first;
    }
}
