using CsCheck;

namespace PatternGen.Tests.Geometry;

public class RegionSpecs
{
    private static readonly Region Target = new(
        Shapes.Circle(4),
        Shapes.Circle(10),
        Shapes.Circle(1, 40).Reversed(),
        Shapes.Circle(2),
        Shapes.Circle(8)
    );

    [Fact]
    public void Rings_find_their_place_in_each_other()
    {
        Target.Parts.Count.ShouldBe(3);
        Target.Contours.Count(ring => ring.IsCounterClockwise).ShouldBe(3);
        Target.Area.ShouldBe(Math.PI * (100 - 64 + 16 - 4 + 1), 1e-12);
        Target.Parts.Sum(part => part.Area).ShouldBe(Target.Area, 1e-12);
        Target.Largest().Area.ShouldBe(100 * Math.PI, 1e-12);
        Target.Validate().IsValid.ShouldBeTrue();
    }

    [Theory]
    [InlineData(0, Containment.Outside)]
    [InlineData(2, Containment.OnEdge)]
    [InlineData(3, Containment.Inside)]
    [InlineData(5, Containment.Outside)]
    [InlineData(9, Containment.Inside)]
    [InlineData(11, Containment.Outside)]
    [InlineData(40, Containment.Inside)]
    public void Holes_lie_outside(double x, Containment where)
    {
        Target.Locate(new(x, 0)).ShouldBe(where);
        Target.Contains(new(x, 0)).ShouldBe(where != Containment.Outside);
    }

    [Fact]
    public void A_mirrored_region_keeps_its_directions()
    {
        var mirrored = Target.Transformed(Transform.MirrorLeftRight());

        mirrored.Area.ShouldBe(Target.Area, 1e-12);
        mirrored.Parts.ShouldAllBe(part => part.Outer.IsCounterClockwise);
        mirrored.Contains(new(-40, 0)).ShouldBeTrue();
    }

    [Fact]
    public void The_empty_region_holds_nothing()
    {
        Region.Empty.IsEmpty.ShouldBeTrue();
        Region.Empty.Area.ShouldBe(0);
        Region.Empty.Contains(new(0, 0)).ShouldBeFalse();
        Region.Empty.Offset(5).IsEmpty.ShouldBeTrue();
        new Region().IsEmpty.ShouldBeTrue();
        Should.Throw<InvalidOperationException>(() => Region.Empty.Largest());
        Should.Throw<InvalidOperationException>(() => Region.Empty.Extents);
        Should.Throw<InvalidOperationException>(() => Region.Empty.Centroid);
    }

    [Fact]
    public void A_hole_may_touch_its_outer_ring()
    {
        var region = new Region(Shapes.Circle(4), Shapes.Circle(2, 2));

        region.Parts.ShouldHaveSingleItem().Holes.Count.ShouldBe(1);
        region.Validate().IsValid.ShouldBeTrue();
    }

    [Fact]
    public void Rings_that_cross_or_run_along_each_other_are_found()
    {
        new Region(Shapes.Circle(2), Shapes.Circle(2, 2))
            .Validate()
            .Flaws.ShouldContain(flaw => flaw.Kind == FlawKind.RingsCrossing);
        new Region(Shapes.Square(4), Contour.Rectangle(new(4, 1), new(6, 3)))
            .Validate()
            .Flaws.ShouldContain(flaw => flaw.Kind == FlawKind.RingsOverlapping);
    }

    [Fact]
    public void Centre_of_gravity_and_containment_agree_with_an_independent_library() =>
        Gen.Select(Draw.Ring, Draw.Point(60))
            .Sample(
                (ring, point) =>
                {
                    var hole = ring.Transformed(Transform.Resize(0.1));
                    if (
                        ring.Locate(hole.PointAt(0)) != Containment.Inside
                        || ring.Intersections(hole).Count > 0
                    )
                        return;
                    var region = new Region(ring, hole);
                    var flat = Flat.Of(region);
                    region.Area.ShouldBe(flat.Area, region.Length * Flat.Accuracy);
                    region
                        .Centroid.DistanceTo(new(flat.Centroid.X, flat.Centroid.Y))
                        .ShouldBeLessThan(0.5);
                    var at = Flat.At(point.X, point.Y);
                    if (flat.Boundary.Distance(at) > 2 * Flat.Accuracy)
                        region.Contains(point).ShouldBe(flat.Contains(at));
                },
                iter: 500
            );

    [Fact]
    public void Offsets_of_regions_with_holes_agree_with_an_independent_buffer() =>
        Gen.Select(Draw.Ring, Gen.Double[0.01, 8], Gen.Bool)
            .Select((ring, distance, grows) => (ring, grows ? distance : -distance))
            .Sample(
                (ring, distance) => Offsets.OfAHoleShouldHaveTheAreaOfABuffer(ring, distance),
                print: Draw.Print,
                iter: 300
            );
}
