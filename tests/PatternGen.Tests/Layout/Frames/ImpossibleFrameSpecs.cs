namespace PatternGen.Tests.Layout.Frames;

public class ImpossibleFrameSpecs
{
    private static readonly TriangleBand Diamonds = TriangleBand.Ruled(2, 4, 4, 2);
    private static readonly Frame Plain = Frame.Of(120, 90, band: 16);

    [Theory]
    [InlineData(0, 90, 16)]
    [InlineData(120, -1, 16)]
    [InlineData(120, 90, 0)]
    [InlineData(double.NaN, 90, 16)]
    [InlineData(120, double.PositiveInfinity, 16)]
    [InlineData(120, 90, double.NaN)]
    [InlineData(1e7, 90, 16)]
    public void Sizes_that_are_none_are_refused(double width, double height, double band) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Frame.Of(width, height, band));

    /// <summary>Twice 45 mm is all of the height.</summary>
    [Fact]
    public void Members_that_leave_no_opening_are_refused()
    {
        Refusal(() => Frame.Of(120, 90, band: 45)).ShouldContain("less than 45 mm");
        Frame.Of(120, 90, band: 44.9).Inner.Area.ShouldBe(30.2 * 0.2, 1e-9);
        // The neck is 20 mm wide.
        Refusal(() =>
                Frame.Polygon(
                    12,
                    new(0, 0),
                    new(50, 0),
                    new(50, 30),
                    new(80, 30),
                    new(80, 0),
                    new(130, 0),
                    new(130, 80),
                    new(80, 80),
                    new(80, 50),
                    new(50, 50),
                    new(50, 80),
                    new(0, 80)
                )
            )
            .ShouldContain("12 mm wide leave no opening");
    }

    [Fact]
    public void Corners_that_make_no_frame_are_refused()
    {
        Should.Throw<ArgumentException>(() => Frame.Polygon(5, new(0, 0), new(100, 0)));
        Should.Throw<ArgumentException>(() => Frame.Polygon(5, new(0, 0), new(100, 0), new(50, 0)));
        Refusal(() => Frame.Polygon(5, new(0, 0), new(100, 100), new(100, 0), new(0, 100)))
            .ShouldContain("cross");
        Should.Throw<ArgumentOutOfRangeException>(() =>
            Frame.Polygon(5, new(0, 0), new(double.NaN, 0), new(50, 40))
        );
        Should.Throw<ArgumentOutOfRangeException>(() => Frame.Regular(2, 100, 10));
        Should.Throw<ArgumentException>(() => Frame.AcrossFlats(5, 100, 10));
    }

    [Fact]
    public void A_band_that_is_too_high_for_the_members_is_refused()
    {
        Refusal(() => Frame.Of(120, 90, band: 11).Border(Diamonds)).ShouldContain("at least 12 mm");
        Refusal(() => Plain.Border(Diamonds, fromEdge: 4.1)).ShouldContain("at most 4 mm");
        Refusal(() => Plain.Border(Diamonds).Inside(Diamonds, 1)).ShouldContain("at least 27 mm");
        Should.Throw<ArgumentOutOfRangeException>(() => Plain.Border(Diamonds, fromEdge: -1));
    }

    [Fact]
    public void What_a_mitre_cannot_have_is_refused()
    {
        var border = Plain.Border(Diamonds);
        foreach (
            var asked in (Func<Fitting, Fitting>[])
                [
                    fit => fit.EndMargins(3),
                    fit => fit.StaggeredRows(StaggeredEnds.HalfChips),
                    fit => fit.HalfTurnEnds(),
                ]
        )
        {
            Refusal(() => border.Fitted(asked).ChipCount).ShouldContain("What would work: ");
            border.Fitted(asked).Corners(Rosette.Petals(6, 7)).ChipCount.ShouldBeGreaterThan(0);
        }
        Refusal(() =>
                FrameChecks.Border("Saw teeth", 120, 90).Fitted(f => f.RepeatOnCentre()).ChipCount
            )
            .ShouldContain("RunningRound");
    }

    [Fact]
    public void Corners_that_are_too_large_are_refused()
    {
        Refusal(() => Plain.Border(Diamonds).Corners(Rosette.Petals(6, 9)).ChipCount)
            .ShouldContain("corner motif");
        Refusal(() => Plain.Border(Diamonds).Corners(Pattern.Empty, size: 16, margin: 40).ChipCount)
            .ShouldContain("leaves nothing for the band");
        Should.Throw<ArgumentOutOfRangeException>(() =>
            Plain.Border(Diamonds).Corners(Pattern.Empty, size: 0)
        );
    }

    [Fact]
    public void What_only_some_outlines_can_have_is_refused_for_others()
    {
        Refusal(() => Frame.Regular(6, 90, 16).Border(Diamonds).Butted())
            .ShouldContain("rectangle");
        Refusal(() =>
                Frame
                    .Polygon(
                        16,
                        new(0, 0),
                        new(150, 0),
                        new(150, 64),
                        new(70, 64),
                        new(70, 120),
                        new(0, 120)
                    )
                    .Border(Diamonds)
                    .Wrapped()
                    .ChipCount
            )
            .ShouldContain("(70, 64)");
    }

    [Fact]
    public void A_band_that_cannot_bend_round_the_corners_is_refused()
    {
        var border = Plain.Border(Diamonds);
        Refusal(() => border.Bent()).ShouldContain("have none");
        Refusal(() => border.Bent(46)).ShouldContain("at most 45 mm");
        Refusal(() => Plain.Rounded(46)).ShouldContain("at most 45 mm");
        // Its inner rule cuts across the corner of the opening: 30 (√2 - 1) + 14 is more than 16 √2.
        Refusal(() => border.Bent(30).ChipCount).ShouldContain("into the opening");
        Plain.Lid().Border(Diamonds).Bent(30).ChipCount.ShouldBeGreaterThan(0);
        // The arc would be tighter than the band is high.
        Should.Throw<PatternException>(() => Plain.Lid().Border(Diamonds).Bent(10).ChipCount);
    }

    [Fact]
    public void Limits_that_no_pitch_keeps_are_refused_with_those_that_work() =>
        Refusal(() =>
                Plain
                    .Border(Diamonds)
                    .Fitted(fit => fit.Pitch(8).PitchBetween(7.99, 8.01))
                    .ChipCount
            )
            .ShouldContain("limits that include");

    /// <summary>
    /// The corner piece begins at (5, 5). An arc of radius r about (r, r) that goes through a place a from both sides has
    /// √2 (r - a) = r, so r = a (2 + √2): 17.071 mm for 5.
    /// </summary>
    [Fact]
    public void Sharp_corners_of_a_band_must_lie_on_rounded_wood()
    {
        FrameBorder On(double radius) =>
            Frame.Of(200, 150, band: 18).Rounded(radius).Border(Diamonds).Wrapped();

        Refusal(() => On(40).ChipCount).ShouldContain("at most 17.071 mm");
        On(17.071).ShouldBeCarvable();
        Refusal(() => On(17.08).ChipCount).ShouldContain("(5, 5)");
        On(40).Bent().ShouldBeCarvable();
        Refusal(() => On(40).Mitred().ChipCount).ShouldContain("rounded by at most");
        Refusal(() => On(60).Butted().ChipCount).ShouldContain("rounded by at most");
        Refusal(() => On(60).Corners(Rosette.Petals(6, 8)).ChipCount)
            .ShouldContain("rounded by at most");
    }

    /// <summary>
    /// In the corner that points in, the wood ends at the opening: sharp at (16, 16) from the corner, less than that where
    /// the opening is rounded.
    /// </summary>
    [Fact]
    public void Sharp_corners_of_a_band_must_keep_out_of_a_rounded_opening()
    {
        Point[] ell =
        [
            new(0, 0),
            new(200, 0),
            new(200, 100),
            new(100, 100),
            new(100, 200),
            new(0, 200),
        ];
        FrameBorder On(double radius) =>
            Frame.Polygon(ell, 16).Rounded(radius).Border(Diamonds, fromEdge: 4);

        On(0).ShouldBeCarvable();
        Refusal(() => On(13).ChipCount).ShouldContain("rounded by at most");
        Frame.Polygon(ell, 16).Rounded(13).Lid().Border(Diamonds, 4).ShouldBeCarvable();
    }

    /// <summary>It reaches 10 mm one way only, and the edge is 8 mm from the middle of the members.</summary>
    [Fact]
    public void A_corner_motif_must_keep_within_both_sides()
    {
        Pattern Pointing(double turn, double size = 10) =>
            Pattern.OfChips(
                Contour
                    .Polygon(new(0, -1), new(size, 0), new(0, 1))
                    .Transformed(Transform.Rotate(turn))
            );

        foreach (var turn in (double[])[0, 90, 180, 270])
        {
            Refusal(() =>
                    Plain
                        .Border(Diamonds)
                        .Corners(Pointing(turn), turn: FrameTurn.Upright)
                        .ChipCount
                )
                .ShouldContain("scaled to 0.8 of");
            Plain
                .Border(Diamonds)
                .Corners(Pointing(turn, 8), turn: FrameTurn.Upright)
                .ShouldBeCarvable();
        }
    }

    private static string Refusal(Func<object> work) =>
        Should.Throw<PatternException>(() => work()).Message;
}
