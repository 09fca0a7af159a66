using System.Runtime.InteropServices;

namespace PatternGen.Geometry;

/// <summary>Gives points that count as one the same number, and the place of the first of them.</summary>
/// <remarks>
/// Points are kept in a hashed grid whose cells are a few merge distances wide, so that near ones lie in at most four cells.
/// Cells that hash alike share a chain of points: the distance tells them apart.
/// </remarks>
internal sealed class PointMerger
{
    /// <summary>Width of a cell in merge distances. Below 2 a point's neighbours would lie in more than four cells; far above, cells would hold many points.</summary>
    private const double CellInMerges = 8;

    private readonly double _merge;
    private readonly double _cell;
    private readonly List<Point> _points = [];
    private readonly List<int> _nextInChain = [];
    private int[] _chains = NoChains(16);

    internal PointMerger(double merge)
    {
        _merge = merge;
        _cell = merge * CellInMerges;
    }

    internal IReadOnlyList<Point> Points => _points;

    internal ReadOnlySpan<Point> Span => CollectionsMarshal.AsSpan(_points);

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
        var (nearest, distance) = (-1, double.PositiveInfinity);
        for (var x = left; x <= right; x++)
        for (var y = low; y <= high; y++)
        {
            for (var id = _chains[Chain(x, y)]; id >= 0; id = _nextInChain[id])
            {
                var away = (_points[id] - point).LengthSquared;
                if (away <= _merge * _merge && away < distance)
                    (nearest, distance) = (id, away);
            }
        }
        return nearest;
    }

    private int Add(Point point)
    {
        if (_points.Count == _chains.Length)
            Grow();
        _points.Add(point);
        _nextInChain.Add(-1);
        Link(_points.Count - 1);
        return _points.Count - 1;
    }

    private void Grow()
    {
        _chains = NoChains(4 * _chains.Length);
        for (var id = 0; id < _points.Count; id++)
            Link(id);
    }

    private void Link(int id)
    {
        ref var first = ref _chains[Chain(Cell(_points[id].X), Cell(_points[id].Y))];
        (_nextInChain[id], first) = (first, id);
    }

    private long Cell(double coordinate) => (long)Math.Floor(coordinate / _cell);

    /// <summary>The upper bits of a product depend on all bits of its factors; the number of chains is a power of 2.</summary>
    private int Chain(long x, long y)
    {
        var hash = unchecked(((ulong)x * 0x9E3779B97F4A7C15 + (ulong)y) * 0xC2B2AE3D27D4EB4F);
        return (int)(hash >> 32) & (_chains.Length - 1);
    }

    private static int[] NoChains(int count)
    {
        var chains = new int[count];
        Array.Fill(chains, -1);
        return chains;
    }
}
