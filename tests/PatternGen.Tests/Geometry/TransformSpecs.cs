using CsCheck;

namespace PatternGen.Tests.Geometry;

public class TransformSpecs
{
    [Fact]
    public void Doing_one_and_then_another_is_doing_both() =>
        Gen.Select(Draw.Transform, Draw.Transform, Draw.Point())
            .Sample(
                (first, second, point) =>
                    first
                        .Then(second)
                        .Apply(point)
                        .DistanceTo(second.Apply(first.Apply(point)))
                        .ShouldBeLessThan(1e-12 * (1 + second.Scale) * (1 + first.Scale) * 1000),
                iter: 5000
            );

    [Fact]
    public void The_inverse_undoes() =>
        Gen.Select(Draw.Transform, Draw.Point())
            .Sample(
                (transform, point) =>
                {
                    var back = transform.Inverse().Apply(transform.Apply(point));
                    back.DistanceTo(point)
                        .ShouldBeLessThan(1e-12 * (1 + 1 / transform.Scale) * 1000);
                    transform.Then(transform.Inverse()).Scale.ShouldBe(1, 1e-12);
                },
                iter: 5000
            );

    [Fact]
    public void Doing_three_things_needs_no_brackets() =>
        Gen.Select(Draw.Transform, Draw.Transform, Draw.Transform, Draw.Point(10))
            .Sample(
                (a, b, c, point) =>
                    a.Then(b)
                        .Then(c)
                        .Apply(point)
                        .DistanceTo(a.Then(b.Then(c)).Apply(point))
                        .ShouldBeLessThan(
                            1e-12 * (1 + a.Scale) * (1 + b.Scale) * (1 + c.Scale) * 1000
                        ),
                iter: 5000
            );

    [Fact]
    public void Measures_follow_the_scale() =>
        Gen.Select(Draw.Transform, Draw.Ring)
            .Sample(
                (transform, ring) =>
                {
                    var moved = ring.Transformed(transform);
                    var scale = transform.Scale;
                    moved.Length.ShouldBe(ring.Length * scale, 1e-9 * ring.Length * scale);
                    moved.Area.ShouldBe(
                        ring.Area * scale * scale,
                        1e-7 * ring.Area * scale * scale
                    );
                    moved.IsCounterClockwise.ShouldBe(!transform.IsMirrored);
                    moved
                        .PointAt(moved.Length / 3)
                        .DistanceTo(transform.Apply(ring.PointAt(ring.Length / 3)))
                        .ShouldBeLessThan(1e-8 * scale);
                },
                iter: 1000
            );

    [Theory]
    [InlineData(90, 0, 1)]
    [InlineData(180, -1, 0)]
    [InlineData(270, 0, -1)]
    [InlineData(-90, 0, -1)]
    [InlineData(360, 1, 0)]
    [InlineData(36000090, 0, 1)]
    public void Quarter_turns_are_exact(double degrees, double x, double y) =>
        Transform.Rotate(degrees).Apply(new Point(1, 0)).ShouldBe(new(x, y));

    [Fact]
    public void Mirroring_in_a_line_keeps_the_line()
    {
        var mirror = Transform.Mirror(new(1, 1), Angle.FromDegrees(45));

        mirror.Apply(new Point(3, 3)).DistanceTo(new(3, 3)).ShouldBeLessThan(1e-15);
        mirror.Apply(new Point(2, 1)).DistanceTo(new(1, 2)).ShouldBeLessThan(1e-15);
        mirror.Then(mirror).ShouldBe(Transform.Identity);
    }

    [Fact]
    public void Transforms_that_do_the_same_are_equal()
    {
        Transform.Move(0, 0).ShouldBe(Transform.Identity);
        Transform.Move(0, 0).GetHashCode().ShouldBe(Transform.Identity.GetHashCode());
        (Transform.Rotate(90) == Transform.Rotate(450)).ShouldBeTrue();
        (Transform.Rotate(90) == Transform.Rotate(91)).ShouldBeFalse();
    }

    [Fact]
    public void A_mirrored_arc_bends_the_other_way()
    {
        var arc = new Segment(new(0, 0), new(2, 0), 0.5);

        arc.Transformed(Transform.MirrorTopBottom()).Middle.ShouldBe(new(1, 0.5));
    }
}
