using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds what keeps open curves from closing.</summary>
internal static class GapFinder
{
    /// <summary>Curves that are looked at, the longest: each end is compared with each. A person mends no more gaps by their places.</summary>
    private const int MostCurves = 1000;

    /// <summary>The gaps from loose ends to their nearest ones, each once, the narrowest first.</summary>
    internal static ImportGap[] Of(IReadOnlyList<Chain> chains)
    {
        Point[] ends =
        [
            .. chains
                .OrderByDescending(chain => chain.Length)
                .Take(MostCurves)
                .SelectMany(chain => new[] { chain.Start, chain.End }),
        ];
        var seen = new HashSet<(int, int)>();
        var gaps = new List<ImportGap>();
        for (var end = 0; end < ends.Length; end++)
        {
            var nearest = Nearest(ends, end);
            if (seen.Add((Math.Min(end, nearest), Math.Max(end, nearest))))
                gaps.Add(new(ends[end], ends[nearest]));
        }
        return [.. gaps.OrderBy(gap => gap.Width)];
    }

    private static int Nearest(Point[] ends, int of)
    {
        var (nearest, distance) = (-1, double.PositiveInfinity);
        for (var i = 0; i < ends.Length; i++)
        {
            var away = (ends[i] - ends[of]).LengthSquared;
            if (i != of && away < distance)
                (nearest, distance) = (i, away);
        }
        return nearest;
    }
}
