using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Lines and arcs: LINE, ARC, CIRCLE and the polylines.</summary>
internal sealed class DxfRun(
    DxfEntity entity,
    (Point Point, double Bulge)[] corners,
    bool isClosed = false
) : DxfItem(entity.Layer, entity.Line)
{
    private readonly bool _isStraight = Array.TrueForAll(corners, corner => corner.Bulge == 0);

    internal override int Size => isClosed ? corners.Length : corners.Length - 1;

    internal override void Draw(DxfPen pen, DxfMap map, string layer)
    {
        if (_isStraight || map.KeepsCircles)
            pen.Add(Mapped(map), isClosed, Line);
        else
            pen.Add(Fitted(map, linear => Stretched(pen, linear)), isClosed, Line);
    }

    private (Point, double)[] Mapped(DxfMap map)
    {
        var sense = map.Determinant < 0 ? -1 : 1;
        return Array.ConvertAll(corners, corner => (map.Apply(corner.Point), sense * corner.Bulge));
    }

    /// <summary>Stretched, an arc is one of an ellipse.</summary>
    private IEnumerable<(Point, double)> Stretched(DxfPen pen, DxfMap map)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            var (start, bulge) = corners[i];
            var isLast = i == corners.Length - 1;
            var end = corners[isLast ? 0 : i + 1].Point;
            if (bulge == 0 || (isLast && !isClosed) || start == end)
                yield return (map.Apply(start), 0);
            else
            {
                var ellipse = EllipseArc.Of(start, end, bulge).Mapped(map);
                foreach (var corner in pen.Corners(ellipse, Line).SkipLast(1))
                    yield return corner;
            }
        }
    }
}
