using CsCheck;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

public class RoofInvarianceSpecs
{
    public static TheoryData<string> Names =>
        [.. Shapes.All.Select(pair => pair.Name), "Reuleaux", "semicircle", "four hollows", "lens"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Neither_the_first_corner_nor_direction_nor_size_changes_a_roof(string name)
    {
        var outline = Named(name);
        var first = Roof.Over(outline);

        EveryWay.Check(
            outline,
            (other, scale) =>
            {
                var roof = RoofCheck.Sound(other);
                ShouldBeAlike(roof, first, scale, 1e-11, name);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Mirrored_turned_and_moved_far_away_a_roof_is_the_same(string name)
    {
        var outline = Named(name);
        var first = Roof.Over(outline);
        foreach (
            var (transform, near) in (IEnumerable<(Transform, double)>)
                [
                    (Transform.MirrorLeftRight(3), 1e-12),
                    (Transform.Mirror(new(1, 2), Angle.FromDegrees(17)), 1e-11),
                    (Transform.Rotate(33.3), 1e-11),
                    (Transform.Rotate(90, new(5, 5)), 1e-11),
                    // Coordinates there are known to 1.5e-11 mm.
                    (Transform.Move(1e5, -1e5), 1e-9),
                ]
        )
        {
            var roof = RoofCheck.Sound(outline.Transformed(transform), name);
            ShouldBeAlike(roof, first, 1, near, name);
            if (first.DeepestLines.Count == 0 && name is not ("dumb-bell" or "L" or "four hollows"))
                roof.Deepest.DistanceTo(transform.Apply(first.Deepest))
                    .ShouldBeLessThan(1e-5, name);
        }
    }

    [Fact]
    public void Random_outlines_have_the_same_roof_wherever_they_lie() =>
        Gen.Select(Draw.Ring, Draw.Transform)
            .Sample(
                (ring, transform) =>
                {
                    var first = Roof.Over(ring);
                    var other = Roof.Over(ring.Transformed(transform));
                    var scale = transform.Scale;
                    other.Clearance.ShouldBe(first.Clearance * scale, 1e-9 * (scale + 1));
                    other.Moment.ShouldBe(
                        first.Moment * Math.Pow(scale, 3),
                        1e-8 * first.Moment * Math.Pow(scale, 3) + 1e-9
                    );
                },
                iter: 300,
                print: drawn => $"{Draw.Print(drawn.Item1)}, {drawn.Item2}"
            );

    private static Contour Named(string name) =>
        name switch
        {
            "Reuleaux" => ChipOutlines.Reuleaux(10),
            "semicircle" => ChipOutlines.Semicircle(4),
            "four hollows" => ChipOutlines.GapAmongFour,
            _ => Shapes.All.First(pair => pair.Name == name).Contour,
        };

    private static void ShouldBeAlike(Roof roof, Roof first, double scale, double near, string name)
    {
        roof.Clearance.ShouldBe(first.Clearance * scale, near * scale * 100, name);
        roof.Moment.ShouldBe(
            first.Moment * scale * scale * scale,
            near * first.Moment * scale * scale * scale * 100,
            name
        );
        roof.Valleys.Count.ShouldBe(first.Valleys.Count, name);
        roof.Nodes.Count.ShouldBe(first.Nodes.Count, name);
        roof.Walls.Count.ShouldBe(first.Walls.Count, name);
        roof.DeepestLines.Count.ShouldBe(first.DeepestLines.Count, name);
        roof.Valleys.Select(valley => valley.Kind)
            .Order()
            .ShouldBe(first.Valleys.Select(valley => valley.Kind).Order(), name);
    }
}
