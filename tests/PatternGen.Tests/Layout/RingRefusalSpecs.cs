namespace PatternGen.Tests.Layout;

public class RingRefusalSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(1e12)]
    public void A_ring_without_a_size_is_refused(double radius)
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(radius));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Inside(radius));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Outside(radius));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(60).OnDisc(radius));
    }

    /// <summary>Round 5 mm, half of 12 mm reach beyond the centre: no hole could help.</summary>
    [Fact]
    public void A_ring_too_small_for_its_band_is_refused_as_that_on_a_disc_too()
    {
        var message = Should
            .Throw<PatternException>(() => Ring.Of(5).OnDisc(40).Border(Band).ChipCount)
            .Message;

        message.ShouldContain("too tight");
        message.ShouldNotContain("hole");
    }

    [Fact]
    public void Other_bad_input_is_refused()
    {
        var border = Ring.Of(60).Border(Band);

        Should.Throw<ArgumentNullException>(() => Ring.Of(60).Border(null!));
        Should
            .Throw<ArgumentNullException>(() => border.Fitted(_ => null!))
            .ParamName.ShouldBe("describe");
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(60).Arc(0, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(60).Arc(0, 360));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(60).Arc(double.NaN, 90));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(60).From(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(60).OnDisc(80, hole: 80));
        Should.Throw<ArgumentOutOfRangeException>(() => Ring.Of(60).OnDisc(80, hole: -1));
        Should.Throw<ArgumentException>(() => Ring.Of(60).Named(" "));
        Should.Throw<ArgumentOutOfRangeException>(() => border.WithSides((BentSides)7));
        Should.Throw<ArgumentOutOfRangeException>(() =>
            border.WithSides(BentSides.Following, accuracy: 0)
        );
        Should.Throw<ArgumentOutOfRangeException>(() => border.PitchOn((BandLine)7));
    }

    [Theory]
    [InlineData(BentSides.Straight)]
    [InlineData(BentSides.Following)]
    public void A_ring_too_small_for_its_band_is_refused_with_one_that_works(BentSides sides)
    {
        foreach (var inwards in (bool[])[false, true])
        {
            RingBorder Border(Ring ring)
            {
                var border = ring.Border(Band).WithSides(sides);
                return inwards ? border.FacingIn() : border;
            }
            foreach (var of in (Func<double, Ring>[])[Ring.Of, Ring.Inside])
            {
                var refusal = Should.Throw<PatternException>(() => Border(of(5)).Extents);

                var least = BentChecks.Number(refusal, "a radius of at least");
                Border(of(least)).ShouldBeSound();
                Should.Throw<PatternException>(() => Border(of(least - 0.01)).Extents);
            }
        }
    }

    [Fact]
    public void Straight_sides_that_would_cut_across_a_rule_are_refused_with_what_works()
    {
        var wide = Ring.Of(10).Border(TriangleBand.Ruled(2, 1, 2)).Fitted(f => f.Pitch(9));

        var refusal = Should.Throw<PatternException>(() => wide.Extents);

        refusal.Message.ShouldContain("straight sides");
        wide.WithSides(BentSides.Following).ShouldBeSound();
        var pitch = BentChecks.Number(refusal, "a pitch");
        wide.Fitted(f => f.PitchBetween(0.5 * pitch, pitch)).ShouldBeSound();
        var radius = BentChecks.Number(refusal, "a radius");
        Ring.Of(radius).Border(wide.Band).Fitted(f => f.Pitch(9)).ShouldBeSound();
    }

    [Fact]
    public void A_band_that_would_leave_the_disc_is_refused_with_what_works()
    {
        var large = Should.Throw<PatternException>(() =>
            Ring.Of(60).OnDisc(62).Border(Band).Extents
        );
        Ring.Of(60).OnDisc(BentChecks.Number(large, "a disc")).Border(Band).ShouldBeSound();
        Ring.Of(BentChecks.Number(large, "a ring")).OnDisc(62).Border(Band).ShouldBeSound();

        var small = Should.Throw<PatternException>(() =>
            Ring.Of(60).OnDisc(80, 56).Border(Band).Extents
        );
        Ring.Of(60).OnDisc(80, BentChecks.Number(small, "a hole")).Border(Band).ShouldBeSound();
        Ring.Of(BentChecks.Number(small, "a ring")).OnDisc(80, 56).Border(Band).ShouldBeSound();
    }

    [Fact]
    public void Ends_are_refused_where_there_are_none()
    {
        var border = Ring.Of(60).Border(Band);

        Should
            .Throw<PatternException>(() => border.EndMargins(5).Fit)
            .Message.ShouldContain("no ends");
        foreach (
            var describe in (Func<Fitting, Fitting>[])
                [
                    f => f.CentreMotif(Pattern.Empty, 5),
                    f => f.MirroredEnds(),
                    f => f.HalfTurnEnds(),
                    f => f.TurnedAtMiddle(),
                    f => f.PitchOnGrid(0.5),
                ]
        )
            Should.Throw<PatternException>(() => border.Fitted(describe).Fit);
    }

    [Fact]
    public void Each_remedy_for_a_pitch_that_does_not_close_works()
    {
        var border = Ring.Of(10).Border(TriangleBand.Ruled(1, 2, 1)).WithSides(BentSides.Following);

        var refusal = Should.Throw<PatternException>(() =>
            border.Fitted(f => f.Pitch(8).PitchBetween(8, 8.5)).Fit
        );
        var down = BentChecks.Number(refusal, "(8 repeats)");
        var up = BentChecks.Number(refusal, "(7 repeats)");
        border.Fitted(f => f.Pitch(8).PitchBetween(down, 8.5)).Fit.Repeats.ShouldBe(8);
        border.Fitted(f => f.Pitch(8).PitchBetween(8, up)).Fit.Repeats.ShouldBe(7);

        var few = Should.Throw<PatternException>(() => border.Fitted(f => f.Pitch(40)).Fit);
        var asked = BentChecks.Number(few, "(3 repeats)");
        border.Fitted(f => f.Pitch(asked)).Fit.Repeats.ShouldBe(3);
    }
}
