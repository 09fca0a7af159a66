namespace PatternGen.Geometry;

/// <summary>The points that cut each strand, by number; the same one may be there several times.</summary>
internal sealed class CutLists : IDisposable
{
    private readonly Scratch<int> _last;
    private readonly Scratch<(int Point, int Before)> _cuts = new();

    internal CutLists(int strands) => _last = Scratch<int>.Of(strands, -1);

    internal int Count => _cuts.Count;

    internal void Add(int strand, int point)
    {
        ref var last = ref _last.Span[strand];
        _cuts.Add((point, last));
        last = _cuts.Count - 1;
    }

    /// <summary>Adds the points of a strand to a list.</summary>
    internal void CopyTo(List<int> points, int strand)
    {
        var cuts = _cuts.Span;
        for (var cut = _last.Span[strand]; cut >= 0; cut = cuts[cut].Before)
            points.Add(cuts[cut].Point);
    }

    public void Dispose()
    {
        _last.Dispose();
        _cuts.Dispose();
    }
}
