namespace PatternGen.Geometry;

public readonly partial record struct Segment
{
    /// <summary>Returns what this segment and another have in common, within the tolerance for their extents.</summary>
    public SegmentIntersection Intersect(Segment other) =>
        Intersect(other, Tolerance.For(Extents.Including(other.Extents)));

    /// <summary>Returns what this segment and another have in common.</summary>
    /// <param name="other">The other segment.</param>
    /// <param name="tolerance">
    /// Curves nearer than its merge distance touch; points nearer than that, or than its square root where the curves
    /// are tangent, are one.
    /// </param>
    /// <returns>The circles round (0, 0) and (2, 0) with radius 2 give (1, -√3) and (1, √3).</returns>
    public SegmentIntersection Intersect(Segment other, Tolerance tolerance)
    {
        var merge = tolerance.Merge;
        if (!Extents.Grown(merge).Touches(other.Extents))
            return default;
        var contacts = new Contacts(this, tolerance);
        contacts.AddEndsOn(other);
        if (contacts.TryFindStretches(other, out var stretches))
            return stretches;
        var first = new ArcFrame(this);
        var second = new ArcFrame(other);
        if (first.Half > 0 && second.Half > 0)
            AddCrossings(first, second, other, ref contacts);
        return contacts.ToIntersection();
    }

    /// <summary>
    /// Along the first segment, weight × side of the second is a polynomial of degree two in s, whether either is a line
    /// or an arc: a s² + b s + c. Its zeros are the crossings.
    /// </summary>
    private static void AddCrossings(
        ArcFrame first,
        ArcFrame second,
        Segment other,
        ref Contacts contacts
    )
    {
        var offset = first.Middle - second.Middle;
        var gradient = second.Normal - second.Curvature * offset;
        var c = second.Side(first.Middle);
        var b = gradient.Dot(first.Tangent);
        var a =
            first.Curvature * first.Curvature * c / 4
            + first.Curvature / 2 * gradient.Dot(first.Normal)
            - second.Curvature / 2;

        var turning = -b / (2 * a);
        if (Math.Abs(turning) < first.Half)
        {
            // Where the gap between the curves is least or greatest; there it is a distance to first order.
            var gap = (c - b * b / (4 * a)) / first.Weight(turning);
            if (Math.Abs(gap) <= contacts.Tolerance.Merge)
            {
                contacts.AddTangency(first.At(turning), other);
                return;
            }
        }

        var discriminant = b * b - 4 * a * c;
        if (discriminant < 0)
            return;
        // The sum that does not cancel, then the other root from the product of both.
        var sum = -(b + Math.CopySign(Math.Sqrt(discriminant), b)) / 2;
        Span<double> roots = [sum / a, sum == 0 ? double.NaN : c / sum];
        foreach (var root in roots)
        {
            if (!double.IsFinite(root))
                continue;
            var slope = 2 * a * root + b;
            var polished =
                slope == 0 ? root : root - second.Side(first.At(root)) * first.Weight(root) / slope;
            if (Math.Abs(polished) <= first.Half)
                contacts.AddCrossing(first.At(polished), other);
        }
    }

    /// <summary>Collects the common points of two segments, at most a handful, in order along the first.</summary>
    private ref struct Contacts(Segment first, Tolerance tolerance)
    {
        private PointBuffer _points;
        private int _count;
        private bool _tangent;

        internal Tolerance Tolerance => tolerance;

        internal void AddEndsOn(Segment second)
        {
            AddIfNear(second.Start, first);
            AddIfNear(second.End, first);
            AddIfNear(first.Start, second);
            AddIfNear(first.End, second);
        }

        internal void AddCrossing(Point point, Segment second)
        {
            if (second.DistanceTo(point) <= tolerance.Merge)
                Add(point, tolerance.Merge);
        }

        /// <summary>A tangency next to an end that touches is that touch: the position of a tangency is only known to the square root.</summary>
        internal void AddTangency(Point point, Segment second)
        {
            if (second.DistanceTo(point) > tolerance.Merge)
                return;
            var before = _count;
            Add(point, tolerance.AtTangency);
            _tangent = _count > before && before == 0;
        }

        /// <summary>Between two contacts the segments run along each other if the middle of that part lies on the second too.</summary>
        internal readonly bool TryFindStretches(Segment second, out SegmentIntersection found)
        {
            Span<Segment> stretches = new Segment[2];
            var stretchCount = 0;
            Span<Point> loose = new Point[4];
            var looseCount = 0;
            found = default;
            if (_count < 2)
                return false;
            Span<Point> ordered = stackalloc Point[4];
            Order(ordered);
            var joinedToLast = false;
            for (var i = 0; i < _count; i++)
            {
                var joinedToNext =
                    i + 1 < _count
                    && stretchCount < 2
                    && IsShared(ordered[i], ordered[i + 1], second, out stretches[stretchCount]);
                if (joinedToNext)
                    stretchCount++;
                else if (!joinedToLast)
                    loose[looseCount++] = ordered[i];
                joinedToLast = joinedToNext;
            }
            if (stretchCount == 0)
                return false;
            found = new(
                IntersectionKind.Overlapping,
                loose[..Math.Min(2, looseCount)],
                stretches[..stretchCount]
            );
            return true;
        }

        internal readonly SegmentIntersection ToIntersection()
        {
            Span<Point> ordered = stackalloc Point[4];
            Order(ordered);
            var kind = _count switch
            {
                0 => IntersectionKind.None,
                1 => _tangent ? IntersectionKind.Tangent : IntersectionKind.One,
                _ => IntersectionKind.Two,
            };
            return new(kind, ordered[..Math.Min(2, _count)], []);
        }

        private void AddIfNear(Point point, Segment segment)
        {
            if (segment.DistanceTo(point) <= tolerance.Merge)
                Add(point, tolerance.Merge);
        }

        private void Add(Point point, double sameWithin)
        {
            for (var i = 0; i < _count; i++)
                if (_points[i].DistanceTo(point) <= sameWithin)
                    return;
            if (_count < 4)
                _points[_count++] = point;
        }

        private readonly void Order(Span<Point> ordered)
        {
            for (var i = 0; i < _count; i++)
            {
                var point = _points[i];
                var at = first.LengthAt(point);
                var j = i;
                for (; j > 0 && first.LengthAt(ordered[j - 1]) > at; j--)
                    ordered[j] = ordered[j - 1];
                ordered[j] = point;
            }
        }

        private readonly bool IsShared(Point from, Point to, Segment second, out Segment stretch)
        {
            var start = first.LengthAt(from);
            var end = first.LengthAt(to);
            stretch = new(from, to, first.PartBulge((end - start) / first.Length));
            return end - start > tolerance.Merge
                && second.DistanceTo(first.PointAt((start + end) / 2)) <= tolerance.Merge;
        }
    }

    [System.Runtime.CompilerServices.InlineArray(4)]
    private struct PointBuffer
    {
        private Point _first;
    }
}
