using System.Numerics;

namespace PatternGen.Geometry;

/// <summary>Gives points that count as one the same number, and the place of the first of them.</summary>
/// <remarks>
/// Points are kept in a hashed grid whose cells are a few merge distances wide, so that near ones lie in at most four cells.
/// Cells that hash alike share a chain of points: the distance tells them apart.
/// </remarks>
internal sealed class PointMerger : IDisposable
{
    /// <summary>Width of a cell in merge distances. Below 2 a point's neighbours would lie in more than four cells; far above, cells would hold many points.</summary>
    private const double CellInMerges = 8;

    private readonly double _merge;
    private readonly double _cell;
    private readonly Scratch<Point> _points = new();
    private readonly Scratch<int> _nextInChain = new();
    private Scratch<int> _chains;

    /// <param name="merge">Points nearer than this are one.</param>
    /// <param name="expected">About how many points there will be: with room for them from the start, none is linked twice.</param>
    internal PointMerger(double merge, int expected = 0)
    {
        _merge = merge;
        _cell = merge * CellInMerges;
        _chains = Scratch<int>.Of(
            (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(16, expected)),
            -1
        );
    }

    internal ReadOnlySpan<Point> Points => _points.Span;

    /// <summary>The number of the known point nearest within the merge distance, or a new number.</summary>
    internal int IdOf(Point point)
    {
        var known = KnownIdOf(point);
        return known >= 0 ? known : Add(point);
    }

    /// <summary>The number of the known point nearest within the merge distance, or -1.</summary>
    internal int KnownIdOf(Point point)
    {
        var (left, right) = (Cell(point.X - _merge), Cell(point.X + _merge));
        var (low, high) = (Cell(point.Y - _merge), Cell(point.Y + _merge));
        ReadOnlySpan<Point> points = _points.Span;
        ReadOnlySpan<int> next = _nextInChain.Span;
        ReadOnlySpan<int> chains = _chains.Span;
        var (nearest, distance) = (-1, double.PositiveInfinity);
        for (var x = left; x <= right; x++)
        for (var y = low; y <= high; y++)
        {
            for (var id = chains[Chain(x, y)]; id >= 0; id = next[id])
            {
                var away = (points[id] - point).LengthSquared;
                if (away <= _merge * _merge && away < distance)
                    (nearest, distance) = (id, away);
            }
        }
        return nearest;
    }

    public void Dispose()
    {
        _points.Dispose();
        _nextInChain.Dispose();
        _chains.Dispose();
    }

    private int Add(Point point)
    {
        if (_points.Count == _chains.Count)
            Grow();
        _points.Add(point);
        _nextInChain.Add(-1);
        Link(_points.Count - 1);
        return _points.Count - 1;
    }

    private void Grow()
    {
        var more = Scratch<int>.Of(4 * _chains.Count, -1);
        _chains.Dispose();
        _chains = more;
        for (var id = 0; id < _points.Count; id++)
            Link(id);
    }

    private void Link(int id)
    {
        var point = _points.Span[id];
        ref var first = ref _chains.Span[Chain(Cell(point.X), Cell(point.Y))];
        (_nextInChain.Span[id], first) = (first, id);
    }

    private long Cell(double coordinate) => (long)Math.Floor(coordinate / _cell);

    /// <summary>The upper bits of a product depend on all bits of its factors; the number of chains is a power of 2.</summary>
    private int Chain(long x, long y)
    {
        var hash = unchecked(((ulong)x * 0x9E3779B97F4A7C15 + (ulong)y) * 0xC2B2AE3D27D4EB4F);
        return (int)(hash >> 32) & (_chains.Count - 1);
    }
}
