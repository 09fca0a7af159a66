using CsCheck;
using static PatternGen.Tests.Geometry.Arrangements;

namespace PatternGen.Tests.Geometry;

public class ArrangementLocateSpecs
{
    [Fact]
    public void A_point_lies_on_a_node_or_an_edge_or_in_a_face()
    {
        var arrangement = Sound(Circle(0, 0, 2), Circle(2, 0, 2), Line(10, 0, 12, 0));

        arrangement.Locate(new(1, Math.Sqrt(3))).Node!.Value.Degree.ShouldBe(4);
        arrangement.Locate(new(11, 1e-9)).Edge!.Value.Sources.ShouldBe([2]);
        arrangement.Locate(new(4, 0)).Edge!.Value.Sources.ShouldBe([1]);
        arrangement.Locate(new(1, 0)).Face!.Value.Area.ShouldBe(4 * 1.22836969860876, 1e-11);
        arrangement.FaceAt(new(11, 1)).ShouldBe(arrangement.OuterFace);
        arrangement.FaceAt(new(11, 0)).ShouldBeNull();
        Should.Throw<ArgumentOutOfRangeException>(() => arrangement.Locate(new(double.NaN, 0)));
    }

    [Fact]
    public void The_middle_of_each_edge_lies_on_it_and_each_node_on_itself()
    {
        var arrangement = Sound([.. RosetteAndRim(12), .. PolygonWithDiagonals(7)]);

        foreach (var edge in arrangement.Edges)
            arrangement.Locate(edge.Forward.Segments[0].Middle).Edge.ShouldBe(edge);
        foreach (var node in arrangement.Nodes)
            arrangement.Locate(node.Point).Node.ShouldBe(node);
    }

    /// <summary>The winding of the face's own rings says so too.</summary>
    [Fact]
    public void The_face_of_a_point_holds_it() =>
        Gen.Select(ArrangementDraw.Drawing(30), Draw.Point(60))
            .Sample(
                (curves, point) =>
                {
                    var arrangement = Arrangement.Of(curves);
                    var holding = arrangement
                        .BoundedFaces.Where(face => Locate(face, point) == Containment.Inside)
                        .ToArray();
                    if (arrangement.FaceAt(point) is { } found)
                        holding.ShouldBe(found.IsOuter ? [] : [found]);
                },
                iter: 60
            );

    private static Containment Locate(Face face, Point point)
    {
        var part = face.ToPart();
        return new Region(part.Holes.Prepend(part.Outer)).Locate(point);
    }
}
