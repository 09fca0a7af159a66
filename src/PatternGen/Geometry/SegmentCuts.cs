namespace PatternGen.Geometry;

/// <summary>Cuts segments wherever they meet each other, so that the pieces meet in their ends only.</summary>
/// <remarks>
/// Points within the merge distance are one; pieces no longer than that vanish. Where segments run along each other, each
/// leaves a piece of its own between the same two points.
/// </remarks>
internal sealed class SegmentCuts
{
    private readonly Segment[] _segments;
    private readonly Tolerance _tolerance;
    private readonly PointMerger _points;
    private readonly List<Place>[] _cuts;

    private SegmentCuts(Segment[] segments, Tolerance tolerance)
    {
        _segments = segments;
        _tolerance = tolerance;
        _points = new(tolerance.Merge);
        _cuts = new List<Place>[segments.Length];
    }

    internal static List<Piece> Of(Segment[] segments, Tolerance tolerance)
    {
        var cuts = new SegmentCuts(segments, tolerance);
        cuts.CutAtEnds();
        cuts.CutAtMeetings();
        return cuts.Pieces();
    }

    /// <summary>Ends come first, so that points found later take over their exact places.</summary>
    private void CutAtEnds()
    {
        for (var i = 0; i < _segments.Length; i++)
        {
            var segment = _segments[i];
            _cuts[i] =
            [
                new(0, _points.IdOf(segment.Start)),
                new(segment.Length, _points.IdOf(segment.End)),
            ];
        }
    }

    private void CutAtMeetings()
    {
        ExtentsGrid
            .Of(_segments, _tolerance)
            .VisitPairs(
                (first, second) =>
                {
                    var meeting = _segments[first].Intersect(_segments[second], _tolerance);
                    for (var i = 0; i < meeting.PointCount; i++)
                        Cut(first, second, meeting.PointAt(i));
                    for (var i = 0; i < meeting.StretchCount; i++)
                        Cut(first, second, meeting.StretchAt(i));
                }
            );
    }

    private void Cut(int first, int second, Segment stretch)
    {
        Cut(first, second, stretch.Start);
        Cut(first, second, stretch.End);
    }

    private void Cut(int first, int second, Point point)
    {
        var id = _points.IdOf(point);
        _cuts[first].Add(new(_segments[first].LengthAt(point), id));
        _cuts[second].Add(new(_segments[second].LengthAt(point), id));
    }

    private List<Piece> Pieces()
    {
        var pieces = new List<Piece>();
        for (var i = 0; i < _segments.Length; i++)
        {
            var cuts = _cuts[i];
            cuts.Sort((a, b) => a.Length.CompareTo(b.Length));
            var total = cuts[^1].Length;
            for (var j = 1; j < cuts.Count; j++)
            {
                var (from, to) = (cuts[j - 1], cuts[j]);
                if (from.Point == to.Point)
                    continue;
                var bulge = _segments[i].PartBulge((to.Length - from.Length) / total);
                var curve = new Segment(
                    _points.Points[from.Point],
                    _points.Points[to.Point],
                    bulge
                );
                pieces.Add(new(from.Point, to.Point, curve));
            }
        }
        return pieces;
    }

    /// <summary>Where a segment is cut: how far along it, and the number of the point.</summary>
    private readonly record struct Place(double Length, int Point);
}
