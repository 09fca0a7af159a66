using NetTopologySuite.Geometries;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Tests.Geometry;

/// <summary>Shapes with their arcs cut into short lines, as NetTopologySuite takes them.</summary>
internal static class Flat
{
    /// <summary>How far lines stray from their arcs at most, in mm.</summary>
    internal const double Accuracy = 1e-3;

    private static readonly GeometryFactory Factory = new();

    internal static Polygon Polygon(Contour contour, double accuracy = Accuracy) =>
        Factory.CreatePolygon(Ring(contour, accuracy));

    internal static NetTopologySuite.Geometries.Geometry Of(
        Region region,
        double accuracy = Accuracy
    ) =>
        Factory.CreateMultiPolygon([
            .. region.Parts.Select(part =>
                Factory.CreatePolygon(
                    Ring(part.Outer, accuracy),
                    [.. part.Holes.Select(hole => Ring(hole, accuracy))]
                )
            ),
        ]);

    internal static LineString Line(Segment segment, double accuracy = Accuracy) =>
        Factory.CreateLineString([.. Points(segment, accuracy).Append(segment.End).Select(At)]);

    internal static NetTopologySuite.Geometries.Point At(double x, double y) =>
        Factory.CreatePoint(new Coordinate(x, y));

    internal static Coordinate At(Point point) => new(point.X, point.Y);

    private static LinearRing Ring(Contour contour, double accuracy)
    {
        var points = contour.Segments.SelectMany(segment => Points(segment, accuracy)).ToList();
        points.Add(points[0]);
        return Factory.CreateLinearRing([.. points.Select(At)]);
    }

    private static IEnumerable<Point> Points(Segment segment, double accuracy)
    {
        // A line over an angle a strays R (1 - cos(a/2)) = 2 R sin²(a/4) from the arc.
        var step = 4 * Math.Asin(Math.Min(1, Math.Sqrt(accuracy / segment.Radius / 2)));
        var parts = segment.IsLine ? 1 : (int)Math.Ceiling(Math.Abs(segment.Sweep.Radians) / step);
        for (var i = 0; i < parts; i++)
            yield return segment.PointAt(segment.Length * i / parts);
    }
}
