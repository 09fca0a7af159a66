using CsCheck;

namespace PatternGen.Tests.Geometry;

public class ContourSpecs
{
    public static TheoryData<string> Names => [.. Shapes.All.Select(shape => shape.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Measures_do_not_depend_on_start_direction_or_size(string name)
    {
        var original = Find(name);
        EveryWay.Check(
            original,
            (contour, scale) =>
            {
                contour.Area.ShouldBe(original.Area * scale * scale, 1e-12 * scale * scale * 500);
                contour.Length.ShouldBe(original.Length * scale, 1e-12 * scale * 100);
                contour.Count.ShouldBe(original.Count);
                contour.Validate().IsValid.ShouldBeTrue(contour.Validate().ToString());
                contour.CrossesItself().ShouldBeFalse();
                var centre = original.Centroid;
                contour
                    .Centroid.DistanceTo(new(centre.X * scale, centre.Y * scale))
                    .ShouldBeLessThan(1e-12 * scale * 100);
                contour.Extents.Width.ShouldBe(original.Extents.Width * scale, 1e-12 * scale * 100);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Offsets_do_not_depend_on_start_direction_or_size(string name)
    {
        var original = Find(name);
        foreach (var distance in (double[])[0.4, -0.12, -0.5, -2])
        {
            var expected = original.Offset(distance);
            EveryWay.Check(
                original,
                (contour, scale) =>
                {
                    var offset = contour.Offset(distance * scale);
                    offset.Area.ShouldBe(expected.Area * scale * scale, 1e-7 * scale * scale);
                    offset.Length.ShouldBe(expected.Length * scale, 1e-5 * scale);
                    offset.Contours.Count.ShouldBe(expected.Contours.Count);
                    offset
                        .Contours.Sum(ring => ring.Count)
                        .ShouldBe(expected.Contours.Sum(ring => ring.Count));
                }
            );
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Places_along_a_ring_are_where_they_say(string name) =>
        EveryWay.Check(
            Find(name),
            (contour, scale) =>
            {
                for (var i = 0; i < 40; i++)
                {
                    var length = contour.Length * i / 40;
                    var point = contour.PointAt(length);
                    var nearest = contour.Nearest(point);
                    nearest.Distance.ShouldBeLessThan(1e-12 * scale * 100);
                    contour
                        .PointAt(nearest.Length)
                        .DistanceTo(point)
                        .ShouldBeLessThan(1e-9 * scale);
                    contour.Locate(point).ShouldBe(Containment.OnEdge);
                    contour
                        .PointAt(length - contour.Length)
                        .DistanceTo(point)
                        .ShouldBeLessThan(1e-9 * scale);
                    contour.TangentAt(length).Length.ShouldBe(1, 1e-12);
                    contour.NormalAt(length).ShouldBe(contour.TangentAt(length).Left);
                }
            }
        );

    [Fact]
    public void I_can_walk_along_a_square()
    {
        var square = Shapes.Square(3);

        square.PointAt(4).ShouldBe(new(3, 1));
        square.TangentAt(4).ShouldBe(new(0, 1));
        square.NormalAt(4).ShouldBe(new(-1, 0));
        square.TangentAt(3).ShouldBe(new(0, 1)); // at a corner, the segment that starts there
        square.CurvatureAt(1).ShouldBe(0);
        square.PointAt(-1).ShouldBe(new(0, 1));
        square.Nearest(new(5, 2)).ShouldBe(new NearestPoint(new(3, 2), 2, 5, 1));
    }

    [Fact]
    public void Curvature_is_positive_where_a_ring_turns_left()
    {
        Shapes.Circle(4).CurvatureAt(1).ShouldBe(0.25, 1e-15);
        Shapes.Circle(4).Reversed().CurvatureAt(1).ShouldBe(-0.25, 1e-15);
    }

    [Fact]
    public void Containment_agrees_with_an_independent_library() =>
        Gen.Select(Draw.Ring, Draw.Point())
            .Sample(
                (ring, point) =>
                {
                    var distance = Flat.Polygon(ring).Boundary.Distance(Flat.At(point.X, point.Y));
                    ring.DistanceTo(point).ShouldBe(distance, 2 * Flat.Accuracy);
                    if (distance < 2 * Flat.Accuracy)
                        return;
                    var isInside = Flat.Polygon(ring).Contains(Flat.At(point.X, point.Y));
                    ring.Locate(point)
                        .ShouldBe(isInside ? Containment.Inside : Containment.Outside);
                },
                iter: 2000
            );

    [Fact]
    public void Containment_on_a_grid_agrees_with_an_independent_library() =>
        Gen.Select(Draw.GridRing, Draw.GridPoint)
            .Sample(
                (ring, point) =>
                {
                    var distance = Flat.Polygon(ring).Boundary.Distance(Flat.At(point.X, point.Y));
                    if (distance < 2 * Flat.Accuracy)
                        return;
                    var isInside = Flat.Polygon(ring).Contains(Flat.At(point.X, point.Y));
                    ring.Locate(point)
                        .ShouldBe(isInside ? Containment.Inside : Containment.Outside);
                },
                iter: 2000
            );

    [Fact]
    public void Area_length_and_centre_agree_with_an_independent_library() =>
        Draw.Ring.Sample(
            ring =>
            {
                var flat = Flat.Polygon(ring);
                ring.Area.ShouldBe(flat.Area, ring.Length * Flat.Accuracy);
                ring.Length.ShouldBe(flat.Length, 0.01 * ring.Length);
                var centre = new Point(flat.Centroid.X, flat.Centroid.Y);
                var astray = Flat.Accuracy * ring.Length / ring.Area;
                ring.Centroid.DistanceTo(centre).ShouldBeLessThan(200 * astray);
            },
            print: Draw.Print,
            iter: 1000
        );

    [Fact]
    public void Extents_hold_every_place_tightly() =>
        Draw.Ring.Sample(
            ring =>
            {
                var flat = Flat.Polygon(ring).EnvelopeInternal;
                ring.Extents.Min.DistanceTo(new(flat.MinX, flat.MinY)).ShouldBeLessThan(2e-3);
                ring.Extents.Max.DistanceTo(new(flat.MaxX, flat.MaxY)).ShouldBeLessThan(2e-3);
            },
            iter: 1000
        );

    [Fact]
    public void Turning_a_ring_round_twice_gives_it_back() =>
        Draw.Ring.Sample(
            ring =>
            {
                ring.Reversed().Reversed().Vertices.ShouldBe(ring.Vertices);
                ring.Reversed().SignedArea.ShouldBe(-ring.SignedArea, 1e-9);
                ring.Reversed().Length.ShouldBe(ring.Length, 1e-9);
            },
            iter: 1000
        );

    [Fact]
    public void Parts_of_a_ring_add_up_to_it() =>
        Gen.Select(Draw.Ring, Gen.Double[-300, 300].Array[1, 5])
            .Sample(
                (ring, places) =>
                {
                    var parts = ring.SplitAt(places);
                    parts.Sum(part => part.Length).ShouldBe(ring.Length, 1e-6);
                    for (var i = 0; i < parts.Count; i++)
                    {
                        parts[i]
                            .End.DistanceTo(parts[(i + 1) % parts.Count].Start)
                            .ShouldBeLessThan(1e-6);
                        ring.DistanceTo(parts[i].PointAt(parts[i].Length / 2))
                            .ShouldBeLessThan(1e-6);
                    }
                },
                iter: 2000
            );

    [Fact]
    public void A_part_runs_over_the_first_corner()
    {
        var part = Shapes.Square(3).Part(11, 4);

        part.Vertices.ShouldBe([new(0, 1), new(0, 0), new(3, 0), new(3, 1)]);
        Shapes.Square(3).Part(4, 4).Length.ShouldBe(12);
    }

    [Fact]
    public void A_part_of_a_chain_lies_between_its_ends()
    {
        var chain = new Chain(new(0, 0), new(3, 0), new(3, 3));

        chain.Part(1, 4).Vertices.ShouldBe([new(1, 0), new(3, 0), new(3, 1)]);
        chain.SplitAt(0, 2, 3, 6).Select(part => part.Length).ShouldBe([2, 1, 3]);
        Should.Throw<ArgumentException>(() => chain.Part(4, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => chain.SplitAt(7));
        Should.Throw<ArgumentOutOfRangeException>(() => chain.PointAt(double.NaN));
    }

    [Fact]
    public void Arcs_of_more_than_a_half_circle_are_split_when_stored()
    {
        var large = Segment.Arc(Point.Origin, 5, Angle.Zero, Angle.FromDegrees(300));

        Chain.Of(large).Count.ShouldBe(2);
        Chain.Of(large).Length.ShouldBe(large.Length, 1e-12);
        new Contour(new Vertex(large.Start, large.Bulge), large.End).Count.ShouldBe(3);
        Contour
            .Of(large, new(large.End, large.Start))
            .Vertices.ShouldAllBe(v => Math.Abs(v.Bulge) <= 1);
    }

    [Fact]
    public void Doubled_corners_do_not_stop_measuring()
    {
        var contour = Contour.Polygon(new(0, 0), new(0, 0), new(4, 0), new(4, 4), new(4, 4));

        contour.TangentAt(0).ShouldBe(new(1, 0));
        contour.TangentAt(8).ShouldBe(new Vector(-1, -1).Unit());
        contour.PointAt(5).ShouldBe(new(4, 1));
    }

    [Fact]
    public void Segments_that_do_not_join_make_no_contour() =>
        Should
            .Throw<ArgumentException>(() =>
                Contour.Of(new(new(0, 0), new(1, 0)), new(new(1, 0), new(2, 2)))
            )
            .Message.ShouldContain("(2, 2)");

    private static Contour Find(string name) => Shapes.All.Single(s => s.Name == name).Contour;
}
