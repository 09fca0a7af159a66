using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds runs of a figure by where their middles are.</summary>
internal sealed class RunPlaces
{
    private readonly FigureRun[] _runs;
    private readonly double _near;
    private readonly Dictionary<(long X, long Y), List<int>> _cells = [];

    internal RunPlaces(FigureRun[] runs, double near)
    {
        (_runs, _near) = (runs, near);
        for (var i = 0; i < runs.Length; i++)
        {
            var cell = CellOf(runs[i].Middle);
            if (!_cells.TryGetValue(cell, out var list))
                _cells[cell] = list = [];
            list.Add(i);
        }
    }

    /// <summary>The run that another one comes to lie on when it is taken somewhere, and whether it then runs the other way.</summary>
    internal (int Run, bool Reversed)? Find(FigureRun run, Transform taken)
    {
        var (x, y) = CellOf(taken.Apply(run.Middle));
        (int Run, bool Reversed)? nearest = null;
        var least = _near;
        for (var column = x - 1; column <= x + 1; column++)
        for (var row = y - 1; row <= y + 1; row++)
            foreach (var i in _cells.GetValueOrDefault((column, row)) ?? [])
            {
                var (off, reversed) = run.Against(_runs[i], taken);
                if (off <= least)
                    (nearest, least) = ((i, reversed), off);
            }
        return nearest;
    }

    // Twice as wide as what is near, so that a place and its neighbours hold all that is.
    private (long, long) CellOf(Point point) =>
        ((long)Math.Floor(point.X / (2 * _near)), (long)Math.Floor(point.Y / (2 * _near)));
}
