using NetTopologySuite.Geometries;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Tests.Geometry;

/// <summary>Shapes with their arcs cut into short lines, as NetTopologySuite takes them.</summary>
internal static class Flat
{
    private static readonly GeometryFactory Factory = new();

    internal static Polygon Polygon(Contour contour, int linesInQuarter = 256) =>
        Factory.CreatePolygon(Ring(contour, linesInQuarter));

    internal static NetTopologySuite.Geometries.Geometry Of(
        Region region,
        int linesInQuarter = 256
    ) =>
        Factory.CreateMultiPolygon([
            .. region.Parts.Select(part =>
                Factory.CreatePolygon(
                    Ring(part.Outer, linesInQuarter),
                    [.. part.Holes.Select(hole => Ring(hole, linesInQuarter))]
                )
            ),
        ]);

    internal static LineString Line(Segment segment, int linesInQuarter = 256) =>
        Factory.CreateLineString([
            .. Points(segment, linesInQuarter).Append(segment.End).Select(At),
        ]);

    internal static NetTopologySuite.Geometries.Point At(double x, double y) =>
        Factory.CreatePoint(new Coordinate(x, y));

    internal static Coordinate At(Point point) => new(point.X, point.Y);

    private static LinearRing Ring(Contour contour, int linesInQuarter)
    {
        var points = contour
            .Segments.SelectMany(segment => Points(segment, linesInQuarter))
            .ToList();
        points.Add(points[0]);
        return Factory.CreateLinearRing([.. points.Select(At)]);
    }

    private static IEnumerable<Point> Points(Segment segment, int linesInQuarter)
    {
        var parts = segment.IsLine
            ? 1
            : (int)Math.Ceiling(Math.Abs(segment.Sweep.Degrees) / 90 * linesInQuarter);
        for (var i = 0; i < parts; i++)
            yield return segment.PointAt(segment.Length * i / parts);
    }
}
