using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds what keeps open curves from closing.</summary>
internal sealed class GapFinder
{
    /// <summary>Curves that are looked at, the longest: each end is compared with each. A person mends no more gaps by their places.</summary>
    private const int MostCurves = 1000;

    // Two ends for each curve, told by numbers as those of runs are.
    private readonly Point[] _ends;
    private readonly (int End, int Nearest, double Width)[] _gaps;

    internal GapFinder(IReadOnlyList<Chain> chains)
    {
        _ends =
        [
            .. chains
                .OrderByDescending(chain => chain.Length)
                .Take(MostCurves)
                .SelectMany(chain => new[] { chain.Start, chain.End }),
        ];
        _gaps = [.. Found().OrderBy(gap => gap.Width)];
        Gaps = Array.ConvertAll(_gaps, gap => new ImportGap(_ends[gap.End], _ends[gap.Nearest]));
        Closing = FirstClosing();
    }

    /// <summary>The gaps from loose ends to their nearest ones, each once, the narrowest first.</summary>
    internal ImportGap[] Gaps { get; }

    /// <summary>The width in mm up to which gaps must be bridged for the first curve to close; null if these gaps close none.</summary>
    internal double? Closing { get; }

    private List<(int End, int Nearest, double Width)> Found()
    {
        var seen = new HashSet<(int, int)>();
        var gaps = new List<(int, int, double)>();
        for (var end = 0; end < _ends.Length; end++)
        {
            var nearest = Nearest(end);
            if (seen.Add((Math.Min(end, nearest), Math.Max(end, nearest))))
                gaps.Add((end, nearest, _ends[end].DistanceTo(_ends[nearest])));
        }
        return gaps;
    }

    private int Nearest(int of)
    {
        var (nearest, distance) = (-1, double.PositiveInfinity);
        for (var i = 0; i < _ends.Length; i++)
        {
            var away = (_ends[i] - _ends[of]).LengthSquared;
            if (i != of && away < distance)
                (nearest, distance) = (i, away);
        }
        return nearest;
    }

    /// <summary>Bridges gap after gap, each end once, until both sides of one belong to one curve already.</summary>
    private double? FirstClosing()
    {
        // Of the ends that are still loose, the other end of what by now is one curve.
        var across = new int[_ends.Length];
        for (var end = 0; end < across.Length; end++)
            across[end] = RunEnd.Across(end);
        var isBridged = new bool[_ends.Length];
        foreach (var (end, other, width) in _gaps)
        {
            if (isBridged[end] || isBridged[other])
                continue;
            if (across[end] == other)
                return width;
            (isBridged[end], isBridged[other]) = (true, true);
            var (first, last) = (across[end], across[other]);
            (across[first], across[last]) = (last, first);
        }
        return null;
    }
}
