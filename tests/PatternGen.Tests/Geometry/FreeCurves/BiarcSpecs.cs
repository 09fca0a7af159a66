namespace PatternGen.Tests.Geometry;

public class BiarcSpecs
{
    [Fact]
    public void A_biarc_with_both_ends_across_the_chord_is_two_half_circles() // by symmetry
    {
        var biarc = Biarc.Between(new(0, 0), new(0, 1), new(4, 0), new(0, 1));

        biarc.Segments.Count.ShouldBe(2);
        biarc.First.End.ShouldBe(new(2, 0));
        biarc
            .Segments.Select(arc => arc.Radius)
            .ShouldAllBe(radius => Math.Abs(radius - 1) < 1e-15);
        biarc.First.Bulge.ShouldBe(-1, 1e-15);
        biarc.Segments[1].Bulge.ShouldBe(1, 1e-15);
    }

    [Theory]
    [InlineData(5, 20, 100)]
    [InlineData(0.3, 200, -170)]
    [InlineData(4000, 10, 0.5)]
    public void A_biarc_of_an_arc_is_the_arc(double radius, double from, double sweep) // by definition
    {
        var centre = new Point(3, -7);
        var side = Math.Sign(sweep);
        var (start, end) = (Angle.FromDegrees(from), Angle.FromDegrees(from + sweep));

        var biarc = Biarc.Between(
            centre.Polar(radius, start),
            side * Vector.Towards(start).Left,
            centre.Polar(radius, end),
            side * Vector.Towards(end).Left
        );

        biarc.Second.ShouldBeNull();
        biarc.First.Sweep.Degrees.ShouldBe(sweep, 1e-10 * Math.Abs(sweep));
        biarc.First.Radius.ShouldBe(radius, 1e-9 * radius);
    }

    [Fact]
    public void Directions_along_the_chord_give_one_line() =>
        Chain
            .Of(Biarc.Between(new(1, 1), new(0.6, 0.8), new(4, 5), new(0.6, 0.8)).Segments)
            .Segments.ShouldBe([new Segment(new(1, 1), new(4, 5))]);

    [Fact]
    public void Halving_a_piece_of_a_clothoid_divides_the_error_by_eight() // Meek and Walton 1995: order h³
    {
        var errors = new[] { 1.0, 0.5, 0.25, 0.125 }.Select(h => Error(0, h)).ToArray();

        // Measured elsewhere, in 40-digit arithmetic, as 8.35, 8.02, 8.00 for these pieces.
        (errors[0] / errors[1]).ShouldBe(8.35, 0.03);
        (errors[1] / errors[2]).ShouldBe(8.02, 0.01);
        (errors[2] / errors[3]).ShouldBe(8.00, 0.01);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(1)]
    public void The_error_of_a_short_biarc_is_that_of_the_curvature_it_cannot_follow(double from)
    {
        // Seen along the curve, curvature k' x against two constant ones -a and a over -h/2 to h/2: equal ends and slopes
        // ask for a = k' h/3, and the gap k' (h u²/12 - u³/6), u from an end, is largest at u = h/3: k' h³/324.
        // The clothoid has curvature s, so that k' is 1.
        const double h = 0.1;

        (Error(from, h) / (h * h * h / 324)).ShouldBe(1, 0.02);
    }

    /// <summary>Largest distance from the clothoid between two lengths to its biarc.</summary>
    private static double Error(double from, double length)
    {
        var (start, end) = (Clothoid(from), Clothoid(from + length));
        var biarc = Biarc.Between(start.At, start.Along, end.At, end.Along);
        var chain = Chain.Of(biarc.Segments);
        return Enumerable
            .Range(1, 999)
            .Max(i => chain.DistanceTo(Clothoid(from + length * i / 1000).At));
    }

    /// <summary>The integrals of cos and sin (s²/2), by their power series (Abramowitz and Stegun 7.3.11, 7.3.13).</summary>
    private static (Point At, Vector Along) Clothoid(double s)
    {
        double x = 0,
            y = 0;
        var power = s;
        for (var n = 0; n < 60; n++)
        {
            // Term n of the integral of exp(i s²/2): (i/2)^n s^(2n+1) / (n! (2n+1)).
            var term = power / (2 * n + 1) * (n % 4 is 0 or 1 ? 1 : -1);
            if (n % 2 == 0)
                x += term;
            else
                y += term;
            power *= s * s / (2 * (n + 1));
        }
        var (sin, cos) = Math.SinCos(s * s / 2);
        return (new(x, y), new(cos, sin));
    }
}
