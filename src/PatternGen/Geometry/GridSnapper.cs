namespace PatternGen.Geometry;

/// <summary>Snaps contours together: what one of them may not move, its neighbours may not move either.</summary>
internal sealed class GridSnapper
{
    private readonly Contour[] _contours;
    private readonly int[][] _corners;
    private readonly List<Point> _places = [];
    private readonly Point[] _targets;
    private readonly bool[] _pinned;
    private readonly SnapRefusal?[] _refusals;
    private readonly Tolerance _tolerance;

    internal GridSnapper(Grid grid, Contour[] contours)
    {
        _contours = contours;
        _refusals = new SnapRefusal?[contours.Length];
        _corners = new int[contours.Length][];
        _tolerance = ToleranceOf(contours);
        using var merger = new PointMerger(_tolerance.Merge);
        for (var i = 0; i < contours.Length; i++)
        {
            var vertices = Guard.NotNull(contours[i]).Span;
            _corners[i] = new int[vertices.Length];
            for (var j = 0; j < vertices.Length; j++)
                _corners[i][j] = merger.IdOf(vertices[j].Point);
        }
        _places = [.. merger.Points];
        _pinned = new bool[_places.Count];
        _targets = [.. _places.Select(grid.Snap)];
    }

    /// <summary>Pinning the corners of a refused contour can spoil its neighbours, so it goes on until no more are refused.</summary>
    internal SnapResult Run()
    {
        bool refusedMore;
        do
        {
            refusedMore = false;
            for (var i = 0; i < _contours.Length; i++)
                if (_refusals[i] is null && (_refusals[i] = Refusal(i)) is not null)
                    refusedMore = true;
            for (var i = 0; i < _contours.Length; i++)
                if (_refusals[i] is not null)
                    Pin(i);
        } while (refusedMore);
        return new(
            [.. _contours.Select((contour, i) => _refusals[i] is null ? Snapped(i) : contour)],
            LargestMove(),
            [.. _refusals.OfType<SnapRefusal>()]
        );
    }

    private static Tolerance ToleranceOf(Contour[] contours)
    {
        if (contours.Length == 0)
            return default;
        var extents = Guard.NotNull(contours[0]).Extents;
        foreach (var contour in contours)
            extents = extents.Including(Guard.NotNull(contour).Extents);
        return Tolerance.For(extents);
    }

    private Contour Snapped(int contour)
    {
        var vertices = _contours[contour].Span;
        var snapped = new Vertex[vertices.Length];
        for (var i = 0; i < snapped.Length; i++)
            snapped[i] = new(Target(contour, i), vertices[i].Bulge);
        return new(VertexRun.Trusted(snapped));
    }

    private Point Target(int contour, int corner)
    {
        var place = _corners[contour][corner];
        return _pinned[place] ? _contours[contour].Span[corner].Point : _targets[place];
    }

    private SnapRefusal? Refusal(int contour)
    {
        var original = _contours[contour];
        var snapped = Snapped(contour);
        var corners = original.Span;
        for (var i = 0; i < corners.Length; i++)
        {
            var next = (i + 1) % corners.Length;
            if (
                _tolerance.Same(Target(contour, i), Target(contour, next))
                && !_tolerance.Same(corners[i].Point, corners[next].Point)
            )
                return new(
                    contour,
                    corners[i].Point,
                    $"its corner would meet the next one, {corners[next].Point}."
                );
        }
        if (original.IsCounterClockwise != snapped.IsCounterClockwise)
            return new(contour, corners[0].Point, "it would lose its area or turn inside out.");
        var flaws = snapped.Validate().Flaws;
        return flaws.Count > 0 && original.Validate().IsValid
            ? new(contour, original.PointAt(original.StartOf(flaws[0].Segment)), flaws[0].Reason)
            : null;
    }

    private void Pin(int contour)
    {
        foreach (var place in _corners[contour])
            _pinned[place] = true;
    }

    private double LargestMove()
    {
        double largest = 0;
        for (var i = 0; i < _contours.Length; i++)
        for (var j = 0; j < _corners[i].Length && _refusals[i] is null; j++)
            largest = Math.Max(largest, _contours[i].Span[j].Point.DistanceTo(Target(i, j)));
        return largest;
    }
}
