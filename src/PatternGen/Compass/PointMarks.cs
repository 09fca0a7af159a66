using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The points that a drawing has marked, and the next letters and numbers.</summary>
internal sealed class PointMarks
{
    private readonly List<MarkedPoint> _points = [];
    private readonly HashSet<MarkedPoint> _known = [];
    private Extents? _extents;
    private int _letters;
    private int _numbers;

    /// <summary>How near points count as one, in a drawing as large as this one is so far.</summary>
    internal Tolerance Tolerance => _extents is { } all ? Tolerance.For(all) : default;

    internal bool Has(MarkedPoint point) => _known.Contains(point);

    /// <summary>A single point, with a letter.</summary>
    internal MarkedPoint Lettered(Point at) => Find(at) ?? Add(Letter(_letters++), at);

    /// <summary>A point of a round, with a number that was reserved.</summary>
    internal MarkedPoint Numbered(int number, Point at) =>
        Find(at) ?? Add(FormattableString.Invariant($"{number}"), at);

    /// <summary>Points of a round, with numbers that were reserved.</summary>
    internal MarkedPoint[] Numbered(RoundNumbers numbers, IEnumerable<Point> places) =>
        [.. places.Select((at, i) => Numbered(numbers.At(i), at))];

    /// <summary>Points of a round, with the next numbers.</summary>
    internal MarkedPoint[] NextNumbered(Point[] places) =>
        Numbered(new(Reserve(places.Length), 1), places);

    /// <summary>The point that curves all go through between their ends; null if there is none.</summary>
    internal MarkedPoint? Within(IReadOnlyList<Segment> curves)
    {
        var tolerance = Tolerance;
        return _points.Find(point => curves.All(curve => IsWithin(curve, point.Point, tolerance)));
    }

    private static bool IsWithin(Segment curve, Point point, Tolerance tolerance) =>
        curve.DistanceTo(point) <= tolerance.Merge
        && !tolerance.Same(curve.Start, point)
        && !tolerance.Same(curve.End, point);

    /// <summary>The first of so many numbers in a row, kept for a round.</summary>
    internal int Reserve(int count)
    {
        var first = _numbers + 1;
        _numbers += count;
        return first;
    }

    /// <summary>Makes the tolerance fit a drawing that reaches so far.</summary>
    internal void Reach(Extents extents) => _extents = _extents?.Including(extents) ?? extents;

    private MarkedPoint? Find(Point at)
    {
        var tolerance = Tolerance;
        return _points.Find(point => tolerance.Same(point.Point, at));
    }

    private MarkedPoint Add(string label, Point at)
    {
        var point = new MarkedPoint(label, Guard.Place(at));
        Reach(Extents.Of(at));
        _points.Add(point);
        _known.Add(point);
        return point;
    }

    /// <summary>A to Z, then AA, AB and so on.</summary>
    private static string Letter(int index)
    {
        const int alphabet = 26;
        var last = (char)('A' + index % alphabet);
        return index < alphabet ? $"{last}" : Letter(index / alphabet - 1) + last;
    }
}
