namespace PatternGen.Geometry;

/// <summary>Where strands are cut: at their ends, and at each point that they have in common.</summary>
/// <remarks>
/// Where two strands cross clearly, arithmetic knows the point to its last digits. Where they are tangent or cross at a
/// small angle they stay together for a while, and any place there is as good; so such meetings come last, and take over
/// points that already lie on both. Three curves tangent in one point then share it.
/// </remarks>
internal sealed class StrandCuts : IDisposable
{
    /// <summary>
    /// Sine of the angle from which on two strands cross clearly: places of one crossing then differ by ten merge distances
    /// at most. Larger values would only ask for more work.
    /// </summary>
    private const double ClearSine = 0.1;

    /// <summary>How far at most two strands stay together, in merge distances over the sine of their angle. Only a quick test, so far more would only ask for more work.</summary>
    private const double Together = 8;

    /// <summary>How far apart, in tolerances at a tangency, points of one tangency lie at most. The check of arrangements calls more a stretch.</summary>
    private const double Tangencies = 4;

    private readonly Strand[] _strands;
    private readonly Tolerance _tolerance;
    private readonly PointMerger _points;
    private readonly List<(int First, int Second, Point Point, double Reach)> _unclear = [];
    private readonly List<int> _candidates = [];
    private readonly List<int> _shared = [];

    private StrandCuts(Strand[] strands, Tolerance tolerance)
    {
        _strands = strands;
        _tolerance = tolerance;
        _points = new(tolerance.Merge);
        All = new(strands.Length);
        AtOverlaps = new(strands.Length);
    }

    /// <summary>The points, merged, by number.</summary>
    internal ReadOnlySpan<Point> Points => _points.Points;

    internal CutLists All { get; }

    /// <summary>Only the cuts at the ends of strands and of stretches where two run along each other.</summary>
    internal CutLists AtOverlaps { get; }

    /// <summary>Whether any two strands run along each other.</summary>
    internal bool HasOverlaps { get; private set; }

    internal static StrandCuts Of(Strand[] strands, Tolerance tolerance)
    {
        var cuts = new StrandCuts(strands, tolerance);
        cuts.CutAtEnds();
        new ExtentsGrid(
            Array.ConvertAll(strands, strand => strand.Extents.Grown(tolerance.Merge))
        ).VisitPairs(cuts.CutAtMeetings);
        // Twice, for the second time knows what the first one found.
        for (var times = 0; times < 2; times++)
            foreach (var (first, second, point, reach) in cuts._unclear)
                cuts.CutWhereTogether(first, second, point, reach);
        return cuts;
    }

    /// <summary>The number of a point that a whole circle gets which nothing meets: it starts and ends there.</summary>
    internal int SeamOf(Circle circle) => _points.IdOf(circle.RightMost);

    public void Dispose()
    {
        All.Dispose();
        AtOverlaps.Dispose();
        _points.Dispose();
    }

    /// <summary>Ends come first, so that points found later take over their exact places.</summary>
    private void CutAtEnds()
    {
        for (var i = 0; i < _strands.Length; i++)
            if (!_strands[i].IsWhole)
            {
                CutAtEnd(i, _points.IdOf(_strands[i].Start));
                CutAtEnd(i, _points.IdOf(_strands[i].End));
            }

        void CutAtEnd(int strand, int point)
        {
            All.Add(strand, point);
            AtOverlaps.Add(strand, point);
        }
    }

    private void CutAtMeetings(int first, int second)
    {
        ref readonly var one = ref _strands[first];
        ref readonly var other = ref _strands[second];
        if (one.IsRound && other.IsRound)
            MeetRound(first, second);
        else if (one.IsRound)
            MeetRoundAndSegment(first, second);
        else if (other.IsRound)
            MeetRoundAndSegment(second, first);
        else
            Meet(one.Segment.Intersect(other.Segment, _tolerance), first, second);
    }

    private void MeetRound(int first, int second)
    {
        var meeting = CircleMeeting.Of(_strands[first].Circle, _strands[second].Circle, _tolerance);
        if (meeting.IsSameCircle)
        {
            Overlap(first, second);
            return;
        }
        MeetAtEnds(first, second);
        if (meeting.Count > 0)
            MeetIfReached(first, second, meeting.First);
        if (meeting.Count > 1)
            MeetIfReached(first, second, meeting.Second);
    }

    /// <summary>The circle meets the segment as its two halves do, unless it runs along it.</summary>
    private void MeetRoundAndSegment(int round, int segment)
    {
        var circle = _strands[round].Circle;
        var other = _strands[segment].Segment;
        if (IsAlong(circle, other))
        {
            Overlap(round, segment);
            return;
        }
        MeetAtEnds(round, segment);
        var (upper, lower) = circle.Halves;
        Meet(other.IntersectHalf(upper, _tolerance), round, segment);
        Meet(other.IntersectHalf(lower, _tolerance), round, segment);
    }

    private bool IsAlong(Circle circle, Segment segment)
    {
        return IsOn(segment.Start) && IsOn(segment.Middle) && IsOn(segment.End);

        bool IsOn(Point point) =>
            Math.Abs(circle.Centre.DistanceTo(point) - circle.Radius)
            <= CircleMeeting.SameWithin * _tolerance.Merge;
    }

    private void Meet(SegmentIntersection meeting, int first, int second)
    {
        for (var i = 0; i < meeting.PointCount; i++)
            MeetIfReached(first, second, meeting.PointAt(i));
        for (var i = 0; i < meeting.StretchCount; i++)
        {
            HasOverlaps = true;
            CutAtOverlap(first, second, meeting.StretchAt(i).Start);
            CutAtOverlap(first, second, meeting.StretchAt(i).End);
        }
        if (
            meeting.Kind == IntersectionKind.Two
            && StayTogether(first, second, meeting.First, meeting.Second)
        )
        {
            HasOverlaps = true;
            CutAtOverlap(first, second, meeting.First);
            CutAtOverlap(first, second, meeting.Second);
        }
    }

    /// <summary>Strands on one circle are cut where the other starts or ends, and run along each other if that is not where they end themselves.</summary>
    private void Overlap(int first, int second)
    {
        CutAtEndsOf(first, second);
        CutAtEndsOf(second, first);

        void CutAtEndsOf(int ending, int cut)
        {
            foreach (var end in EndsOf(ending))
            {
                if (_strands[cut].DistanceTo(end) > CircleMeeting.SameWithin * _tolerance.Merge)
                    continue;
                HasOverlaps |= !IsEndOf(cut, end);
                CutAtOverlap(ending, cut, end);
            }
        }
    }

    /// <summary>An end that touches may lie next to the other strand without the two circles meeting there.</summary>
    private void MeetAtEnds(int first, int second)
    {
        foreach (var end in EndsOf(first))
            if (IsOn(second, end))
                Meet(first, second, end);
        foreach (var end in EndsOf(second))
            if (IsOn(first, end))
                Meet(first, second, end);
    }

    private bool IsOn(int strand, Point point) =>
        _strands[strand].DistanceTo(point) <= _tolerance.Merge;

    private Point[] EndsOf(int strand) =>
        _strands[strand].IsWhole ? [] : [_strands[strand].Start, _strands[strand].End];

    private bool IsEndOf(int strand, Point point) =>
        !_strands[strand].IsWhole
        && (
            _tolerance.Same(point, _strands[strand].Start)
            || _tolerance.Same(point, _strands[strand].End)
        );

    /// <summary>A place where the circles meet is one of the strands if it lies on both.</summary>
    private void MeetIfReached(int first, int second, Point point)
    {
        if (Reaches(first) && Reaches(second))
            Meet(first, second, point);

        bool Reaches(int strand) => _strands[strand].IsWhole || IsOn(strand, point);
    }

    private void Meet(int first, int second, Point point)
    {
        var sine = Math.Abs(
            _strands[first].TangentAt(point).Cross(_strands[second].TangentAt(point))
        );
        if (sine > ClearSine)
            Cut(first, second, _points.IdOf(point));
        else
            _unclear.Add((first, second, point, Together * _tolerance.Merge / sine));
    }

    /// <summary>
    /// Strands that stay together for a while share the point where they meet, if it is known, and every point there that
    /// either is cut at; if there is none, the place becomes one.
    /// </summary>
    private void CutWhereTogether(int first, int second, Point place, double reach)
    {
        var known = _points.KnownIdOf(place);
        _shared.Clear();
        if (known >= 0)
            _shared.Add(known);
        _candidates.Clear();
        All.CopyTo(_candidates, first);
        All.CopyTo(_candidates, second);
        foreach (var candidate in _candidates)
            if (
                IsNear(Points[candidate])
                && !_shared.Contains(candidate)
                && IsShared(Points[candidate])
            )
                _shared.Add(candidate);
        if (_shared.Count == 0)
            _shared.Add(_points.IdOf(place));
        foreach (var point in _shared)
            Cut(first, second, point);
        if (_shared.Exists(point => IsFar(Points[point], Points[_shared[0]])))
            CutAtStretch(first, second);

        bool IsNear(Point point) => (point - place).LengthSquared <= reach * reach;

        bool IsShared(Point point) =>
            IsOn(first, point) && IsOn(second, point) && StayTogether(first, second, place, point);
    }

    private bool IsFar(Point one, Point other) =>
        one.DistanceTo(other) > Tangencies * _tolerance.AtTangency;

    /// <summary>
    /// Strands at a very small angle that share points farther apart than at a tangency run along each other between them.
    /// They are made one there: from the last shared point they leave without a gap, and may then come upon another point
    /// together that lay beyond the tolerance before.
    /// </summary>
    private void CutAtStretch(int first, int second)
    {
        HasOverlaps = true;
        foreach (var point in _shared)
        {
            AtOverlaps.Add(first, point);
            AtOverlaps.Add(second, point);
        }
    }

    /// <summary>Whether, half-way between two points of both, each strand is still on the other.</summary>
    private bool StayTogether(int first, int second, Point from, Point to)
    {
        ref readonly var one = ref _strands[first];
        ref readonly var other = ref _strands[second];
        return other.DistanceTo(one.HalfWay(from, to)) <= _tolerance.Merge
            && one.DistanceTo(other.HalfWay(from, to)) <= _tolerance.Merge;
    }

    private void CutAtOverlap(int first, int second, Point point)
    {
        var id = _points.IdOf(point);
        AtOverlaps.Add(first, id);
        AtOverlaps.Add(second, id);
        Cut(first, second, id);
    }

    private void Cut(int first, int second, int point)
    {
        All.Add(first, point);
        All.Add(second, point);
    }
}
