using CsCheck;

namespace PatternGen.Tests.Geometry;

public class OffsetSpecs
{
    [Fact]
    public void I_can_shrink_a_square()
    {
        var inner = Shapes.Square(10).Offset(-2);

        inner.Largest().Area.ShouldBe(36, 1e-9);
        inner.Largest().Count.ShouldBe(4);
        inner.Extents.Min.ShouldBe(new(2, 2));
        inner.Extents.Max.ShouldBe(new(8, 8));
    }

    [Fact]
    public void I_can_grow_a_square_with_round_corners()
    {
        var outer = Shapes.Square(10).Offset(2);

        // Steiner's formula: A + d L + π d².
        outer.Area.ShouldBe(100 + 2 * 40 + Math.PI * 4, 1e-9);
        outer.Largest().Count.ShouldBe(8);
    }

    [Fact]
    public void I_can_grow_a_square_with_sharp_corners()
    {
        var outer = Shapes.Square(10).Offset(2, OffsetJoin.Mitred());

        outer.Area.ShouldBe(14 * 14, 1e-9);
        outer.Largest().Count.ShouldBe(4);
    }

    [Fact]
    public void A_mitre_longer_than_its_limit_is_round() =>
        Shapes
            .Square(10)
            .Offset(2, OffsetJoin.Mitred(1.4))
            .Area.ShouldBe(100 + 80 + Math.PI * 4, 1e-9);

    [Fact]
    public void A_dumb_bell_splits_in_two()
    {
        var region = Shapes.DumbBell(4).Offset(-2.5);

        // The places beside the neck that are 2.5 from both of its corners: under two arcs, by integration.
        var beside = 2 * (5 - 1.5 - 3.125 * Math.Asin(0.8));
        region.Parts.Count.ShouldBe(2);
        region.Area.ShouldBe(2 * (25 + beside), 1e-9);
    }

    [Fact]
    public void A_dumb_bell_shrunk_by_half_its_neck_has_two_squares()
    {
        var region = Shapes.DumbBell(4).Offset(-2);

        // Beside the neck, two squares of side 2 less the quarter circles about its corners.
        region.Parts.Count.ShouldBe(2);
        region.Area.ShouldBe(2 * (36 + 2 * (4 - Math.PI)), 1e-9);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(5.5)]
    [InlineData(100)]
    public void Nothing_is_left_of_a_square_beyond_its_middle(double distance) =>
        Shapes.Square(10).Inset(distance).IsEmpty.ShouldBeTrue();

    [Fact]
    public void A_stadium_shrunk_by_its_radius_vanishes_but_not_before()
    {
        Shapes.Stadium(10, 3).Inset(3).IsEmpty.ShouldBeTrue();
        Shapes.Stadium(10, 3).Inset(2.999).Area.ShouldBe(10 * 0.002 + Math.PI * 1e-6, 1e-9);
    }

    [Theory]
    [InlineData(1, 4)]
    [InlineData(2, 0)]
    [InlineData(3, 0)]
    public void The_corners_of_a_rounded_rectangle_sharpen_at_their_radius(double inset, int arcs)
    {
        var ring = Shapes.RoundedRectangle(20, 10, 2).Inset(inset).Largest();

        ring.Segments.Count(segment => !segment.IsLine).ShouldBe(arcs);
        ring.Count.ShouldBe(4 + arcs);
        var radius = Math.Max(0, 2 - inset);
        ring.Area.ShouldBe(
            (20 - 2 * inset) * (10 - 2 * inset) - (4 - Math.PI) * radius * radius,
            1e-9
        );
    }

    [Fact]
    public void A_ring_closes_its_hole_and_vanishes()
    {
        var ring = new Region(Shapes.Circle(10), Shapes.Circle(6));

        ring.Offset(1).Area.ShouldBe(Math.PI * (121 - 25), 1e-9);
        ring.Offset(6).Area.ShouldBe(Math.PI * 256, 1e-9);
        ring.Offset(6).Contours.Count.ShouldBe(1);
        ring.Inset(1).Area.ShouldBe(Math.PI * (81 - 49), 1e-9);
        ring.Inset(2).IsEmpty.ShouldBeTrue();
        ring.Inset(2.5).IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void A_horseshoe_grows_into_a_ring_with_a_hole()
    {
        var horseshoe = Contour.Polygon(
            new(0, 0),
            new(20, 0),
            new(20, 20),
            new(11, 20),
            new(11, 15),
            new(15, 15),
            new(15, 5),
            new(5, 5),
            new(5, 15),
            new(9, 15),
            new(9, 20),
            new(0, 20)
        );

        var grown = horseshoe.Offset(1.5);

        // A square, and at the mouth the places 1.5 from both of its corners: under two arcs, by integration.
        var mouth = 2 * (1.5 - Math.Sqrt(1.25) / 2 - 1.125 * Math.Asin(2.0 / 3));
        var hole = grown.Parts.ShouldHaveSingleItem().Holes.ShouldHaveSingleItem();
        hole.Area.ShouldBe(7 * 7 + mouth, 1e-9);
    }

    [Fact]
    public void The_gap_between_three_unit_circles_vanishes_at_its_largest_circle()
    {
        // OEIS A246724: 2/sqrt(3) - 1.
        const double largest = 0.154700538379252;
        Shapes.Gap.Inset(largest - 1e-6).IsEmpty.ShouldBeFalse();
        Shapes.Gap.Inset(largest + 1e-6).IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void The_L_shape_vanishes_at_the_circle_that_touches_two_sides_and_the_corner()
    {
        // The circle through the re-entrant corner that touches both long sides: 2 - sqrt(2).
        const double largest = 0.585786437626905;
        Shapes.LShape.Inset(largest - 1e-6).IsEmpty.ShouldBeFalse();
        Shapes.LShape.Inset(largest + 1e-6).IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void An_inset_lens_is_the_lens_of_smaller_circles()
    {
        var lens = Shapes.Lens(10, 8);
        var inset = lens.Inset(0.5).Largest();

        inset.Segments.ShouldAllBe(segment => Math.Abs(segment.Radius - 7.5) < 1e-9);
        inset.Count.ShouldBe(2);
    }

    [Theory]
    [InlineData(0.0004999)] // leaves a strip 2e-7 wide, twice the merge distance of 100 mm
    [InlineData(0.000499)]
    [InlineData(0.0004)]
    public void A_strip_wider_than_the_merge_distance_is_left(double inset)
    {
        var strip = Contour.Rectangle(new(0, 0), new(100, 1e-3)).Inset(inset);

        var area = (100 - 2 * inset) * (1e-3 - 2 * inset);
        // Corners are known to the merge distance.
        strip.Area.ShouldBe(area, 100 * 1e-7);
        strip.Area.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Offsetting_by_nothing_changes_nothing() =>
        Shapes.LShape.Offset(0).Largest().Vertices.ShouldBe(Shapes.LShape.Vertices);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e9)]
    public void Absurd_distances_are_refused(double distance) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Shapes.LShape.Offset(distance));

    [Theory]
    [InlineData(-3)] // more than half its width
    [InlineData(-0.1)]
    [InlineData(0)]
    [InlineData(1e-12)] // less than the merge distance
    [InlineData(2)]
    public void A_contour_that_crosses_itself_is_refused_and_says_where(double distance)
    {
        var bow = Contour.Polygon(new(0, 0), new(4, 4), new(4, 0), new(0, 5));

        var error = Should.Throw<PatternException>(() => bow.Offset(distance));

        // Where y = x meets y = 5 - 5x/4.
        error.Place!.Value.DistanceTo(new(20 / 9.0, 20 / 9.0)).ShouldBeLessThan(1e-9);
        error.Remedies.ShouldNotBeEmpty();
        Should.Throw<PatternException>(() =>
            new Region(Shapes.Circle(2), Shapes.Circle(2, 1)).Offset(1)
        );
    }

    [Fact]
    public void A_contour_that_touches_itself_can_be_offset()
    {
        var pinched = Contour.Polygon(
            new(0, 0),
            new(5, 5),
            new(10, 0),
            new(10, 10),
            new(5, 5),
            new(0, 10)
        );

        pinched.Inset(0.5).Parts.Count.ShouldBe(2);
        pinched.Offset(0.5).Parts.Count.ShouldBe(1);
    }

    [Fact]
    public void Growing_twice_is_growing_once_and_so_is_shrinking() =>
        Gen.Select(Draw.GridRing, Draw.OneOf(0.25, 0.5, 1, 1.5), Draw.OneOf(0.25, 0.5, 1))
            .Sample(
                (ring, first, second) =>
                {
                    foreach (var sign in (double[])[1, -1])
                    {
                        var twice = ring.Offset(sign * first).Offset(sign * second);
                        var once = ring.Offset(sign * (first + second));
                        twice.Area.ShouldBe(once.Area, 1e-6 * (1 + once.Length));
                    }
                },
                iter: 500
            );

    [Fact]
    public void A_mitred_offset_holds_the_round_one() =>
        Gen.Select(Draw.GridRing, Draw.OneOf(0.25, 0.5, 1, 1.5), Gen.Double[1, 8])
            .Sample(
                (ring, distance, limit) =>
                {
                    var join = OffsetJoin.Mitred(limit);
                    ring.Offset(distance, join)
                        .Area.ShouldBeGreaterThan(ring.Offset(distance).Area - 1e-7);
                    ring.Inset(distance, join)
                        .Area.ShouldBeLessThan(ring.Inset(distance).Area + 1e-7);
                },
                iter: 500
            );

    [Fact]
    public void A_negative_inset_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Shapes.LShape.Inset(-1));

    [Fact]
    public void Every_place_of_an_offset_lies_at_the_distance() =>
        Gen.Select(Draw.Ring, Gen.Double[-20, 20])
            .Sample(
                (ring, distance) => Offsets.ShouldLieAtTheDistance(ring, distance),
                print: Draw.Print,
                iter: 2000
            );

    [Fact]
    public void Every_place_of_an_offset_on_a_grid_lies_at_the_distance() =>
        Gen.Select(
                Draw.GridRing,
                Draw.OneOf(0.25, 0.5, 1, 1.5, 2, -0.25, -0.5, -1, -1.5, Math.Sqrt(0.5), -0.75)
            )
            .Sample(
                (ring, distance) => Offsets.ShouldLieAtTheDistance(ring, distance),
                print: Draw.Print,
                iter: 2000
            );

    [Fact]
    public void Areas_agree_with_an_independent_buffer() =>
        Gen.Select(Draw.Ring, Gen.Double[0.01, 15], Gen.Bool)
            .Select((ring, distance, grows) => (ring, grows ? distance : -distance))
            .Sample(
                (ring, distance) => Offsets.ShouldHaveTheAreaOfABuffer(ring, distance),
                print: Draw.Print,
                iter: 300
            );

    [Fact]
    public void Areas_on_a_grid_agree_with_an_independent_buffer() =>
        Gen.Select(Draw.GridRing, Draw.OneOf(0.25, 0.5, 1, 1.5, -0.25, -0.5, -1, -1.5))
            .Sample(
                (ring, distance) => Offsets.ShouldHaveTheAreaOfABuffer(ring, distance),
                print: Draw.Print,
                iter: 300
            );
}
