using NetTopologySuite.Geometries;

namespace PatternGen.Tests;

/// <summary>Our shapes as NetTopologySuite sees them, flattened finely: an independent judge.</summary>
internal static class Reference
{
    private const int PointsPerSide = 64;

    internal static Polygon Polygon(Contour contour)
    {
        var ring = contour
            .Segments.SelectMany(side =>
                Enumerable
                    .Range(0, side.IsLine ? 1 : PointsPerSide)
                    .Select(i => side.PointAt(side.Length * i / PointsPerSide))
            )
            .Select(point => new Coordinate(point.X, point.Y))
            .ToList();
        ring.Add(ring[0].Copy());
        return new(new LinearRing([.. ring]));
    }
}
