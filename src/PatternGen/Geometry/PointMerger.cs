namespace PatternGen.Geometry;

/// <summary>Gives points that count as one the same number, and the place of the first of them.</summary>
/// <remarks>Points are kept in a hashed grid whose cells are a few merge distances wide, so that near ones lie in at most four cells.</remarks>
internal sealed class PointMerger
{
    /// <summary>Width of a cell in merge distances. Below 2 a point's neighbours would lie in more than four cells; far above, cells would hold many points.</summary>
    private const double CellInMerges = 8;

    private readonly double _merge;
    private readonly double _cell;
    private readonly List<Point> _points = [];
    private readonly List<int> _nextInCell = [];
    private readonly Dictionary<(long X, long Y), int> _firstInCell = [];

    internal PointMerger(double merge)
    {
        _merge = merge;
        _cell = merge * CellInMerges;
    }

    internal IReadOnlyList<Point> Points => _points;

    /// <summary>The number of the known point nearest within the merge distance, or a new number.</summary>
    internal int IdOf(Point point)
    {
        var (left, right) = (Cell(point.X - _merge), Cell(point.X + _merge));
        var (low, high) = (Cell(point.Y - _merge), Cell(point.Y + _merge));
        var (nearest, distance) = (-1, double.PositiveInfinity);
        for (var x = left; x <= right; x++)
        for (var y = low; y <= high; y++)
        {
            var id = _firstInCell.GetValueOrDefault((x, y), -1);
            for (; id >= 0; id = _nextInCell[id])
            {
                var away = _points[id].DistanceTo(point);
                if (away <= _merge && away < distance)
                    (nearest, distance) = (id, away);
            }
        }
        return nearest >= 0 ? nearest : Add(point);
    }

    private int Add(Point point)
    {
        var cell = (Cell(point.X), Cell(point.Y));
        _nextInCell.Add(_firstInCell.GetValueOrDefault(cell, -1));
        _firstInCell[cell] = _points.Count;
        _points.Add(point);
        return _points.Count - 1;
    }

    private long Cell(double coordinate) => (long)Math.Floor(coordinate / _cell);
}
