namespace PatternGen.Tests.Motifs.FreeForm;

public class StrokeSpecs
{
    /// <summary>What the sides of a stroke may lie off their curve, as its documentation says.</summary>
    private const double Accuracy = 0.01;

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.2)]
    [InlineData(0.9)]
    public void A_straight_stroke_has_two_thirds_of_its_box(double widestAt)
    {
        var outline = Stroke.Of(60, 6).WithWidestAt(widestAt).Chips.Single().Outline;

        // A parabola's segment is two thirds of its box (Archimedes, Quadrature of the Parabola), however it is cut in two at its top.
        outline.Area.ShouldBe(2.0 / 3 * 60 * 6, outline.Length * Accuracy);
        outline.Extents.Width.ShouldBe(60, 1e-9);
        outline.Extents.Height.ShouldBe(6, 2 * Accuracy);
    }

    [Fact]
    public void Its_sides_are_parabolas_to_a_hundredth_of_a_millimetre()
    {
        var outline = Stroke.Of(60, 6).WithWidestAt(0.3).Chips.Single().Outline;

        for (var x = 0.0; x <= 60; x += 0.25)
        {
            var off = x < 18 ? (x - 18) / 18 : (x - 18) / 42;
            var half = 3 * (1 - off * off);
            outline.DistanceTo(new(x, half)).ShouldBeLessThan(Accuracy + 1e-9);
            outline.DistanceTo(new(x, -half)).ShouldBeLessThan(Accuracy + 1e-9);
        }
    }

    [Fact]
    public void Along_an_arc_it_is_as_wide_as_along_a_line()
    {
        var arc = Segment.Arc(Point.Origin, 40, Angle.FromDegrees(20), Angle.FromDegrees(100));
        var outline = Stroke.Along(Chain.Of(arc), 5).WithWidestAt(0.4).Chips.Single().Outline;

        // By polar coordinates, which know nothing of tangents and offsets.
        for (var share = 0.0; share <= 1; share += 0.01)
        {
            var angle = (20 + 100 * share) * Math.PI / 180;
            var off = share < 0.4 ? (share - 0.4) / 0.4 : (share - 0.4) / 0.6;
            var half = 2.5 * (1 - off * off);
            foreach (var radius in (double[])[40 - half, 40 + half])
                outline
                    .DistanceTo(new(radius * Math.Cos(angle), radius * Math.Sin(angle)))
                    .ShouldBeLessThan(Accuracy + 1e-9);
        }
    }

    [Fact]
    public void A_round_head_is_a_half_circle_before_the_start()
    {
        var outline = Stroke.Of(40, 6).WithRoundHead().Chips.Single().Outline;

        outline.Extents.Min.X.ShouldBe(-3, 1e-9);
        outline.Area.ShouldBe(2.0 / 3 * 40 * 6 + Math.PI * 9 / 2, outline.Length * Accuracy);
        FreeFormChecks.ShouldNotOverlap(Stroke.Of(40, 6).WithRoundHead());
    }

    [Fact]
    public void A_stroke_too_wide_for_its_bend_is_refused_and_the_width_offered_works()
    {
        var arc = Chain.Of(Segment.Arc(Point.Origin, 5, Angle.Zero, Angle.FromDegrees(175)));

        var refusal = Should.Throw<PatternException>(() => Stroke.Along(arc, 14).Chips.Count());
        var width = FreeFormChecks.NumberIn(refusal.Remedies[0]);
        width.ShouldBeLessThan(14);
        Stroke.Along(arc, width).ChipCount.ShouldBe(1);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(4)]
    [InlineData(200)]
    public void A_line_with_a_corner_is_refused_with_the_place_and_a_smooth_one_works(double width)
    {
        Point[] corners = [new(0, 0), new(50, 0), new(50, 40)];
        var bent = new Chain(corners.Select(corner => new Vertex(corner)));

        var refusal = Should.Throw<PatternException>(() => Stroke.Along(bent, width).ChipCount);
        refusal.Place.ShouldBe(corners[1]);
        refusal.Message.ShouldContain("90 degrees");
        refusal.Remedies[0].ShouldContain("FreeCurve.Through");
        Stroke.Along(FreeCurve.Through(corners).ToChain(), 0.5).ChipCount.ShouldBe(1);
    }

    [Fact]
    public void A_line_that_crosses_itself_is_refused_whatever_the_width()
    {
        var loop = FreeCurve.Through(new(0, 0), new(40, 40), new(60, 20), new(40, 0), new(0, 40));

        var refusal = Should.Throw<PatternException>(() =>
            Stroke.Along(loop.ToChain(), 0.01).ChipCount
        );
        refusal.Message.ShouldContain("crosses itself");
        refusal.Remedies.ShouldNotContain(remedy => remedy.Contains("width"));
    }

    [Fact]
    public void Sizes_that_make_no_stroke_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Stroke.Of(0, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => Stroke.Of(10, double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => Stroke.Of(10, 2).WithWidestAt(0.05));
        Should.Throw<ArgumentNullException>(() => Stroke.Along(null!, 2));
    }
}
