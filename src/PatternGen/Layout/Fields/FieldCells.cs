using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The cells of a lattice that may lie on a field, with the sides of the edge that pass near each.</summary>
/// <remarks>
/// The edge is walked once, in pieces no longer than a cell, and each piece told to the cells beside it. So only cells
/// along the edge need a closer look; of all others, one place tells whether they lie inside.
/// </remarks>
internal sealed class FieldCells
{
    private readonly CellLattice _cells;
    private readonly Lattice _lattice;
    private readonly FieldEdge _edge;

    /// <summary>Extents of each kind of cell on the wood, from the place of its repeat.</summary>
    private readonly Extents[] _rooms;

    /// <summary>For each row of repeats, the first one that may lie on the field, and where its cells begin in the lists.</summary>
    private readonly int _firstRow;

    private readonly int[] _firsts;
    private readonly int[] _starts;

    /// <summary>For each cell the last entry of its list of sides, or -1.</summary>
    private readonly int[] _heads;

    private readonly List<(int Side, int Before)> _entries = [];

    internal FieldCells(CellLattice cells, Lattice lattice, FieldEdge edge)
    {
        (_cells, _lattice, _edge) = (cells, lattice, edge);
        _rooms = Array.ConvertAll(cells.Kinds, RoomOf);
        var all = _rooms.Aggregate((a, b) => a.Including(b));
        var window = Origins(edge.Extents, all);
        var (first, last) = Rows(window);
        _firstRow = first;
        _firsts = new int[last - first + 1];
        _starts = new int[last - first + 2];
        for (var row = 0; row < _firsts.Length; row++)
        {
            var (from, to) = Columns(first + row, window);
            _firsts[row] = from;
            _starts[row + 1] = _starts[row] + Math.Max(0, to - from + 1) * cells.Kinds.Length;
        }
        _heads = new int[_starts[^1]];
        Array.Fill(_heads, -1);
        var step = Math.Max(all.Width, all.Height);
        for (var side = 0; side < edge.Sides.Length; side++)
            Walk(side, step);
    }

    /// <summary>The cells in the order of their rows, each with its list of sides, which is empty off the edge.</summary>
    internal IEnumerable<(int M, int N, int Kind, int List)> All()
    {
        var kinds = _cells.Kinds.Length;
        for (var row = 0; row < _firsts.Length; row++)
        for (var place = _starts[row]; place < _starts[row + 1]; place++)
        {
            var along = place - _starts[row];
            yield return (
                _firsts[row] + along / kinds,
                _firstRow + row,
                along % kinds,
                _heads[place]
            );
        }
    }

    /// <summary>Returns the sides in a list, each once.</summary>
    internal List<int> SidesOf(int list)
    {
        var sides = new List<int>();
        for (var entry = list; entry >= 0; entry = _entries[entry].Before)
            sides.Add(_entries[entry].Side);
        return sides;
    }

    /// <summary>Steps of the fine lattice to a repeat.</summary>
    internal (int I, int J) StepsTo(int m, int n) =>
        (m * _cells.P.I + n * _cells.Q.I, m * _cells.P.J + n * _cells.Q.J);

    private Extents RoomOf(CellKind kind)
    {
        var room = _lattice.Placed(_cells.InFrame(kind.Room), LatticeTurn.None, 0, 0).Extents;
        var origin = _lattice.Origin - Point.Origin;
        return new(room.Min - origin, room.Max - origin);
    }

    private void Walk(int number, double step)
    {
        var side = _edge.Sides[number];
        var pieces = Math.Max(1, (int)Math.Ceiling(side.Length / step));
        var bulge = pieces == 1 ? side.Bulge : side.PartBulge(1.0 / pieces);
        for (var i = 0; i < pieces; i++)
        {
            var piece = new Segment(
                side.PointAt(side.Length * i / pieces),
                side.PointAt(side.Length * (i + 1) / pieces),
                bulge
            );
            Tell(number, piece.Extents.Grown(_edge.Tolerance.Merge));
        }
    }

    /// <summary>Tells all cells whose extents touch a piece of a side.</summary>
    private void Tell(int side, Extents piece)
    {
        for (var kind = 0; kind < _rooms.Length; kind++)
        {
            var window = Origins(piece, _rooms[kind]);
            var (first, last) = Rows(window);
            for (
                var n = Math.Max(first, _firstRow);
                n <= Math.Min(last, _firstRow + _firsts.Length - 1);
                n++
            )
            {
                var (from, to) = Columns(n, window);
                var row = n - _firstRow;
                for (var m = from; m <= to; m++)
                {
                    var place = _starts[row] + (m - _firsts[row]) * _rooms.Length + kind;
                    if (place < _starts[row] || place >= _starts[row + 1])
                        continue;
                    if (_heads[place] >= 0 && _entries[_heads[place]].Side == side)
                        continue;
                    _entries.Add((side, _heads[place]));
                    _heads[place] = _entries.Count - 1;
                }
            }
        }
    }

    /// <summary>Where the repeat of a room must lie for the room to touch a window.</summary>
    private static Extents Origins(Extents window, Extents room) =>
        new(
            new(window.Min.X - room.Max.X, window.Min.Y - room.Max.Y),
            new(window.Max.X - room.Min.X, window.Max.Y - room.Min.Y)
        );

    /// <summary>The rows with repeats in a window.</summary>
    private (int First, int Last) Rows(Extents window)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        Span<Point> corners =
        [
            window.Min,
            window.Max,
            new(window.Min.X, window.Max.Y),
            new(window.Max.X, window.Min.Y),
        ];
        double cross = (double)_cells.P.I * _cells.Q.J - (double)_cells.P.J * _cells.Q.I;
        foreach (var corner in corners)
        {
            var (i, j) = _lattice.NumbersOf(corner);
            var row = (_cells.P.I * j - _cells.P.J * i) / cross;
            (low, high) = (Math.Min(low, row), Math.Max(high, row));
        }
        return (Up(low), Down(high));
    }

    /// <summary>The repeats of a row that lie in a window.</summary>
    private (int First, int Last) Columns(int n, Extents window)
    {
        var zero = _lattice.At(0, 0);
        var step = _lattice.At(_cells.P.I, _cells.P.J) - zero;
        var start = _lattice.At(n * _cells.Q.I, n * _cells.Q.J);
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        Clip(step.X, window.Min.X - start.X, window.Max.X - start.X, ref low, ref high);
        Clip(step.Y, window.Min.Y - start.Y, window.Max.Y - start.Y, ref low, ref high);
        // Of a row that passes the window there are none.
        return low <= high ? (Up(low), Down(high)) : (0, -1);
    }

    private void Clip(double step, double from, double to, ref double low, ref double high)
    {
        // A row along one axis goes on for ever along it.
        if (Math.Abs(step) <= _edge.Tolerance.Merge)
        {
            if (from > _edge.Tolerance.Merge || to < -_edge.Tolerance.Merge)
                (low, high) = (1, 0);
            return;
        }
        var (one, other) = (from / step, to / step);
        low = Math.Max(low, Math.Min(one, other));
        high = Math.Min(high, Math.Max(one, other));
    }

    private static int Up(double number) => (int)Math.Ceiling(number - 1e-6);

    private static int Down(double number) => (int)Math.Floor(number + 1e-6);
}
