namespace PatternGen.Geometry;

/// <summary>Where strands are cut: at their ends, and at each point that they have in common.</summary>
internal sealed class StrandCuts
{
    private readonly Strand[] _strands;
    private readonly Tolerance _tolerance;
    private readonly PointMerger _points;
    private readonly List<(int Strand, int Point)> _cuts = [];

    private StrandCuts(Strand[] strands, Tolerance tolerance)
    {
        _strands = strands;
        _tolerance = tolerance;
        _points = new(tolerance.Merge);
    }

    /// <summary>The points, merged, by number.</summary>
    internal IReadOnlyList<Point> Points => _points.Points;

    /// <summary>Each cut: a strand and a point on it, in no order; the same cut may be there several times.</summary>
    internal List<(int Strand, int Point)> All => _cuts;

    internal static StrandCuts Of(Strand[] strands, Tolerance tolerance)
    {
        var cuts = new StrandCuts(strands, tolerance);
        cuts.CutAtEnds();
        var grid = new ExtentsGrid(
            Array.ConvertAll(strands, strand => strand.Extents.Grown(tolerance.Merge))
        );
        grid.VisitPairs(cuts.CutAtMeetings);
        return cuts;
    }

    /// <summary>The number of a point that a whole circle gets which nothing meets: it starts and ends there.</summary>
    internal int SeamOf(Circle circle) => _points.IdOf(circle.RightMost);

    /// <summary>Ends come first, so that points found later take over their exact places.</summary>
    private void CutAtEnds()
    {
        for (var i = 0; i < _strands.Length; i++)
            if (!_strands[i].IsWhole)
            {
                _cuts.Add((i, _points.IdOf(_strands[i].Start)));
                _cuts.Add((i, _points.IdOf(_strands[i].End)));
            }
    }

    private void CutAtMeetings(int first, int second)
    {
        ref readonly var one = ref _strands[first];
        ref readonly var other = ref _strands[second];
        if (one.IsRound && other.IsRound)
            CutRound(first, second);
        else if (one.IsRound)
            CutRoundAndSegment(first, second);
        else if (other.IsRound)
            CutRoundAndSegment(second, first);
        else
            CutAt(one.Segment.Intersect(other.Segment, _tolerance), first, second);
    }

    private void CutRound(int first, int second)
    {
        ref readonly var one = ref _strands[first];
        ref readonly var other = ref _strands[second];
        var meeting = CircleMeeting.Of(one.Circle, other.Circle, _tolerance);
        if (meeting.IsSameCircle)
        {
            CutAtEndsOf(second, first);
            CutAtEndsOf(first, second);
        }
        if (meeting.Count > 0)
            CutIfReached(first, second, meeting.First);
        if (meeting.Count > 1)
            CutIfReached(first, second, meeting.Second);
    }

    /// <summary>Cuts a strand where another on the same circle starts and ends; a whole circle does neither.</summary>
    private void CutAtEndsOf(int ending, int cut)
    {
        if (_strands[ending].IsWhole)
            return;
        CutIfOn(_strands[ending].Start);
        CutIfOn(_strands[ending].End);

        void CutIfOn(Point end)
        {
            var strand = _strands[cut];
            if (strand.IsRound || strand.Segment.DistanceTo(end) <= _tolerance.Merge)
                CutIfReached(ending, cut, end);
        }
    }

    /// <summary>The circle meets the segment as its two halves do. An arc along it cuts it in its ends and nowhere else.</summary>
    private void CutRoundAndSegment(int round, int segment)
    {
        var circle = _strands[round].Circle;
        var other = _strands[segment].Segment;
        if (IsAlong(circle, other))
        {
            CutAtEndsOf(segment, round);
            CutAtEndsOf(round, segment);
            return;
        }
        foreach (var half in circle.ToContour().Segments)
            CutAt(half.Intersect(other, _tolerance), round, segment);
    }

    private bool IsAlong(Circle circle, Segment segment)
    {
        return IsOn(segment.Start) && IsOn(segment.Middle) && IsOn(segment.End);

        bool IsOn(Point point) =>
            Math.Abs(circle.Centre.DistanceTo(point) - circle.Radius) <= _tolerance.Merge;
    }

    private void CutAt(SegmentIntersection meeting, int first, int second)
    {
        for (var i = 0; i < meeting.PointCount; i++)
            CutIfReached(first, second, meeting.PointAt(i));
        for (var i = 0; i < meeting.StretchCount; i++)
        {
            CutIfReached(first, second, meeting.StretchAt(i).Start);
            CutIfReached(first, second, meeting.StretchAt(i).End);
        }
    }

    private void CutIfReached(int first, int second, Point point)
    {
        if (Reaches(first) && Reaches(second))
            Cut(first, second, point);

        // A segment was asked itself, and reaches all that was found on it.
        bool Reaches(int strand) =>
            !_strands[strand].IsRound || _strands[strand].Reaches(point, _tolerance);
    }

    private void Cut(int first, int second, Point point)
    {
        var id = _points.IdOf(point);
        _cuts.Add((first, id));
        _cuts.Add((second, id));
    }
}
