namespace PatternGen.Geometry;

/// <summary>The points that cut each strand, by number; the same one may be there several times.</summary>
internal sealed class CutLists
{
    private readonly int[] _last;
    private readonly List<(int Point, int Before)> _cuts = [];

    internal CutLists(int strands)
    {
        _last = new int[strands];
        Array.Fill(_last, -1);
    }

    internal int Count => _cuts.Count;

    internal void Add(int strand, int point)
    {
        _cuts.Add((point, _last[strand]));
        _last[strand] = _cuts.Count - 1;
    }

    /// <summary>Adds the points of a strand to a list.</summary>
    internal void CopyTo(List<int> points, int strand)
    {
        for (var cut = _last[strand]; cut >= 0; cut = _cuts[cut].Before)
            points.Add(_cuts[cut].Point);
    }
}
