using CsCheck;

namespace PatternGen.Tests.Layout.Frames;

public class MitredFrameSpecs
{
    private static readonly TriangleBand Diamonds = TriangleBand.Ruled(2, 4, 4, 2);

    public static TheoryData<string> Bands => FrameChecks.Bands;

    /// <summary>
    /// The middle rule lies 5 + 6 = 11 mm from the edge: 298 and 218 mm between mitres, 37.25 and 27.25 times the 8 mm asked.
    /// </summary>
    [Fact]
    public void I_can_carve_a_band_round_a_measured_frame()
    {
        var border = Frame.Of(320, 240, band: 22).Border(Diamonds);

        border.Fits.Select(fit => fit.Repeats).ShouldBe([37, 27, 37, 27]);
        border.Fits[0].Pitch.ShouldBe(298.0 / 37, 1e-12);
        border.Fits[1].Pitch.ShouldBe(218.0 / 27, 1e-12);
        border
            .Caption()
            .ShouldBe([
                "Frame 320 × 240 mm, members 22 mm wide",
                "Corners mitred",
                "Lower and upper side: 37 repeats, pitch 8.0541 mm (8 asked); each repeat 0.0541 mm longer than asked",
                "Right and left side: 27 repeats, pitch 8.0741 mm (8 asked); each repeat 0.0741 mm longer than asked",
                border.ChipCount + " chips",
            ]);
        border.Stock.Select(ring => ring.Area).ShouldBe([320 * 240, 276 * 196]);
        border.Stock[1].IsCounterClockwise.ShouldBeFalse();
    }

    [Theory]
    [MemberData(nameof(Bands))]
    public void Every_band_can_be_carved_and_has_the_mirrors_of_its_frame(string band)
    {
        foreach (var (width, height) in FrameChecks.Sizes)
        {
            var border = FrameChecks.Border(band, width, height);

            border.ShouldBeCarvable();
            border.ShouldFillItsSides();
            border.ShouldHaveTheMirrorsOf(width, height);
        }
    }

    /// <summary>Mirroring in the line x = y swaps the two sides at the lower left corner.</summary>
    [Theory]
    [MemberData(nameof(Bands))]
    public void With_one_pitch_neighbours_are_mirror_images_in_the_mitre_of_any_rectangle(
        string band
    )
    {
        var border = FrameChecks.Border(band, 203, 138).SamePitch();

        border.ShouldBeCarvable();
        border.ShouldFillItsSides();
        border.Fits.Select(fit => fit.Pitch).Distinct().ShouldHaveSingleItem();
        border.ShouldHaveImages(
            chip => chip.Outline.Centroid.DistanceTo(Point.Origin) < 55,
            Transform.Mirror(Point.Origin, Angle.FromDegrees(45))
        );
    }

    /// <summary>
    /// With 8 mm repeats of rows 4 mm high all sides slope by 45 degrees. The outer triangle at the corner from (4, 4) to
    /// (12, 4) is whole. The inner one, half a pitch on, has its base from (8, 12) to (16, 12) and its tip at (12, 8); the mitre
    /// cuts it from (10, 10) to (12, 12).
    /// </summary>
    [Fact]
    public void The_mitre_cuts_chips_and_closes_them_along_it()
    {
        var border = Frame.Of(120, 96, band: 16).Border(Diamonds.Staggered());

        border.Fits.ShouldAllBe(fit => fit.Pitch == 8);
        Chip At(params Point[] corners) =>
            border.Chips.Single(chip =>
                chip.Outline.Count == corners.Length
                && corners.All(corner =>
                    chip.Outline.Vertices.Any(v => v.Point.DistanceTo(corner) < 1e-9)
                )
            );
        At(new(4, 4), new(12, 4), new(8, 8));
        var lower = At(new(10, 10), new(12, 8), new(16, 12), new(12, 12));
        var left = At(new(10, 10), new(8, 12), new(12, 16), new(12, 12));
        // What they share is the same to the last digit.
        lower
            .Outline.Vertices.Select(v => v.Point)
            .Intersect(left.Outline.Vertices.Select(v => v.Point))
            .Count()
            .ShouldBe(2);
    }

    /// <summary>A band whose rows are half as high as the pitch is long needs no cut in a square corner.</summary>
    [Fact]
    public void The_corner_is_worked_out_first_so_that_least_is_cut()
    {
        var border = Frame.Of(120, 96, band: 16).Border(Diamonds);

        border.Fits.ShouldAllBe(fit => fit.Pitch == 8);
        border.Chips.ShouldAllBe(chip =>
            chip.Outline.Count == 3 && Math.Abs(chip.Outline.Area - 16) < 1e-9
        );
    }

    /// <summary>The depth of a chip goes with the radius of the largest circle in it.</summary>
    [Theory]
    [MemberData(nameof(Bands))]
    public void No_chip_is_left_that_is_a_mere_nick(string band)
    {
        foreach (var (width, height) in FrameChecks.Sizes)
        {
            var chips = FrameChecks.Border(band, width, height).Chips.ToArray();
            var rows = FrameChecks.Band(band).Rows.Count;
            foreach (var row in chips.GroupBy(chip => chip.Id.Row))
            {
                var whole = row.Max(chip => chip.Roof.Clearance);
                row.ShouldAllBe(chip => chip.Roof.Clearance >= 0.39 * whole);
            }
            chips.Max(chip => chip.Id.Row).ShouldBe(4 * rows);
        }
    }

    [Fact]
    public void A_band_with_no_mirror_of_its_own_can_run_round_one_way()
    {
        var border = FrameChecks.Border("Saw teeth", 120, 120).RunningRound();

        border.ShouldBeCarvable();
        border.ShouldBeTheSameUnder(Transform.Rotate(90, new(60, 60)));
    }

    [Theory]
    [MemberData(nameof(Bands))]
    public void A_motif_can_stand_in_the_middle_of_each_side(string band)
    {
        var motif = Rosette.Petals(6, 5).Carve(part => part.IsPetal);
        var border = FrameChecks
            .Border(band, 190, 150)
            .Fitted(fit => fit.CentreMotif(motif, width: 16));

        border.ShouldBeCarvable();
        border.ShouldFillItsSides();
        border.ShouldHaveTheMirrorsOf(190, 150);
        border.Fits.ShouldAllBe(fit => fit.MiddleGap >= 16 - 1e-9);
    }

    [Fact]
    public void A_repeat_or_a_gap_can_sit_in_the_middle_of_each_side()
    {
        var border = FrameChecks.Border("Single row", 160, 112);
        int TipsAtMiddle(FrameBorder one) =>
            one.Chips.Count(chip =>
                chip.Outline.Vertices.Any(v => Math.Abs(v.Point.X - 80) < 1e-9)
                && Math.Abs(chip.Outline.Centroid.X - 80) < 1e-9
            );

        TipsAtMiddle(border.Fitted(fit => fit.RepeatOnCentre())).ShouldBe(2);
        TipsAtMiddle(border.Fitted(fit => fit.GapOnCentre())).ShouldBe(0);
    }

    [Fact]
    public void Stab_cut_bands_stay_stab_cut_where_the_mitre_leaves_three_sides()
    {
        var border = Frame.Of(121, 97, band: 16).Border(Diamonds.Staggered().StabCut());

        border.ShouldBeCarvable();
        border.Chips.ShouldAllBe(chip => chip.Cut.IsStabbed && chip.Outline.Count == 3);
    }

    [Fact]
    public void Grooves_run_all_round()
    {
        var border = Frame.Of(120, 96, band: 16).Border(Diamonds.WithLineCuts());

        // The outer and the inner rule, 2 and 14 mm from the edge.
        border
            .LineCuts.Select(cut => cut.Path.Length)
            .ShouldBe([2 * (116 + 92), 2 * (92 + 68)], 1e-9);
        border.LineCuts.ShouldAllBe(cut => cut.Path.Start == cut.Path.End);
    }

    /// <summary>Its carved strip lies off the middle of the band, where the mitres have gone elsewhere already.</summary>
    [Fact]
    public void A_centre_motif_stands_in_the_gap_that_is_left_for_it_between_unlike_corners()
    {
        var border = Frame
            .Polygon(13, new(0, 0), new(600, 0), Point.Origin.Polar(600, Angle.FromDegrees(10)))
            .Border(TriangleBand.Ruled(1, 4, 1))
            .Fitted(fit => fit.CentreMotif(Rosette.Petals(6, 6).Carve(part => part.IsPetal), 14));

        border.ShouldBeCarvable();
    }

    /// <summary>At any size and pitch the mitre cuts somewhere else; what can't be made is refused.</summary>
    [Fact]
    public void At_any_size_and_pitch_a_frame_is_sound_and_symmetric_or_refused()
    {
        var frames =
            from band in Gen.Int[0, BandSampler.All.Count - 1]
            from width in Gen.Double[24, 130]
            from height in Gen.Double[24, 130]
            from pitch in Gen.Double[0.6, 1.6]
            from ground in Gen.Double[0, 6]
            select (BandSampler.All[band].Band, width, height, pitch, ground);
        frames.Sample(
            given =>
            {
                FrameBorder border;
                try
                {
                    border = Frame
                        .Of(given.width, given.height, given.Band.Height + given.ground)
                        .Border(given.Band)
                        .Fitted(fit => fit.Pitch(given.pitch * given.Band.NominalPitch));
                    _ = border.ChipCount;
                }
                catch (PatternException refused)
                {
                    refused.Remedies.ShouldNotBeEmpty();
                    return;
                }
                if (border.ChipCount > 0)
                    border.ShouldBeCarvable();
                border.ShouldFillItsSides();
                border.ShouldHaveTheMirrorsOf(given.width, given.height);
            },
            iter: 60
        );
    }
}
