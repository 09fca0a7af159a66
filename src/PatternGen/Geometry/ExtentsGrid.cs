namespace PatternGen.Geometry;

/// <summary>Finds which of many upright rectangles touch, without comparing each with each: a uniform grid over all of them.</summary>
/// <remarks>
/// A rectangle is listed in every cell that it touches. Two rectangles share several cells, but only one of these holds
/// the lower left corner of what they have in common; the pair is told there, and so only once.
/// </remarks>
internal sealed class ExtentsGrid
{
    private readonly Extents[] _items;
    private readonly Point _origin;
    private readonly double _cell;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int[] _cellStarts;
    private readonly int[] _entries;

    internal ExtentsGrid(Extents[] items)
    {
        _items = items;
        var all = items.Length > 0 ? items[0] : default;
        double widths = 0;
        foreach (var item in items)
        {
            all = all.Including(item);
            widths += Math.Max(item.Width, item.Height);
        }
        _origin = all.Min;
        _cell = CellFor(all, items.Length, widths);
        _columns = 1 + (int)(all.Width / _cell);
        _rows = 1 + (int)(all.Height / _cell);
        _cellStarts = new int[_columns * _rows + 1];
        _entries = Fill();
    }

    /// <summary>The grid that tells which segments may meet within a tolerance.</summary>
    internal static ExtentsGrid Of(Segment[] segments, Tolerance tolerance) =>
        new(Array.ConvertAll(segments, segment => segment.Extents.Grown(tolerance.Merge)));

    /// <summary>Calls <paramref name="visit"/> once with each pair of touching rectangles, the smaller number first.</summary>
    internal void VisitPairs(Action<int, int> visit)
    {
        for (var cell = 0; cell < _cellStarts.Length - 1; cell++)
        for (var i = _cellStarts[cell]; i < _cellStarts[cell + 1]; i++)
        for (var j = i + 1; j < _cellStarts[cell + 1]; j++)
        {
            var (first, second) = (_entries[i], _entries[j]);
            if (IsToldIn(cell, _items[first], _items[second]))
                visit(first, second);
        }
    }

    /// <summary>Calls <paramref name="visit"/> once with each rectangle that touches the given one.</summary>
    internal void Visit(Extents window, Action<int> visit)
    {
        for (var row = Row(window.Min); row <= Row(window.Max); row++)
        for (var column = Column(window.Min); column <= Column(window.Max); column++)
        {
            var cell = row * _columns + column;
            for (var i = _cellStarts[cell]; i < _cellStarts[cell + 1]; i++)
                if (IsToldIn(cell, window, _items[_entries[i]]))
                    visit(_entries[i]);
        }
    }

    private bool IsToldIn(int cell, Extents a, Extents b)
    {
        if (!a.Touches(b))
            return false;
        var corner = new Point(Math.Max(a.Min.X, b.Min.X), Math.Max(a.Min.Y, b.Min.Y));
        return Row(corner) * _columns + Column(corner) == cell;
    }

    /// <summary>
    /// About a cell for each rectangle, but none narrower than the average rectangle, so that long ones do not fill
    /// many more cells than there are rectangles.
    /// </summary>
    private static double CellFor(Extents all, int count, double widths)
    {
        if (count == 0)
            return 1;
        var even = Math.Max(
            Math.Sqrt(all.Width * all.Height / count),
            Math.Max(all.Width, all.Height) / count
        );
        var cell = Math.Max(even, widths / count);
        return cell > 0 ? cell : 1;
    }

    private int[] Fill()
    {
        foreach (var item in _items)
            ForCells(item, cell => _cellStarts[cell + 1]++);
        for (var cell = 1; cell < _cellStarts.Length; cell++)
            _cellStarts[cell] += _cellStarts[cell - 1];
        var entries = new int[_cellStarts[^1]];
        var next = _cellStarts.ToArray();
        for (var i = 0; i < _items.Length; i++)
        {
            var item = i;
            ForCells(_items[i], cell => entries[next[cell]++] = item);
        }
        return entries;
    }

    private void ForCells(Extents item, Action<int> visit)
    {
        for (var row = Row(item.Min); row <= Row(item.Max); row++)
        for (var column = Column(item.Min); column <= Column(item.Max); column++)
            visit(row * _columns + column);
    }

    private int Column(Point point) =>
        Math.Clamp((int)((point.X - _origin.X) / _cell), 0, _columns - 1);

    private int Row(Point point) => Math.Clamp((int)((point.Y - _origin.Y) / _cell), 0, _rows - 1);
}
