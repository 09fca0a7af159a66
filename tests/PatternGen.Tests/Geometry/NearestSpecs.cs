using CsCheck;

namespace PatternGen.Tests.Geometry;

/// <summary>Where two segments come nearest to each other.</summary>
public class NearestSpecs
{
    [Fact]
    public void A_line_comes_nearest_to_a_half_circle_above_its_middle()
    {
        var arc = new Segment(new(-1, 0), new(1, 0), -1);
        var places = arc.NearestTo(new(new(-3, 3), new(3, 3)));

        places.Here.DistanceTo(new(0, 1)).ShouldBeLessThan(1e-15);
        places.There.DistanceTo(new(0, 3)).ShouldBeLessThan(1e-15);
        places.Distance.ShouldBe(2, 1e-15);
    }

    [Fact]
    public void Circles_come_nearest_on_the_line_through_their_centres()
    {
        // Quarters of circles of radius 5 round (0, 0) and of radius 3 round (9, 12), 15 apart: 15 - 5 - 3.
        var one = Segment.Arc(new(0, 0), 5, Angle.FromDegrees(0), Angle.FromDegrees(90));
        var other = Segment.Arc(new(9, 12), 3, Angle.FromDegrees(180), Angle.FromDegrees(90));

        var places = one.NearestTo(other);

        places.Distance.ShouldBe(7, 1e-14);
        places.Here.DistanceTo(new(3, 4)).ShouldBeLessThan(1e-14);
        places.There.DistanceTo(new(9 - 1.8, 12 - 2.4)).ShouldBeLessThan(1e-14);
    }

    [Fact]
    public void A_circle_within_another_comes_nearest_beyond_the_inner_centre()
    {
        // Radius 10 round (0, 0), radius 4 round (3, 0): 10 - 4 - 3 at the right.
        var outer = Segment.Arc(new(0, 0), 10, Angle.FromDegrees(-90), Angle.FromDegrees(180));
        var inner = Segment.Arc(new(3, 0), 4, Angle.FromDegrees(90), Angle.FromDegrees(-180));

        inner.NearestTo(outer).Distance.ShouldBe(3, 1e-14);
        outer.NearestTo(inner).There.DistanceTo(new(7, 0)).ShouldBeLessThan(1e-14);
    }

    [Fact]
    public void Arcs_round_one_centre_are_as_far_apart_as_their_radii()
    {
        var one = Segment.Arc(new(2, 3), 10, Angle.FromDegrees(10), Angle.FromDegrees(50));
        var other = Segment.Arc(new(2, 3), 9.2, Angle.FromDegrees(80), Angle.FromDegrees(-40));

        one.NearestTo(other).Distance.ShouldBe(0.8, 1e-13);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-6)]
    [InlineData(1e-9)]
    [InlineData(1e-11)]
    public void Flat_arcs_keep_their_digits(double bulge)
    {
        // Two arcs over chords of 100 mm that bend towards each other; the sagitta is bulge × 50.
        var low = new Segment(new(0, 0), new(100, 0), -bulge);
        var high = new Segment(new(100, 1), new(0, 1), -bulge);

        low.NearestTo(high).Distance.ShouldBe(1 - 100 * bulge, 1e-14);
        low.NearestTo(new(new(20, 1), new(80, 1))).Distance.ShouldBe(1 - 50 * bulge, 1e-14);
    }

    [Fact]
    public void Parallel_lines_are_as_far_apart_as_they_lie()
    {
        // Both climb 4 in 3; from (66, 43) to the first one's line it is 0.6 × 43 - 0.8 × 66.
        var distance = new Segment(new(0, 0), new(30, 40)).NearestTo(new(new(66, 43), new(6, -37)));

        distance.Distance.ShouldBe(27, 1e-13);
    }

    [Fact]
    public void Segments_that_cross_or_meet_are_no_distance_apart()
    {
        var line = new Segment(new(0, 0), new(10, 10));

        line.NearestTo(new(new(0, 10), new(10, 0))).ShouldBe(new(new(5, 5), new(5, 5), 0));
        line.NearestTo(new(new(10, 10), new(20, 0), 0.3)).Distance.ShouldBe(0);
        line.NearestTo(new(new(4, 4), new(9, 0), -0.7)).Distance.ShouldBe(0, 1e-15);
        line.NearestTo(line.Reversed()).Distance.ShouldBe(0, 1e-15);
    }

    [Fact]
    public void A_segment_without_length_is_a_point()
    {
        var point = new Segment(new(3, 4), new(3, 4));

        point.NearestTo(new(new(0, 0), new(0, 9))).Distance.ShouldBe(3);
        new Segment(new(0, 0), new(0, 9), 0.5).NearestTo(point).There.ShouldBe(new(3, 4));
        point.NearestTo(new(new(0, 0), new(0, 0))).Distance.ShouldBe(5);
    }

    [Fact]
    public void No_two_places_of_the_curves_are_nearer() =>
        Gen.Select(Draw.Segment, Draw.Segment)
            .Sample(
                (one, other) =>
                {
                    var places = one.NearestTo(other);
                    places.Here.DistanceTo(places.There).ShouldBe(places.Distance, 1e-12);
                    // On the curve to 12 digits of the 100 mm that segments are drawn in: tiny arcs far away lose two of them.
                    one.DistanceTo(places.Here).ShouldBeLessThan(1e-10);
                    other.DistanceTo(places.There).ShouldBeLessThan(1e-10);
                    // Point against curve is another formula; 200 places of one bring it within their spacing.
                    var sampled = Enumerable
                        .Range(0, 201)
                        .Min(i => other.DistanceTo(one.PointAt(one.Length * i / 200)));
                    sampled.ShouldBeGreaterThanOrEqualTo(places.Distance - 1e-10);
                    sampled.ShouldBeLessThanOrEqualTo(places.Distance + one.Length / 400 + 1e-9);
                },
                iter: 3000
            );

    [Fact]
    public void Near_its_place_the_distance_is_least_to_many_digits() =>
        Gen.Select(Draw.Segment, Draw.Segment)
            .Sample(
                (one, other) =>
                {
                    var places = one.NearestTo(other);
                    var least = LeastBySearch(one, other, one.LengthAt(places.Here));
                    places.Distance.ShouldBe(least, 1e-9);
                },
                iter: 5000
            );

    [Fact]
    public void Distances_agree_with_an_independent_library() =>
        Gen.Select(Draw.Segment, Draw.Segment)
            .Sample(
                (one, other) =>
                    one.NearestTo(other)
                        .Distance.ShouldBe(
                            Flat.Line(one).Distance(Flat.Line(other)),
                            2 * Flat.Accuracy
                        ),
                iter: 2000
            );

    [Fact]
    public void Either_segment_may_be_asked() =>
        Gen.Select(Draw.Segment, Draw.Segment)
            .Sample(
                (one, other) =>
                {
                    var distance = one.NearestTo(other).Distance;
                    other.NearestTo(one).Distance.ShouldBe(distance, 1e-9);
                    one.Reversed().NearestTo(other).Distance.ShouldBe(distance, 1e-9);
                },
                iter: 20000
            );

    [Fact]
    public void A_similarity_takes_the_distance_along() =>
        Gen.Select(Draw.Segment, Draw.Segment, Draw.Transform)
            .Sample(
                (one, other, move) =>
                    one.Transformed(move)
                        .NearestTo(other.Transformed(move))
                        .Distance.ShouldBe(
                            one.NearestTo(other).Distance * move.Scale,
                            1e-9 * Math.Max(1, move.Scale)
                        ),
                iter: 20000
            );

    [Fact]
    public void Asking_takes_no_memory()
    {
        var arc = new Segment(new(-5, 0), new(5, 0), -1);
        var line = new Segment(new(-9, 7), new(9, 9));
        arc.NearestTo(line);
        var before = GC.GetAllocatedBytesForCurrentThread();

        arc.NearestTo(line);

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0);
    }

    /// <summary>By thirds, round a place that is said to be the nearest: the distance to the other curve alone.</summary>
    private static double LeastBySearch(Segment one, Segment other, double near)
    {
        var (low, high) = (near - one.Length / 1000, near + one.Length / 1000);
        for (var i = 0; i < 100; i++)
        {
            var third = (high - low) / 3;
            if (At(low + third) < At(high - third))
                high -= third;
            else
                low += third;
        }
        return Math.Min(At(low), At(near));

        double At(double length) => other.DistanceTo(one.PointAt(length));
    }
}
