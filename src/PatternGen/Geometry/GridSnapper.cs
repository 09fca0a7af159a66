namespace PatternGen.Geometry;

/// <summary>Snaps runs together: what one of them may not move, its neighbours may not move either.</summary>
internal sealed class GridSnapper
{
    private readonly SegmentRun[] _runs;
    private readonly int[] _groups;
    private readonly int[][] _corners;
    private readonly Point[] _targets;
    private readonly bool[] _pinned;
    private readonly SnapRefusal?[] _refusals;
    private readonly Tolerance _tolerance;

    /// <param name="grid">The grid.</param>
    /// <param name="runs">The runs; corners that they share stay shared.</param>
    /// <param name="groups">
    /// For each run the number of its group, in ascending order from 0: runs that are refused together, such as the rings of
    /// one chip.
    /// </param>
    internal GridSnapper(ISnapGrid grid, SegmentRun[] runs, int[] groups)
    {
        _runs = runs;
        _groups = groups;
        _refusals = new SnapRefusal?[runs.Length];
        _corners = new int[runs.Length][];
        _tolerance = ToleranceOf(runs);
        using var merger = new PointMerger(_tolerance.Merge);
        for (var i = 0; i < runs.Length; i++)
        {
            var vertices = runs[i].Span;
            _corners[i] = new int[vertices.Length];
            for (var j = 0; j < vertices.Length; j++)
                _corners[i][j] = merger.IdOf(vertices[j].Point);
        }
        Point[] places = [.. merger.Points];
        _pinned = new bool[places.Length];
        _targets = Array.ConvertAll(places, grid.Snap);
    }

    /// <summary>Runs that were left as they were, and why; as many entries as runs, null for those that were snapped.</summary>
    internal IReadOnlyList<SnapRefusal?> Refusals => _refusals;

    /// <summary>Snaps contours, each for itself.</summary>
    internal static SnapResult Snap(ISnapGrid grid, IEnumerable<Contour> contours)
    {
        SegmentRun[] runs =
        [
            .. Guard.NotNull(contours).Select(run => Guard.NotNull(run, nameof(contours))),
        ];
        var snapper = new GridSnapper(grid, runs, [.. Enumerable.Range(0, runs.Length)]);
        var snapped = snapper.Run();
        return new(
            [.. snapped.Cast<Contour>()],
            snapper.LargestMove(),
            [.. snapper._refusals.OfType<SnapRefusal>()]
        );
    }

    /// <summary>Returns the runs snapped; those that would be spoilt come back as they were.</summary>
    /// <remarks>Pinning the corners of a refused run can spoil its neighbours, so it goes on until no more are refused.</remarks>
    internal SegmentRun[] Run()
    {
        bool refusedMore;
        do
        {
            refusedMore = false;
            for (var first = 0; first < _runs.Length; first = EndOfGroup(first))
            {
                if (_refusals[first] is not null || GroupRefusal(first) is not { } refusal)
                    continue;
                refusedMore = true;
                for (var i = first; i < EndOfGroup(first); i++)
                {
                    _refusals[i] = refusal;
                    Pin(i);
                }
            }
        } while (refusedMore);
        return [.. _runs.Select((run, i) => _refusals[i] is null ? Snapped(i) : run)];
    }

    /// <summary>How far the corner that moved most was moved, in mm.</summary>
    internal double LargestMove()
    {
        double largest = 0;
        for (var i = 0; i < _runs.Length; i++)
        for (var j = 0; j < _corners[i].Length && _refusals[i] is null; j++)
            largest = Math.Max(largest, _runs[i].Span[j].Point.DistanceTo(Target(i, j)));
        return largest;
    }

    private static Tolerance ToleranceOf(SegmentRun[] runs)
    {
        if (runs.Length == 0)
            return default;
        var extents = runs[0].Extents;
        foreach (var run in runs)
            extents = extents.Including(run.Extents);
        return Tolerance.For(extents);
    }

    private int EndOfGroup(int first)
    {
        var end = first + 1;
        while (end < _runs.Length && _groups[end] == _groups[first])
            end++;
        return end;
    }

    private SegmentRun Snapped(int run)
    {
        var vertices = _runs[run].Span;
        var snapped = new Vertex[vertices.Length];
        for (var i = 0; i < snapped.Length; i++)
            snapped[i] = new(Target(run, i), vertices[i].Bulge);
        var corners = VertexRun.Trusted(snapped);
        return _runs[run].IsClosed ? new Contour(corners) : new Chain(corners);
    }

    private Point Target(int run, int corner)
    {
        var place = _corners[run][corner];
        return _pinned[place] ? _runs[run].Span[corner].Point : _targets[place];
    }

    private SnapRefusal? GroupRefusal(int first)
    {
        var end = EndOfGroup(first);
        for (var i = first; i < end; i++)
            if (Refusal(i) is { } refusal)
                return refusal;
        return end - first > 1 ? RingsRefusal(first, end) : null;
    }

    private SnapRefusal? Refusal(int run)
    {
        var original = _runs[run];
        var snapped = Snapped(run);
        for (var i = 0; i < original.Count; i++)
        {
            var side = original.At(i);
            if (
                _tolerance.Same(snapped.At(i).Start, snapped.At(i).End)
                && !_tolerance.Same(side.Start, side.End)
            )
                return new(run, side.Start, $"its corner would meet the next one, {side.End}.");
        }
        if (original is not Contour ring || snapped is not Contour snappedRing)
            return snapped.CrossesItself() && !original.CrossesItself()
                ? new(run, original.At(0).Start, "it would cross itself.")
                : null;
        if (ring.IsCounterClockwise != snappedRing.IsCounterClockwise)
            return new(run, ring.At(0).Start, "it would lose its area or turn inside out.");
        var flaws = snappedRing.Validate().Flaws;
        return flaws.Count > 0 && ring.Validate().IsValid
            ? new(run, ring.PointAt(ring.StartOf(flaws[0].Segment)), flaws[0].Reason)
            : null;
    }

    /// <summary>Whether the rings of a chip would run into each other.</summary>
    private SnapRefusal? RingsRefusal(int first, int end)
    {
        var range = Enumerable.Range(first, end - first);
        var flaws = new Region(range.Select(i => (Contour)Snapped(i))).Validate().Flaws;
        return
            flaws.Count > 0 && new Region(range.Select(i => (Contour)_runs[i])).Validate().IsValid
            ? new(first, _runs[first].At(0).Start, flaws[0].Reason)
            : null;
    }

    private void Pin(int run)
    {
        foreach (var place in _corners[run])
            _pinned[place] = true;
    }
}
