using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Equal for outlines that are written alike, from whichever corner and in whichever direction.</summary>
internal sealed class OutlineKey : IEquatable<OutlineKey>
{
    private readonly HashSet<(long X, long Y, long MiddleX, long MiddleY)> _corners;

    internal OutlineKey(Contour outline, int decimals)
    {
        _corners = [];
        foreach (var segment in outline.Segments)
        {
            Add(segment.Start, segment.Middle, decimals);
            Add(segment.End, segment.Middle, decimals);
        }
    }

    public bool Equals(OutlineKey? other) =>
        other is not null && _corners.SetEquals(other._corners);

    public override bool Equals(object? obj) => Equals(obj as OutlineKey);

    public override int GetHashCode() =>
        _corners.Aggregate(0, (hash, corner) => hash ^ corner.GetHashCode());

    private void Add(Point corner, Point middle, int decimals) =>
        _corners.Add(
            (
                FixedPoint.Scale(corner.X, decimals),
                FixedPoint.Scale(corner.Y, decimals),
                FixedPoint.Scale(middle.X, decimals),
                FixedPoint.Scale(middle.Y, decimals)
            )
        );
}
