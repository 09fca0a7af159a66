namespace PatternGen.Geometry;

/// <summary>The pieces of strands between their cuts: the edges of an arrangement, before any that run along each other are made one.</summary>
internal sealed class StrandPieces
{
    private readonly Strand[] _strands;
    private readonly StrandCuts _cuts;
    private readonly List<EdgePiece> _pieces = [];

    private StrandPieces(Strand[] strands, StrandCuts cuts)
    {
        _strands = strands;
        _cuts = cuts;
    }

    internal static List<EdgePiece> Of(Strand[] strands, StrandCuts cuts)
    {
        var pieces = new StrandPieces(strands, cuts);
        var (starts, points) = pieces.CutsByStrand();
        var keys = new double[points.Length];
        for (var strand = 0; strand < strands.Length; strand++)
        {
            var (from, count) = (starts[strand], starts[strand + 1] - starts[strand]);
            for (var i = from; i < from + count; i++)
                keys[i] = strands[strand].KeyOf(cuts.Points[points[i]]);
            Array.Sort(keys, points, from, count);
            pieces.Add(strand, keys.AsSpan(from, count), points.AsSpan(from, count));
        }
        return pieces._pieces;
    }

    /// <summary>The points that cut each strand, those of strand i from Starts[i] on.</summary>
    private (int[] Starts, int[] Points) CutsByStrand()
    {
        var starts = new int[_strands.Length + 1];
        foreach (var (strand, _) in _cuts.All)
            starts[strand + 1]++;
        for (var i = 1; i < starts.Length; i++)
            starts[i] += starts[i - 1];
        var points = new int[_cuts.All.Count];
        var next = starts.ToArray();
        foreach (var (strand, point) in _cuts.All)
            points[next[strand]++] = point;
        return (starts, points);
    }

    private void Add(int strand, ReadOnlySpan<double> keys, ReadOnlySpan<int> points)
    {
        ref readonly var curve = ref _strands[strand];
        for (var i = 1; i < points.Length; i++)
            if (points[i - 1] != points[i])
                Add(strand, keys[i - 1], keys[i], points[i - 1], points[i]);
        if (!curve.IsWhole)
            return;
        // Once round: from the last cut to the first, or from the seam to itself.
        var (last, first) =
            points.Length > 0
                ? (points[^1], points[0])
                : (_cuts.SeamOf(curve.Circle), _cuts.SeamOf(curve.Circle));
        AddRound(strand, last, first);
    }

    private void Add(int strand, double fromKey, double toKey, int from, int to)
    {
        ref readonly var curve = ref _strands[strand];
        if (curve.IsRound)
            AddRound(strand, from, to);
        else
            _pieces.Add(
                new(
                    strand,
                    from,
                    to,
                    curve.Part(fromKey, toKey, _cuts.Points[from], _cuts.Points[to])
                )
            );
    }

    private void AddRound(int strand, int from, int to)
    {
        var circle = _strands[strand].Circle;
        var (start, end) = (_cuts.Points[from], _cuts.Points[to]);
        var (a, b) = ((start - circle.Centre).Unit(), (end - circle.Centre).Unit());
        if (from != to && a.Cross(b) >= 0)
        {
            _pieces.Add(new(strand, from, to, MinorArc(circle, start, end)));
            return;
        }
        // More than a half circle: in two parts, its middle opposite to that of the chord. Where the two ends nearly are
        // opposite, their sum cancels, and a quarter turn is as good.
        var aside = from == to ? -a : -(a + b);
        var towards = aside.Length > 1e-3 ? aside.Unit() : a.Left;
        var middle = circle.Centre + towards * circle.Radius;
        _pieces.Add(
            new(strand, from, to, MinorArc(circle, start, middle), MinorArc(circle, middle, end))
        );
    }

    /// <summary>The arc of at most a half circle, counter-clockwise. Its bulge is half the chord over radius + distance from the centre.</summary>
    private static Segment MinorArc(Circle circle, Point start, Point end)
    {
        var half = start.DistanceTo(end) / 2;
        var away = Math.Sqrt(Math.Max(0, (circle.Radius - half) * (circle.Radius + half)));
        return new(start, end, Math.Min(1, half / (circle.Radius + away)));
    }
}
