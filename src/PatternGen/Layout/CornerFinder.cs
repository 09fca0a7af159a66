using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the corner next to a place on a path. Places come in order, so that each corner is passed once.</summary>
/// <param name="path">The path.</param>
/// <param name="corners">Its corners, in order.</param>
/// <param name="within">How far along the path a corner may lie, in mm.</param>
internal sealed class CornerFinder(
    SegmentRun path,
    IReadOnlyList<PathCorner> corners,
    double within
)
{
    private readonly double _on = path.Tolerance.Merge;
    private int _next;
    private double _before;

    /// <summary>Whether a place lies on the corner itself.</summary>
    internal bool IsOn(PathCorner corner, double length) => Away(corner, length) <= _on;

    /// <summary>The nearest corner of those near enough; null if there is none.</summary>
    internal PathCorner? Near(double length)
    {
        if (corners.Count == 0)
            return null;
        if (length < _before)
            _next = 0;
        _before = length;
        while (_next < corners.Count && corners[_next].Length < length)
            _next++;
        var ahead = At(_next);
        var behind = At(_next - 1);
        var nearest = Away(behind, length) < Away(ahead, length) ? behind : ahead;
        return Away(nearest, length) <= Math.Max(within, _on) ? nearest : null;
    }

    /// <summary>The corner of an index, which goes round; at the ends of an open path the last one there is.</summary>
    private PathCorner At(int index) =>
        path.IsClosed
            ? corners[(index + corners.Count) % corners.Count]
            : corners[Math.Clamp(index, 0, corners.Count - 1)];

    private double Away(PathCorner corner, double length)
    {
        var away = Math.Abs(corner.Length - length);
        return path.IsClosed ? Math.Min(away, path.Length - away) : away;
    }
}
