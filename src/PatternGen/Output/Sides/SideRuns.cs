using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Joins pieces end to end into runs, going straight on wherever it can.</summary>
/// <remarks>
/// At every point the ends that meet there are joined in pairs, the straightest pair first. Where an odd number meets,
/// one end is left over and a run ends; so there are as few open runs as the drawing allows.
/// An end is a number: twice the piece's, plus 1 where the piece ends.
/// </remarks>
internal sealed class SideRuns
{
    /// <summary>Directions and curvatures are compared in these steps, so that a tie is not decided by noise.</summary>
    private const double Step = 1e-9;

    private const int None = -1;

    private readonly SidePieces _pieces;
    private readonly int[] _mates;
    private readonly bool[] _isDrawn;

    private SideRuns(SidePieces pieces)
    {
        _pieces = pieces;
        _mates = new int[2 * pieces.Sides.Count];
        _isDrawn = new bool[pieces.Sides.Count];
        Array.Fill(_mates, None);
    }

    internal static IReadOnlyList<Chain> Of(SidePieces pieces)
    {
        var runs = new SideRuns(pieces);
        var ends = runs.EndsByPoint();
        for (var point = 0; point < ends.Count; point++)
            runs.Join(ends[point]);
        return runs.Walk();
    }

    private Buckets EndsByPoint()
    {
        var points = new int[_mates.Length];
        for (var end = 0; end < points.Length; end++)
            points[end] = PointOf(end);
        return new(points, _pieces.Points.Count);
    }

    private void Join(ReadOnlySpan<int> ends)
    {
        if (ends.Length == 2)
            Join(ends[0], ends[1]);
        else if (ends.Length > 2)
            JoinStraightest(ends.ToArray());
    }

    private void JoinStraightest(int[] ends)
    {
        var departures = Array.ConvertAll(ends, DepartureOf);
        var pairs =
            from one in Enumerable.Range(0, ends.Length)
            from other in Enumerable.Range(0, one)
            let bend = departures[one].BendTo(departures[other])
            orderby bend.Turn, bend.Curvature, other, one
            select (One: ends[one], Other: ends[other]);
        foreach (var pair in pairs)
            if (_mates[pair.One] == None && _mates[pair.Other] == None)
                Join(pair.One, pair.Other);
    }

    private void Join(int one, int other)
    {
        _mates[one] = other;
        _mates[other] = one;
    }

    private List<Chain> Walk()
    {
        var chains = new List<Chain>();
        for (var end = 0; end < _mates.Length; end++)
            if (_mates[end] == None && !_isDrawn[end / 2])
                chains.Add(WalkFrom(end));
        // What has no loose end runs round.
        for (var piece = 0; piece < _isDrawn.Length; piece++)
            if (!_isDrawn[piece])
                chains.Add(WalkFrom(2 * piece));
        return chains;
    }

    private Chain WalkFrom(int end)
    {
        var vertices = new List<Vertex>();
        while (end != None && !_isDrawn[end / 2])
        {
            _isDrawn[end / 2] = true;
            vertices.Add(new(_pieces.Points[PointOf(end)], BulgeFrom(end)));
            var arrival = end ^ 1;
            end = _mates[arrival];
            if (end == None || _isDrawn[end / 2])
                vertices.Add(new(_pieces.Points[PointOf(arrival)]));
        }
        return new(vertices);
    }

    private int PointOf(int end)
    {
        var side = _pieces.Sides[end / 2];
        return end % 2 == 0 ? side.From : side.To;
    }

    private double BulgeFrom(int end)
    {
        var bulge = _pieces.Sides[end / 2].Bulge;
        return end % 2 == 0 ? bulge : -bulge;
    }

    private Departure DepartureOf(int end)
    {
        var segment = new Segment(
            _pieces.Points[PointOf(end)],
            _pieces.Points[PointOf(end ^ 1)],
            BulgeFrom(end)
        );
        return new(segment.TangentAt(0), segment.Curvature);
    }

    /// <summary>How a piece leaves a point: its direction and its curvature.</summary>
    private readonly record struct Departure(Vector Direction, double Curvature)
    {
        /// <summary>How much a run bends that comes in by this piece and goes out by the other, for comparing.</summary>
        internal (double Turn, double Curvature) BendTo(Departure other) =>
            (
                Math.Round((1 + Direction.Dot(other.Direction)) / Step),
                Math.Round(Math.Abs(Curvature + other.Curvature) / Step)
            );
    }
}
