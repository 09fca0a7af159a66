using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A SPLINE. A stretched spline is the spline of the stretched points.</summary>
/// <param name="entity">Its layer and line.</param>
/// <param name="degree">Its degree.</param>
/// <param name="knots">Its knots; none if it is given by points that it goes through.</param>
/// <param name="points">Control points, or points that it goes through.</param>
/// <param name="weights">The weights of the control points; null if they are alike.</param>
/// <param name="isClosed">Whether the file calls it closed.</param>
/// <param name="leaving">Direction at the first of the points that it goes through, if given.</param>
/// <param name="arriving">Direction at the last one.</param>
internal sealed class DxfSpline(
    DxfEntity entity,
    int degree,
    double[] knots,
    Point[] points,
    double[]? weights,
    bool isClosed,
    Vector? leaving,
    Vector? arriving
) : DxfItem(entity.Layer, entity.Line)
{
    private bool _closes;

    internal override int Size => points.Length + knots.Length;

    internal override void Draw(DxfPen pen, DxfMap map, string layer)
    {
        if (knots.Length == 0)
            pen.Assume("spline given by points only: drawn as a cubic spline through them", Line);
        var corners = Fitted(map, linear => Corners(pen, linear));
        pen.Add(_closes ? corners[..^1] : corners, _closes, Line);
    }

    private IEnumerable<(Point, double)> Corners(DxfPen pen, DxfMap map)
    {
        var (corners, closes) = pen.Corners(() => Curve(map), Line);
        _closes = closes;
        return corners;
    }

    private FreeCurve Curve(DxfMap map)
    {
        Point[] mapped = [.. points.Select(map.Apply)];
        if (knots.Length > 0)
            return FreeCurve.BSpline(degree, knots, mapped, weights);
        return isClosed
            ? FreeCurve.ThroughClosed(mapped)
            : FreeCurve.ThroughDirected(mapped, Mapped(leaving), Mapped(arriving));

        Vector? Mapped(Vector? direction) => direction is { } given ? map.Apply(given) : null;
    }
}
