using System.Runtime.InteropServices;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Collects lines and arcs, and knows those that are drawn more than once, whole or in part.</summary>
/// <param name="decimals">Decimals that are written; points that round alike are one point.</param>
internal sealed class SideSet(int decimals)
{
    /// <summary>Points this near in mm are one point even where they round to different digits.</summary>
    private const double SamePlace = 1e-9;

    private readonly double _scale = Math.Pow(10, decimals);
    private readonly CellIndex _numbers = new(Math.Min(0.25, SamePlace * Math.Pow(10, decimals)));
    private readonly List<Point> _points = [];
    private readonly List<Side> _sides = [];

    /// <summary>For each pair of ends the last side between them, and for each side the one before it, or -1.</summary>
    private readonly Dictionary<(int, int), int> _lastBetween = [];
    private readonly List<int> _before = [];

    internal IReadOnlyList<Point> Points => _points;

    /// <summary>Adds the segments of a run; those that round to nothing are left out.</summary>
    internal void Add(ReadOnlySpan<Vertex> run, bool closed)
    {
        var first = NumberOf(run[0].Point);
        var from = first;
        for (var i = 1; i < run.Length; i++)
        {
            var to = NumberOf(run[i].Point);
            Add(from, to, run[i - 1].Bulge);
            from = to;
        }
        if (closed)
            Add(from, first, run[^1].Bulge);
    }

    /// <summary>
    /// Returns the sides cut where others begin and end on them, so that no two have any part in common. Nothing can be
    /// added after it.
    /// </summary>
    internal SidePieces Pieces()
    {
        // Cutting takes as much memory as collecting did, so what only collecting needed is given back before.
        _numbers.Clear();
        _lastBetween.Clear();
        _lastBetween.TrimExcess();
        _before.Clear();
        _before.TrimExcess();
        return new(_points, SideOverlaps.Cut(_points, _sides));
    }

    private void Add(int from, int to, double bulge)
    {
        if (from == to)
            return;
        var chord = _points[from].DistanceTo(_points[to]);
        if (Math.Abs(bulge) * chord / 2 < RoundedRun.FlatSagitta)
            bulge = 0;
        if (from > to)
            (from, to, bulge) = (to, from, -bulge);
        ref var last = ref CollectionsMarshal.GetValueRefOrAddDefault(
            _lastBetween,
            (from, to),
            out var known
        );
        if (!known)
            last = -1;
        for (var i = last; i >= 0; i = _before[i])
            if (Math.Abs(_sides[i].Bulge - bulge) * chord / 2 * _scale < 1)
            {
                _sides[i] = _sides[i] with { Times = _sides[i].Times + 1 };
                return;
            }
        _before.Add(last);
        last = _sides.Count;
        _sides.Add(new(from, to, bulge, 1));
    }

    private int NumberOf(Point point)
    {
        var (number, isNew) = _numbers.Find(point.X * _scale, point.Y * _scale);
        if (isNew)
            _points.Add(point);
        return number;
    }
}
