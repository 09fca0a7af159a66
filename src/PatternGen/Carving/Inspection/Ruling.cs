using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Parallel straight lines, by their heights across their direction.</summary>
/// <remarks>
/// Lines of one height are kept together, and in order: a line that each of many repeats brings along is found by
/// halving, however many there are.
/// </remarks>
internal sealed class Ruling(Vector along)
{
    private readonly List<RuledLine> _lines = [];
    private readonly List<Level> _levels = [];
    private double[] _heights = [];

    /// <summary>The direction, of length 1.</summary>
    internal Vector Along => along;

    internal int Count => _lines.Count;

    internal void Add(Segment line)
    {
        var (start, end) = (Measure(line.Start), Measure(line.End));
        _lines.Add(
            new(
                (start.Across + end.Across) / 2,
                Math.Min(start.Along, end.Along),
                Math.Max(start.Along, end.Along)
            )
        );
    }

    /// <summary>To be called once, when all lines are there.</summary>
    internal void Sort()
    {
        List<RuledLine> run = [];
        foreach (var line in _lines.OrderBy(line => line.Height))
        {
            if (run.Count > 0 && line.Height - run[0].Height > InspectionJob.Slack)
            {
                _levels.Add(new(run));
                run = [];
            }
            run.Add(line);
        }
        if (run.Count > 0)
            _levels.Add(new(run));
        _heights = [.. _levels.Select(level => level.Height)];
    }

    internal (double Along, double Across) Measure(Point place)
    {
        var offset = place - Point.Origin;
        return (along.Dot(offset), along.Cross(offset));
    }

    /// <summary>The heights of the neighbouring lines below and above a height that go past a stretch, if there are both.</summary>
    internal (double Low, double High)? Between(double height, double from, double to)
    {
        var above = Array.BinarySearch(_heights, height);
        if (above < 0)
            above = ~above;
        var high = Passing(above, 1, from, to);
        var low = Passing(above - 1, -1, from, to);
        return low is { } l && high is { } h ? (l, h) : null;
    }

    private double? Passing(int level, int step, double from, double to)
    {
        for (var i = level; i >= 0 && i < _levels.Count; i += step)
            if (_levels[i].Passes(from, to))
                return _heights[i];
        return null;
    }

    private readonly record struct RuledLine(double Height, double From, double To);

    /// <summary>The lines of one height.</summary>
    private sealed class Level
    {
        /// <summary>Where lines start, in order.</summary>
        private readonly double[] _froms;

        /// <summary>For each how far the farthest goes of it and those that start before it.</summary>
        private readonly double[] _reaches;

        internal Level(List<RuledLine> lines)
        {
            Height = lines[0].Height;
            lines.Sort((a, b) => a.From.CompareTo(b.From));
            _froms = [.. lines.Select(line => line.From)];
            _reaches = [.. lines.Select(line => line.To)];
            for (var i = 1; i < _reaches.Length; i++)
                _reaches[i] = Math.Max(_reaches[i], _reaches[i - 1]);
        }

        internal double Height { get; }

        /// <summary>Whether one line goes past the whole of a stretch.</summary>
        internal bool Passes(double from, double to)
        {
            var (last, beyond) = (-1, _froms.Length);
            while (beyond - last > 1)
            {
                var middle = (last + beyond) / 2;
                if (_froms[middle] <= from + InspectionJob.Slack)
                    last = middle;
                else
                    beyond = middle;
            }
            return last >= 0 && _reaches[last] >= to - InspectionJob.Slack;
        }
    }
}
