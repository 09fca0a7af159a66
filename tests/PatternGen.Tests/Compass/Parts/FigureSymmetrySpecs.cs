using CsCheck;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Compass.Parts;

public class FigureSymmetrySpecs
{
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(12)]
    [InlineData(24)]
    [InlineData(36)]
    public void Circles_round_a_circle_have_its_turns_and_mirrors(int n)
    {
        var symmetry = Figures.Of(Figures.Petals(n)).Symmetry;

        symmetry.Order.ShouldBe(n);
        symmetry.HasMirrors.ShouldBeTrue();
        symmetry.Centre.DistanceTo(Point.Origin).ShouldBeLessThan(1e-9);
        symmetry.IsRound.ShouldBeFalse();
        $"{symmetry}".ShouldBe($"D{n}");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(12)]
    public void Slanted_lines_turn_but_have_no_mirror(int n)
    {
        var symmetry = Figures.RingOfCells(n, slant: 0.03).Symmetry;

        $"{symmetry}".ShouldBe($"C{n}");
        symmetry.FirstMirror.ShouldBeNull();
        $"{Figures.RingOfCells(n).Symmetry}".ShouldBe($"D{n}");
    }

    [Fact]
    public void The_first_mirror_is_the_one_next_to_level()
    {
        foreach (var degrees in (double[])[0, 10, 22.5, 59.9, 60, 75, -10])
        {
            var turned = Figures
                .Petals(3)
                .Select(curve => curve.Transformed(Transform.Rotate(degrees)));
            var mirror = Figures.Of(turned).Symmetry.FirstMirror.ShouldNotBeNull().Degrees;

            // Of three petals the mirrors lie at 0, 60 and 120 degrees.
            mirror.ShouldBeInRange(0, 60);
            Math.IEEERemainder(mirror - degrees, 60).ShouldBe(0, 1e-6);
        }
    }

    [Fact]
    public void Circles_round_one_centre_are_round()
    {
        var symmetry = Figures.Of([new Circle(new(3, 4), 10), new Circle(new(3, 4), 20)]).Symmetry;

        symmetry.IsRound.ShouldBeTrue();
        symmetry.Order.ShouldBe(1);
        symmetry.HasMirrors.ShouldBeTrue();
        symmetry.Centre.DistanceTo(new(3, 4)).ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void A_circle_beside_another_has_a_mirror_through_both()
    {
        var symmetry = Figures.Of([new Circle(new(0, 0), 10), new Circle(new(30, 30), 5)]).Symmetry;

        $"{symmetry}".ShouldBe("D1");
        symmetry.FirstMirror.ShouldNotBeNull().Degrees.ShouldBe(45, 1e-6);
    }

    [Fact]
    public void One_more_line_leaves_the_symmetry_that_it_has_too()
    {
        Curve[] petals = Figures.Petals(6);

        With(new(-80, 0), new(80, 0)).ShouldBe("D2");
        With(new(-80, 10), new(80, 10)).ShouldBe("D1");
        With(new(-80, 10), new(80, -10)).ShouldBe("C2");
        With(new(-80, 10), new(80, 11)).ShouldBe("C1");

        string With(Point from, Point to) =>
            $"{Figures.Of([.. petals, new Segment(from, to)]).Symmetry}";
    }

    [Fact]
    public void How_a_line_was_pieced_together_does_not_matter()
    {
        var half = new Segment(new(40, 0), new(-40, 0), 1);
        Curve[] pieces =
        [
            half,
            new Segment(half.End, half.Start, 1),
            .. Figures.Petals(6).Skip(1),
            new Segment(new(-80, 0), new(7, 0)),
            new Segment(new(7, 0), new(80, 0)),
        ];

        $"{Figures.Of(pieces).Symmetry}".ShouldBe("D2");
    }

    [Fact]
    public void A_difference_that_a_carver_sees_is_no_symmetry()
    {
        var petals = Figures.Petals(6);
        petals[1] = new Circle(petals[1].Circle.Centre + new Vector(0.05, 0), 40);

        $"{Figures.Of(petals).Symmetry}".ShouldBe("D1");
    }

    /// <summary>The dihedral group of a regular polygon, however it lies and in whatever order it is drawn.</summary>
    [Fact]
    public void A_figure_keeps_its_symmetry_wherever_it_lies() =>
        Gen.Select(Gen.Int[3, 9], Draw.Transform, Gen.Int[0, 1000])
            .Sample(
                (n, transform, seed) =>
                {
                    var curves = Figures
                        .Petals(n)
                        .Concat(Figures.Diagonals(n))
                        .Select(curve => curve.Transformed(transform))
                        .ToArray();
                    new Random(seed).Shuffle(curves);
                    var symmetry = Figures.Of(curves).Symmetry;

                    symmetry.Order.ShouldBe(n);
                    symmetry.HasMirrors.ShouldBeTrue();
                    symmetry
                        .Centre.DistanceTo(transform.Apply(Point.Origin))
                        .ShouldBeLessThan(1e-6 * transform.Scale);
                },
                iter: 30
            );

    [Fact]
    public Task Thousands_of_lines_are_compared_at_once() =>
        Patience.WithinMinutes(() =>
            Figures
                .Of([.. Figures.Diagonals(30), .. Figures.Petals(30)])
                .Symmetry.Order.ShouldBe(30)
        );
}
