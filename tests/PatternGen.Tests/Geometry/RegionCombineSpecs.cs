using CsCheck;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace PatternGen.Tests.Geometry;

public class RegionCombineSpecs
{
    private static readonly Region Left = new(Shapes.Circle(1));
    private static readonly Region Right = new(Shapes.Circle(1, 1));

    /// <summary>OEIS A093731, MathWorld "Vesica Piscis".</summary>
    [Fact]
    public void Two_circles_share_a_lens()
    {
        const double Lens = 1.22836969860876;
        var lens = Left.Intersection(Right);

        lens.Area.ShouldBe(Lens, 1e-12);
        lens.Largest().Count.ShouldBe(2);
        Left.Union(Right).Area.ShouldBe(2 * Math.PI - Lens, 1e-12);
        Left.Difference(Right).Area.ShouldBe(Math.PI - Lens, 1e-12);
        Left.Difference(Right).Largest().Segments.Count(side => side.Bulge < 0).ShouldBe(1);
    }

    /// <summary>OEIS A060708.</summary>
    [Fact]
    public void Three_circles_share_a_Reuleaux_triangle() =>
        Left.Intersection(Right, new(Shapes.Circle(1, 0.5, Math.Sqrt(3) / 2)))
            .Area.ShouldBe(0.704770923010458, 1e-12);

    [Fact]
    public void Two_squares_that_share_a_quarter()
    {
        Region one = new(Shapes.Square(2));
        Region other = new(Contour.Rectangle(new(1, 1), new(3, 3)));

        one.Union(other).Area.ShouldBe(7, 1e-12);
        one.Union(other).Largest().Count.ShouldBe(8);
        one.Intersection(other).Largest().Count.ShouldBe(4);
        one.Difference(other).Area.ShouldBe(3, 1e-12);
        one.Difference(other).Largest().Count.ShouldBe(6);
    }

    [Fact]
    public void Squares_side_by_side_become_one_without_a_seam()
    {
        var row = Region.UnionOf(
            Enumerable
                .Range(0, 50)
                .Select(i => new Region(Contour.Rectangle(new(i * 0.1, 0), new(i * 0.1 + 0.1, 1))))
        );

        row.Area.ShouldBe(5, 1e-12);
        row.Largest().Count.ShouldBe(4);
    }

    [Fact]
    public void Parts_that_touch_in_a_point_stay_parts()
    {
        Region one = new(Contour.Rectangle(new(0, 0), new(1, 1)));
        var both = one.Union(new Region(Contour.Rectangle(new(1, 1), new(2, 2))));

        both.Parts.Count.ShouldBe(2);
        both.Area.ShouldBe(2, 1e-12);
        both.Validate().IsValid.ShouldBeTrue();
        one.Intersection(new Region(Contour.Rectangle(new(1, 1), new(2, 2))))
            .IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void Taking_off_what_touches_the_outline_leaves_rings_that_touch()
    {
        var rest = new Region(Shapes.Square(10)).Difference(
            new(Shapes.Circle(2, 2, 5)),
            new(Shapes.Circle(2, 8, 5))
        );

        rest.Area.ShouldBe(100 - 8 * Math.PI, 1e-12);
        rest.Parts.ShouldHaveSingleItem().Holes.Count.ShouldBe(2);
    }

    [Fact]
    public void Nested_regions()
    {
        Region outer = new(Shapes.Circle(5));
        Region inner = new(Shapes.Circle(2));

        outer.Union(inner).Area.ShouldBe(25 * Math.PI, 1e-12);
        outer.Intersection(inner).Area.ShouldBe(4 * Math.PI, 1e-12);
        outer.Difference(inner).Parts.ShouldHaveSingleItem().Holes.Count.ShouldBe(1);
        inner.Difference(outer).IsEmpty.ShouldBeTrue();
        outer.Difference(inner).Union(inner).Contours.ShouldHaveSingleItem().Count.ShouldBe(2);
    }

    [Fact]
    public void Regions_apart()
    {
        Region far = new(Shapes.Circle(1, 10));

        Left.Union(far).Parts.Count.ShouldBe(2);
        Left.Intersection(far).IsEmpty.ShouldBeTrue();
        Left.Difference(far).Area.ShouldBe(Math.PI, 1e-12);
    }

    [Fact]
    public void The_empty_region_changes_nothing()
    {
        Left.Union(Region.Empty).Area.ShouldBe(Math.PI, 1e-12);
        Left.Union().ShouldBeSameAs(Left);
        Left.Intersection(Region.Empty).IsEmpty.ShouldBeTrue();
        Left.Difference(Region.Empty).Area.ShouldBe(Math.PI, 1e-12);
        Region.Empty.Difference(Left).IsEmpty.ShouldBeTrue();
        Region.Empty.Union(Region.Empty).IsEmpty.ShouldBeTrue();
        Region.UnionOf().IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void An_outline_that_crosses_itself_is_refused()
    {
        Region crossing = new(Contour.Polygon(new(0, 0), new(2, 2), new(2, 0), new(0, 2)));

        var refused = Should.Throw<PatternException>(() => Left.Union(crossing));
        refused.Place!.Value.DistanceTo(new(1, 1)).ShouldBeLessThan(1e-9);
        Should.Throw<PatternException>(() => crossing.Intersection(Left));
        Should.Throw<ArgumentNullException>(() => Left.Union((Region)null!));
        Should.Throw<ArgumentNullException>(() => Left.Difference((IEnumerable<Region>)null!));
    }

    [Fact]
    public void Areas_add_up() =>
        Gen.Select(Regions, Regions)
            .Sample(
                (one, other) =>
                {
                    var both = one.Intersection(other);
                    var within = 1e-6 * (one.Area + other.Area);
                    (one.Union(other).Area + both.Area).ShouldBe(one.Area + other.Area, within);
                    (one.Difference(other).Area + both.Area).ShouldBe(one.Area, within);
                    other.Union(one).Area.ShouldBe(one.Union(other).Area, within);
                    other.Intersection(one).Area.ShouldBe(both.Area, within);
                    one.Union(one).Area.ShouldBe(one.Area, within);
                    one.Intersection(one).Area.ShouldBe(one.Area, within);
                    one.Difference(one).Area.ShouldBe(0, within);
                    one.Union(other)
                        .Validate()
                        .Flaws.ShouldNotContain(flaw =>
                            flaw.Kind == FlawKind.RingsCrossing
                            || flaw.Kind == FlawKind.SelfCrossing
                        );
                },
                iter: 200
            );

    /// <summary>NetTopologySuite on shapes cut into short lines; its older overlay gives up on some, its robust one does not.</summary>
    [Fact]
    public void Areas_are_those_of_flattened_shapes() =>
        Gen.Select(RandomRegions, RandomRegions)
            .Sample(
                (one, other) =>
                {
                    var (a, b) = (Flat.Of(one), Flat.Of(other));
                    var within = 2 * Flat.Accuracy * (one.Length + other.Length);
                    one.Union(other).Area.ShouldBe(Combined(SpatialFunction.Union), within);
                    one.Intersection(other)
                        .Area.ShouldBe(Combined(SpatialFunction.Intersection), within);
                    one.Difference(other)
                        .Area.ShouldBe(Combined(SpatialFunction.Difference), within);

                    double Combined(SpatialFunction how) => OverlayNGRobust.Overlay(a, b, how).Area;
                },
                iter: 100
            );

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1)]
    [InlineData(1e4)]
    public void The_size_does_not_matter(double scale)
    {
        var resize = Transform.Resize(scale);
        Left.Transformed(resize)
            .Intersection(Right.Transformed(resize))
            .Area.ShouldBe(1.22836969860876 * scale * scale, 1e-9 * scale * scale);
    }

    private static Gen<Region> RandomRegions { get; } =
        Gen.Select(Draw.Ring, Draw.Point(40))
            .Select(
                (ring, move) =>
                {
                    var hole = ring.Transformed(Transform.Resize(0.3));
                    var isHole =
                        ring.Contains(hole.PointAt(0)) && ring.Intersections(hole).Count == 0;
                    return new Region(isHole ? [ring, hole] : [ring]).Transformed(
                        Transform.Move(move.X, move.Y)
                    );
                }
            );

    private static Gen<Region> Regions { get; } =
        Gen.OneOf(RandomRegions, Draw.GridRing.Select(ring => new Region(ring)));
}
