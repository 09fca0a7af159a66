using CsCheck;

namespace PatternGen.Tests.Geometry;

public class IntersectionSpecs
{
    [Fact]
    public void Two_circles_cross_in_two_points() // Aizu Online Judge CGL_7_E, sample 1
    {
        var places = Shapes.Circle(2).Intersections(Shapes.Circle(2, 2));

        places.Count.ShouldBe(2);
        places.ShouldAllBe(place => place.Kind == ContactKind.Crossing);
        var ordered = places.Select(place => place.Point).OrderBy(point => point.Y).ToArray();
        ordered[0].DistanceTo(new(1, -1.73205080756888)).ShouldBeLessThan(1e-14);
        ordered[1].DistanceTo(new(1, 1.73205080756888)).ShouldBeLessThan(1e-14);
    }

    [Fact]
    public void Two_circles_touch_in_one_point() // Aizu Online Judge CGL_7_E, sample 2
    {
        var place = Shapes.Circle(2).Intersections(Shapes.Circle(1, 0, 3)).ShouldHaveSingleItem();

        place.Kind.ShouldBe(ContactKind.Touching);
        place.Point.DistanceTo(new(0, 2)).ShouldBeLessThan(1e-12);
    }

    [Fact]
    public void A_circle_coincides_with_itself() // infinitely many common points: Petrozavodsk problem 0073
    {
        var places = Shapes.Circle(2).Intersections(Shapes.Circle(2));

        places.ShouldAllBe(place => place.Kind == ContactKind.Overlapping);
        places.Sum(place => place.Stretch!.Value.Length).ShouldBe(4 * Math.PI, 1e-9);
    }

    [Fact]
    public void A_circle_and_a_line_cross_in_two_points() // Aizu Online Judge CGL_7_D, sample (from memory)
    {
        var line = Chain.Line(new(-9, 1), new(9, 1));
        var places = line.Intersections(Shapes.Circle(1, 2, 1));

        places.Select(place => place.Point).ShouldBe([new(1, 1), new(3, 1)]);
        places.Select(place => place.LengthOnFirst).ShouldBe([10, 12]);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1)]
    [InlineData(1e4)]
    public void A_line_touches_an_arc_at_every_size(double scale)
    {
        var arc = new Segment(new(-scale, 0), new(scale, 0), -1);
        var line = new Segment(new(-2 * scale, scale), new(2 * scale, scale));

        foreach (var meeting in (SegmentIntersection[])[arc.Intersect(line), line.Intersect(arc)])
        {
            meeting.Kind.ShouldBe(IntersectionKind.Tangent);
            meeting.Points[0].DistanceTo(new(0, scale)).ShouldBeLessThan(scale * 1e-4);
        }
    }

    [Fact]
    public void A_line_and_a_half_circle_meet_once_when_it_runs_through_the_point_opposite_the_arc()
    {
        // Straight opposite the arc's middle, where its own parameter is infinite.
        var arc = new Segment(new(0, 2), new(-2, -2), 1);
        var line = new Segment(new(0, 0), new(-5, 5));

        arc.Intersect(line)
            .Points.ShouldHaveSingleItem()
            .DistanceTo(new(-2, 2))
            .ShouldBeLessThan(1e-12);
        line.Intersect(arc)
            .Points.ShouldHaveSingleItem()
            .DistanceTo(new(-2, 2))
            .ShouldBeLessThan(1e-12);
    }

    [Fact]
    public void A_line_that_goes_on_as_an_arc_meets_it_in_the_joint_only()
    {
        var line = new Segment(new(-10, 0), new(0, 0));
        foreach (var bulge in (double[])[1e-9, 1e-6, 1e-3, 0.1, 0.4, 1])
        {
            // The arc sets off along the x axis.
            var sweep = 4 * Math.Atan(bulge);
            var arc = new Segment(
                new(0, 0),
                Point.Origin.Polar(5, Angle.FromRadians(sweep / 2)),
                bulge
            );
            var meeting = line.Intersect(arc);
            meeting.Kind.ShouldBe(IntersectionKind.One, $"bulge {bulge}");
            meeting.Points.ShouldHaveSingleItem().ShouldBe(new(0, 0));
        }
    }

    [Fact]
    public void Lines_on_one_line_overlap_in_what_they_share()
    {
        var meeting = new Segment(new(0, 0), new(10, 5)).Intersect(new(new(20, 10), new(4, 2)));

        meeting.Kind.ShouldBe(IntersectionKind.Overlapping);
        meeting.Points.ShouldBeEmpty();
        meeting.Stretches.ShouldHaveSingleItem().ShouldBe(new(new(4, 2), new(10, 5)));
    }

    [Fact]
    public void Arcs_of_more_than_a_half_circle_can_share_two_stretches()
    {
        var left = Segment.Arc(Point.Origin, 5, Angle.FromDegrees(50), Angle.FromDegrees(260));
        var right = Segment.Arc(Point.Origin, 5, Angle.FromDegrees(230), Angle.FromDegrees(260));

        var meeting = left.Intersect(right);

        meeting.Kind.ShouldBe(IntersectionKind.Overlapping);
        meeting.Stretches.Count.ShouldBe(2);
        meeting.Stretches.Sum(stretch => stretch.Sweep.Degrees).ShouldBe(160, 1e-9);
    }

    [Fact]
    public void Segments_meet_alike_from_either_side() =>
        Gen.Select(Draw.Segment, Draw.Segment)
            .Sample(
                (one, other) =>
                {
                    var meeting = one.Intersect(other);
                    var reverse = other.Intersect(one);
                    reverse.Points.Count.ShouldBe(meeting.Points.Count);
                    foreach (var point in meeting.Points)
                    {
                        reverse.Points.Min(point.DistanceTo).ShouldBeLessThan(1e-5);
                        one.DistanceTo(point).ShouldBeLessThan(1e-6);
                        other.DistanceTo(point).ShouldBeLessThan(1e-6);
                    }
                },
                iter: 20000
            );

    [Fact]
    public void Half_circles_whose_starts_lie_just_beyond_the_merge_distance_meet_alike_from_either_side()
    {
        // The starts are 8.106E-08 apart: as far along the small arc less than the merge distance, along the large one more.
        var large = new Segment(
            new(8.106E-08, 0),
            new(-59.637743238460274, 46.434180781172216),
            -1
        );
        var small = new Segment(new(0, 0), new(0, 1.5903947082765342), 1);

        var meeting = large.Intersect(small);
        var reverse = small.Intersect(large);

        reverse.Kind.ShouldBe(meeting.Kind);
        foreach (var point in meeting.Points.Concat(reverse.Points))
            point.DistanceTo(Point.Origin).ShouldBeLessThan(1e-7);
    }

    [Fact]
    public void Crossings_agree_with_an_independent_library() =>
        Gen.Select(Draw.Segment, Draw.Segment)
            .Where((one, other) => IsFarFromTangent(one, other))
            .Sample(
                (one, other) =>
                {
                    var expected = Flat.Line(one).Intersection(Flat.Line(other));
                    var found = one.Intersect(other).Points;
                    found.Count.ShouldBe(expected.IsEmpty ? 0 : expected.NumGeometries);
                    foreach (var point in found)
                        expected.Distance(Flat.At(point.X, point.Y)).ShouldBeLessThan(0.05);
                },
                iter: 2000
            );

    [Fact]
    public void Planted_crossings_are_found() =>
        Gen.Select(Draw.Segment, Draw.Segment, Gen.Double[0.05, 0.95], Gen.Double[0.05, 0.95])
            .Sample(
                (one, other, share, otherShare) =>
                {
                    var place = one.PointAt(one.Length * share);
                    var move = place - other.PointAt(other.Length * otherShare);
                    var moved = other.Transformed(Transform.Move(move));
                    // Curves that cross at a tiny angle are tangent, and where along them is only known to a root.
                    var angle = one.TangentAt(one.Length * share)
                        .Cross(other.TangentAt(other.Length * otherShare));
                    if (Math.Abs(angle) > 1e-3)
                        one.Intersect(moved).Points.Min(place.DistanceTo).ShouldBeLessThan(1e-3);
                },
                iter: 20000
            );

    [Fact]
    public void Planted_tangencies_are_one_contact_when_a_few_ulps_off() =>
        Gen.Select(
                Gen.Double[0.1, 50],
                Gen.Double[0.1, 50],
                Gen.Double[0, 360],
                Draw.OneOf(0, 1e-15, -1e-15, 1e-12, -1e-12),
                Gen.Bool
            )
            .Sample(
                (r, s, degrees, off, isInside) =>
                {
                    if (isInside && Math.Abs(r - s) < 0.01)
                        return;
                    var apart = (isInside ? Math.Abs(r - s) : r + s) + off;
                    var centre = Point.Origin.Polar(apart, Angle.FromDegrees(degrees));
                    var place = Shapes
                        .Circle(r)
                        .Intersections(new Circle(centre, s).ToContour())
                        .ShouldHaveSingleItem();
                    // Where both circles start next to the tangency they run along each other for the bit between.
                    if (place.Stretch is { } stretch)
                        stretch.Length.ShouldBeLessThan(0.01);
                    else
                        place.Kind.ShouldBe(ContactKind.Touching);
                },
                iter: 5000
            );

    [Fact]
    public void Meeting_and_measuring_take_no_memory()
    {
        var arc = new Segment(new(-5, 0), new(5, 0), -1);
        Segment[] others = [new(new(-9, 1), new(9, 1)), arc, new(new(0, 0), new(9, 9), 0.3)];
        var ring = Shapes.RoundedRectangle(20, 10, 2);
        Work();
        var before = GC.GetAllocatedBytesForCurrentThread();

        Work();

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0);

        void Work()
        {
            foreach (var other in others)
                arc.Intersect(other);
            ring.PointAt(ring.Length / 3);
            ring.TangentAt(7);
            ring.Nearest(new(3, 3));
            ring.Locate(new(3, 3));
        }
    }

    private static bool IsFarFromTangent(Segment one, Segment other)
    {
        var (a, b) = (Flat.Line(one), Flat.Line(other));
        // Ends near the other curve, and curves that only just miss or meet, depend on how arcs are flattened.
        if (
            one.DistanceTo(other.Start) < 0.01
            || one.DistanceTo(other.End) < 0.01
            || other.DistanceTo(one.Start) < 0.01
            || other.DistanceTo(one.End) < 0.01
        )
            return false;
        var meeting = one.Intersect(other);
        return meeting.PointCount switch
        {
            0 => a.Distance(b) > 0.01 || a.Distance(b) == 0,
            2 => IsSteep(meeting.First) && IsSteep(meeting.Second),
            _ => IsSteep(meeting.First),
        };

        bool IsSteep(Point point) =>
            Math.Abs(
                one.TangentAt(one.LengthAt(point)).Cross(other.TangentAt(other.LengthAt(point)))
            ) > 0.1;
    }
}
