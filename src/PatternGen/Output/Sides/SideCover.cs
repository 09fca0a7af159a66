namespace PatternGen;

/// <summary>How often each stretch of one line or circle is drawn, between the points on it in their order.</summary>
internal sealed class SideCover
{
    private readonly Side[] _sides;
    private readonly int[] _points;
    private readonly Dictionary<int, int> _ranks;

    /// <summary>At each point, how much more often the stretch after it is drawn than the one before.</summary>
    private readonly int[] _steps;

    /// <summary>How often the stretch from the last point round to the first is drawn.</summary>
    private int _wraps;

    internal SideCover(Side[] sides, Func<int, double> place)
    {
        _sides = sides;
        _points =
        [
            .. sides
                .SelectMany(side => new[] { side.From, side.To })
                .Distinct()
                .OrderBy(place)
                .ThenBy(point => point),
        ];
        _ranks = _points.Select((point, rank) => (point, rank)).ToDictionary();
        _steps = new int[_points.Length];
    }

    internal int RankOf(int point) => _ranks[point];

    internal void Add(Side side, bool isForward)
    {
        var (first, last) = (RankOf(side.From), RankOf(side.To));
        if (!isForward)
            (first, last) = (last, first);
        _steps[first] += side.Times;
        _steps[last] -= side.Times;
        if (last < first)
            _wraps += side.Times;
    }

    /// <summary>Returns the stretches that are drawn; the sides themselves if none of them is cut.</summary>
    internal IReadOnlyList<Side> Pieces(Func<int, int, double> bulge)
    {
        var pieces = new List<Side>();
        var times = _wraps;
        for (var rank = 0; rank < _points.Length; rank++)
        {
            times += _steps[rank];
            if (times == 0)
                continue;
            var (from, to) = (_points[rank], _points[(rank + 1) % _points.Length]);
            pieces.Add(new(from, to, bulge(from, to), times));
        }
        var isCut = pieces.Sum(piece => piece.Times) > _sides.Sum(side => side.Times);
        return isCut ? pieces : _sides;
    }
}
