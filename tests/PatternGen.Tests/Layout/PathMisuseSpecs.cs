using static PatternGen.Tests.Layout.PathSamples;

namespace PatternGen.Tests.Layout;

public class PathMisuseSpecs
{
    private static readonly Chain Line = Chain.Line(new(0, 0), new(60, 0));

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_spacing_must_be_a_length(double spacing) =>
        Should
            .Throw<ArgumentOutOfRangeException>(() => Line.Repeat(Lens, spacing))
            .ParamName.ShouldBe("spacing");

    [Fact]
    public void A_motif_must_have_something_to_draw()
    {
        Should
            .Throw<ArgumentException>(() => Line.Repeat(Pattern.Empty, 10))
            .Message.ShouldContain("empty");
        Should.Throw<ArgumentException>(() => Line.Repeat([Lens, Pattern.Empty], 10));
        Should
            .Throw<ArgumentException>(() => Line.Repeat(new List<Pattern>(), 10))
            .Message.ShouldContain("no motif");
        Should.Throw<ArgumentNullException>(() => Line.Repeat((Pattern)null!, 10));
        Should.Throw<ArgumentNullException>(() => Line.Repeat([Lens, null!], 10));
        Should.Throw<ArgumentNullException>(() => ((Chain)null!).Repeat(Lens, 10));
        Should.Throw<ArgumentException>(() =>
            Square100.Repeat(Lens, 10).CornerMotif(Pattern.Empty)
        );
    }

    [Fact]
    public void Errors_name_the_argument_that_I_gave()
    {
        var repeats = Line.Repeat(Lens, 10);

        Name(() => Line.Repeat((Pattern)null!, 10)).ShouldBe("motif");
        Name(() => Line.Repeat(Pattern.Empty, 10)).ShouldBe("motif");
        Name(() => Line.Repeat([Lens, null!], 10)).ShouldBe("motifs");
        Name(() => Line.Repeat([Lens, Pattern.Empty], 10)).ShouldBe("motifs");
        Name(() => repeats.CornerMotif(null!)).ShouldBe("motif");
        Name(() => repeats.RepeatsScaled(1, 0)).ShouldBe("factors");
        Name(() => Grid.Square(1).Snap([null!])).ShouldBe("contours");
        Name(() => Grid.Square(-1)).ShouldBe("step");

        static string? Name(Action misuse) => Should.Throw<ArgumentException>(misuse).ParamName;
    }

    [Fact]
    public void A_path_must_have_a_length() =>
        Should
            .Throw<ArgumentException>(() => Chain.Line(new(3, 4), new(3, 4)).Repeat(Lens, 10))
            .Message.ShouldContain("(3, 4)");

    [Fact]
    public void Settings_must_be_numbers_that_mean_something()
    {
        var repeats = Square100.Repeat(Lens, 10);
        foreach (
            var bad in (Action[])
                [
                    () => repeats.SpacingBetween(0, 5),
                    () => repeats.SpacingBetween(6, 5),
                    () => repeats.SpacingBetween(5, double.NaN),
                    () => repeats.EndMargins(-1),
                    () => repeats.EndMargins(0, double.NaN),
                    () => repeats.StartingAt(double.NaN),
                    () => repeats.StartingAt(1e9),
                    () => repeats.OffsetBy(double.PositiveInfinity),
                    () => repeats.RepeatsScaled(1, 0),
                    () => repeats.RepeatsScaled(1, -1),
                    () => repeats.RepeatsScaledBetweenCorners(double.NaN),
                    () => repeats.TurnedAtCorners(-1),
                    () => repeats.CornerGaps(double.NaN),
                    () => repeats.CornerMotif(Lens, -1),
                    () => repeats.CornersFrom(0),
                    () => repeats.CornersFrom(181),
                    () => Heading.Fixed(double.NaN),
                    () => Heading.Along.Turned(double.NaN),
                    () => Heading.Towards(new(double.NaN, 0)),
                    () => Heading.AwayFrom(new(0, 1e9)),
                ]
        )
            Should.Throw<ArgumentOutOfRangeException>(bad);
        Should
            .Throw<ArgumentException>(() => repeats.RepeatsScaled())
            .Message.ShouldContain("no factor");
    }

    /// <summary>60 mm hold one repeat at 40 to 80 mm, so that a spacing of 90 is the longest that may come out a third shorter.</summary>
    [Fact]
    public void A_spacing_longer_than_the_path_is_refused_with_one_that_works()
    {
        var refusal = Refusal(Line.Repeat(Lens, 100));

        refusal.Message.ShouldContain("room for 60 mm");
        refusal.Remedies[0].ShouldBe("a spacing of at most 90 mm");
        Line.Repeat(Lens, 90).Fit.Repeats.ShouldBe(1);
        Refusal(Line.Repeat(Lens, 10).EndMargins(30)).Message.ShouldContain("room for 0 mm");
        Refusal(Circle50.Repeat(Lens, 600))
            .Remedies[0]
            .ShouldStartWith("a spacing of at most 471.2");
    }

    /// <summary>60 / 7 = 8.57 and 60 / 6 = 10.</summary>
    [Fact]
    public void Limits_that_no_number_keeps_are_refused_with_some_that_work()
    {
        var refusal = Refusal(Line.Repeat(Lens, 9).SpacingBetween(8.9, 9.5));

        refusal.Remedies.ShouldBe([
            "limits that include 10 mm (6 repeats)",
            "limits that include 8.5714 mm (7 repeats)",
        ]);
        Line.Repeat(Lens, 9).SpacingBetween(8.9, 10).Fit.Repeats.ShouldBe(6);
    }

    /// <summary>60 mm at 30 to 60: two repeats, or one; an odd number of at least 3 would be 20 mm apart.</summary>
    [Fact]
    public void An_odd_number_that_does_not_fit_is_refused()
    {
        Refusal(Line.Repeat(Lens, 30).SpacingBetween(25, 35).OddRepeats())
            .Message.ShouldContain("No odd number of repeats");
        Refusal(Circle50.Repeat([Lens, Hook], 10).OddRepeats())
            .Message.ShouldContain("multiple of 2");
    }

    [Fact]
    public void An_exact_spacing_that_does_not_close_is_refused()
    {
        var refusal = Refusal(Square100.Repeat(Lens, 15).ExactSpacing());

        refusal.Message.ShouldContain("seam");
        refusal.Remedies[0].ShouldContain("15.384615 mm for 26 repeats");
    }

    [Fact]
    public void What_an_open_or_closed_path_has_not_is_refused()
    {
        Refusal(Circle50.Repeat(Lens, 10).EndMargins(5)).Message.ShouldContain("no ends");
        Refusal(Circle50.Repeat(Lens, 10).RepeatsOnEnds()).Message.ShouldContain("no ends");
        Refusal(Line.Repeat(Lens, 10).StartingAt(5)).Message.ShouldContain("open path");
        Refusal(Square100.Repeat(Lens, 10).CornerGaps().StartingAt(5))
            .Message.ShouldContain("stop at the corners");
        Refusal(Line.Repeat(Lens, 10, Heading.Inwards)).Message.ShouldContain("no inside");
        Refusal(Line.Repeat(Lens, 10, Heading.Outwards)).Message.ShouldContain("no inside");
    }

    [Fact]
    public void Two_repeats_on_one_corner_are_refused()
    {
        var refusal = Refusal(Square100.Repeat(Lens, 10).CornerGaps().RepeatsOnEnds());

        refusal.Place.ShouldBe(new(-50, -50));
        refusal.Remedies.ShouldContain("some room at the corners");
    }

    [Fact]
    public void Corner_motifs_that_need_more_than_a_side_are_refused()
    {
        var refusal = Refusal(Square100.Repeat(Lens, 10).CornerMotif(Lens, room: 53));

        refusal.Message.ShouldContain("6 mm more");
        refusal.Remedies[0].ShouldStartWith("3 mm less room");
    }

    /// <summary>The arcs have a radius of 28 mm; the path is 2 × (104 + 54) + 2π × 28 = 491.9 mm long.</summary>
    [Theory]
    [InlineData(28)]
    [InlineData(31)]
    public void An_offset_beyond_the_centre_of_an_arc_is_refused_with_what_works(double offset)
    {
        var refusal = Refusal(Rounded.Repeat(Lens, 10).OffsetBy(offset));

        refusal.Message.ShouldContain("radius 28 mm");
        refusal.Remedies[0].ShouldBe("an offset of less than 28 mm");
        refusal
            .Remedies[1]
            .ShouldBe(
                FormattableString.Invariant(
                    $"a path whose arcs have a radius of more than {offset} mm there"
                )
            );
        Rounded.Repeat(Lens, 10).OffsetBy(27.99).Placements.Count.ShouldBe(49);
        Rounded.Repeat(Lens, 10).OffsetBy(-offset).Placements.Count.ShouldBe(49);
        // The other side is an inside too, mirrored.
        Refusal(Rounded.Repeat(Lens, 10).OffsetBy(-offset).EverySecondMirrored());
    }

    [Fact]
    public void A_motif_can_not_face_the_point_it_stands_on() =>
        Refusal(Line.Repeat(Lens, 10, Heading.Towards(new(15, 0)))).Place.ShouldBe(new(15, 0));

    [Fact]
    public void More_repeats_than_wood_holds_are_refused_before_they_are_made() =>
        Refusal(Line.Repeat(Lens, 1e-5)).Remedies.ShouldHaveSingleItem();

    private static PatternException Refusal(PathRepeats repeats) =>
        Should.Throw<PatternException>(() => repeats.ChipCount);
}
