using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Polygonize;
using static PatternGen.Tests.Geometry.Arrangements;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Tests.Geometry;

/// <summary>Faces against those that NetTopologySuite finds in the drawing cut into short lines.</summary>
public class ArrangementPolygonizerSpecs
{
    private const double Accuracy = 1e-4;

    [Theory]
    [InlineData(1, 10)]
    [InlineData(2, 20)]
    [InlineData(3, 40)]
    [InlineData(4, 80)]
    [InlineData(5, 200)]
    public void Faces_are_those_of_a_polygonizer(int seed, int count)
    {
        var random = new Random(seed);
        var curves = Enumerable.Range(0, count).Select(_ => Any(random)).ToArray();
        var arrangement = Sound(curves);
        var polygonizer = new Polygonizer();
        polygonizer.Add(new MultiLineString([.. curves.SelectMany(Lines)]).Union());

        var found = new HashSet<Face>();
        foreach (var polygon in polygonizer.GetPolygons())
        {
            // Thinner ones may be what flattening makes of a tangency.
            if (polygon.Area < 20 * Accuracy * polygon.Length)
                continue;
            var inside = polygon.InteriorPoint;
            var face = arrangement.FaceAt(new(inside.X, inside.Y))!.Value;
            face.Area.ShouldBe(polygon.Area, 2 * Accuracy * polygon.Length);
            found.Add(face).ShouldBeTrue();
        }
        foreach (var face in arrangement.BoundedFaces)
            if (face.Area > 30 * Accuracy * Length(face))
                found.ShouldContain(face);
        found.Count.ShouldBeGreaterThan(arrangement.Faces.Count / 2);
    }

    private static double Length(Face face) =>
        face.Walks.Sum(walk => walk.Sum(half => half.Segments.Sum(segment => segment.Length)));

    private static IEnumerable<LineString> Lines(Curve curve) =>
        curve.Segments.Select(segment => Flat.Line(segment, Accuracy));

    private static Curve Any(Random random)
    {
        return random.Next(3) switch
        {
            0 => new Segment(Place(), Place()),
            1 => new Segment(Place(), Place(), random.NextDouble() * 6 - 3),
            _ => new Circle(Place(), 1 + 20 * random.NextDouble()),
        };

        Point Place() => new(100 * random.NextDouble(), 100 * random.NextDouble());
    }
}
