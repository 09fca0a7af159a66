using CsCheck;

namespace PatternGen.Tests.Geometry;

public class SegmentSpecs
{
    /// <summary>Bulges from nearly straight to nearly a whole circle.</summary>
    private static readonly Gen<Segment> AnyBend = Gen.Select(
            Draw.Point(),
            Draw.Point(),
            Gen.Double[-14, 2],
            Gen.Bool
        )
        .Select(
            (start, end, power, isLeft) =>
                new Segment(start, end, Math.Pow(10, power) * (isLeft ? 1 : -1))
        )
        .Where(segment => segment.Chord.Length > 0.01);

    [Fact]
    public void Every_place_lies_on_the_segment_at_its_length() =>
        Gen.Select(AnyBend, Gen.Double[0, 1])
            .Sample(
                (segment, share) =>
                {
                    var slack = 1e-11 * (1 + Reach(segment));
                    var length = segment.Length * share;
                    var point = segment.PointAt(length);
                    segment.DistanceTo(point).ShouldBeLessThan(slack);
                    segment.LengthAt(point).ShouldBe(length, slack * 10);
                    segment.Extents.Grown(slack).Contains(point).ShouldBeTrue();
                },
                iter: 20000
            );

    [Fact]
    public void Parts_of_a_segment_add_up_and_keep_its_circle() =>
        Gen.Select(AnyBend, Gen.Double[0.01, 0.99])
            .Sample(
                (segment, share) =>
                {
                    var (before, after) = segment.SplitAt(segment.Length * share);
                    (before.Length + after.Length).ShouldBe(segment.Length, 1e-9 * segment.Length);
                    before.End.ShouldBe(after.Start);
                    segment
                        .DistanceTo(before.Middle)
                        .ShouldBeLessThan(1e-10 * (1 + Reach(segment)));
                    segment.DistanceTo(after.Middle).ShouldBeLessThan(1e-10 * (1 + Reach(segment)));
                },
                iter: 20000
            );

    [Fact]
    public void A_reversed_segment_is_the_same_curve() =>
        Gen.Select(AnyBend, Draw.Point(200))
            .Sample(
                (segment, point) =>
                {
                    var reversed = segment.Reversed();
                    reversed.Reversed().ShouldBe(segment);
                    reversed.Length.ShouldBe(segment.Length);
                    reversed
                        .DistanceTo(point)
                        .ShouldBe(segment.DistanceTo(point), 1e-10 * (1 + Reach(segment)));
                    reversed.SegmentArea.ShouldBe(-segment.SegmentArea);
                    reversed.Curvature.ShouldBe(-segment.Curvature);
                },
                iter: 20000
            );

    [Fact]
    public void The_nearest_point_is_nearer_than_any_other() =>
        Gen.Select(AnyBend, Draw.Point(200), Gen.Double[0, 1])
            .Sample(
                (segment, point, share) =>
                    segment
                        .DistanceTo(point)
                        .ShouldBeLessThanOrEqualTo(
                            point.DistanceTo(segment.PointAt(segment.Length * share))
                                + 1e-10 * (1 + Reach(segment))
                        ),
                iter: 20000
            );

    [Fact]
    public void Area_and_moment_go_over_smoothly_from_series_to_closed_form() =>
        // Both sides of the bulge at which the formula changes.
        Gen.Double[0.5, 2]
            .Sample(chord =>
            {
                var below = new Segment(new(0, 0), new(chord, 0), Math.BitDecrement(0.1));
                var above = new Segment(new(0, 0), new(chord, 0), 0.1);
                below.SegmentArea.ShouldBe(above.SegmentArea, 1e-14);
                below.SegmentMoment.ShouldBe(above.SegmentMoment, 1e-14);
            });

    [Fact]
    public void The_centre_of_gravity_of_a_half_disk_lies_4_over_3_pi_from_its_diameter() // elementary: 4R / 3π
    {
        var half = new Contour(new Vertex(-1, 0), new Vertex(1, 0, 1));

        half.Centroid.DistanceTo(new(0, 4 / (3 * Math.PI))).ShouldBeLessThan(1e-15);
    }

    [Fact]
    public void A_nearly_straight_arc_measures_like_its_line() =>
        Draw.OneOf(1e-300, 1e-20, 1e-16, 1e-12, 1e-9)
            .Sample(bulge =>
            {
                var arc = new Segment(new(0, 0), new(742.5, 0), bulge);
                arc.Length.ShouldBe(742.5, 1e-12);
                arc.PointAt(100).DistanceTo(new(100, 0)).ShouldBeLessThan(1e-6);
                arc.Nearest(new(300, 5)).DistanceTo(new(300, 0)).ShouldBeLessThan(1e-6);
                arc.SegmentArea.ShouldBe(742.5 * 742.5 * bulge / 3, 1e-9 * bulge * 1e6);
            });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Numbers_that_are_none_are_refused(double bad)
    {
        Should.Throw<ArgumentOutOfRangeException>(() => new Segment(new(bad, 0), new(1, 1)));
        Should.Throw<ArgumentOutOfRangeException>(() => new Segment(new(0, 0), new(1, 1), bad));
        Should.Throw<ArgumentOutOfRangeException>(() => new Vertex(0, bad));
        Should.Throw<ArgumentOutOfRangeException>(() => new Circle(default, bad));
        Should.Throw<ArgumentOutOfRangeException>(() => Angle.FromDegrees(bad));
        Should.Throw<ArgumentOutOfRangeException>(() => Transform.Move(bad, 0));
    }

    /// <summary>How far the whole curve extends, which sets what a digit is worth.</summary>
    private static double Reach(Segment segment) =>
        Math.Max(200, segment.Chord.Length * (1 + segment.Bulge * segment.Bulge));
}
