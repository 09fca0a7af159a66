namespace PatternGen.Tests.Motifs.FreeForm;

public class ScrollSpecs
{
    public static TheoryData<Scroll> Scrolls =>
        [Scroll.Of(24), Scroll.Of(30, 2.25).WithFactor(0.5), Scroll.Of(20, 0.8), Scroll.Of(60, 3)];

    [Theory]
    [MemberData(nameof(Scrolls), DisableDiscoveryEnumeration = true)]
    public void Wood_stays_standing_between_the_turns_and_round_the_eye(Scroll scroll)
    {
        FreeFormChecks.ShouldNotOverlap(scroll);
        Chip[] chips = [.. scroll.Chips];

        // Along rays from the middle, from where a chip ends to where the next begins.
        for (var degrees = 0.5; degrees < 360; degrees += 3)
        {
            Segment ray = new(
                Point.Origin,
                Point.Origin.Polar(2 * scroll.Radius, Angle.FromDegrees(degrees))
            );
            var places = chips
                .SelectMany(chip => chip.Outline.Segments)
                .SelectMany(side => side.Intersect(ray).Points)
                .Select(point => point.DistanceTo(Point.Origin))
                .Order()
                .ToArray();
            // The eye is left once; then each turn is entered and left.
            var entered = chips.Length == 2 ? 1 : 0;
            for (var i = entered; i < places.Length; i += 2)
                if (i > 0)
                    (places[i] - places[i - 1]).ShouldBeGreaterThan(1.19);
        }
    }

    [Fact]
    public void Its_line_is_a_logarithmic_spiral()
    {
        var outline = Scroll.Of(24, 1.5).Chips.First().Outline;

        // The outer end lies on the x axis, the inner one a turn and a half on, Factor per turn nearer.
        outline.DistanceTo(new(24, 0)).ShouldBe(0, 1e-9);
        outline.DistanceTo(new(-24 * Math.Pow(0.42, 1.5), 0)).ShouldBe(0, 1e-9);
    }

    [Fact]
    public void A_stroke_or_an_eye_too_large_is_refused_and_what_is_offered_works()
    {
        var wide = Should.Throw<PatternException>(() =>
            Scroll.Of(20, 2).WithWidth(14).Chips.Count()
        );
        Scroll
            .Of(20, 2)
            .WithWidth(FreeFormChecks.NumberIn(wide.Remedies[0]))
            .ChipCount.ShouldBeGreaterThan(0);

        var eye = Should.Throw<PatternException>(() => Scroll.Of(20, 1).WithEye(12).Chips.Count());
        Scroll.Of(20, 1).WithEye(FreeFormChecks.NumberIn(eye.Remedies[0])).ChipCount.ShouldBe(2);
        Scroll.Of(20, 1).WithEye(0).ChipCount.ShouldBe(1);
    }

    [Fact]
    public void Numbers_that_make_no_scroll_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Scroll.Of(20, 0.1));
        Should.Throw<ArgumentOutOfRangeException>(() => Scroll.Of(0));
        Should.Throw<ArgumentOutOfRangeException>(() => Scroll.Of(20).WithFactor(1));
        Should.Throw<ArgumentOutOfRangeException>(() => Scroll.Of(20).WithWidth(double.NaN));
    }
}
