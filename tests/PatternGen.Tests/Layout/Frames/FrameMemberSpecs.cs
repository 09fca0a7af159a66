namespace PatternGen.Tests.Layout.Frames;

public class FrameMemberSpecs
{
    private static readonly TriangleBand Diamonds = TriangleBand.Ruled(2, 4, 4, 2);

    public static TheoryData<string> Bands => FrameChecks.Bands;

    [Fact]
    public void The_grain_follows_each_member_of_a_frame_put_together()
    {
        var frame = Frame.Of(120, 97, band: 16);
        foreach (
            var border in (FrameBorder[])
                [
                    frame.Border(Diamonds),
                    frame.Border(Diamonds).Wrapped(),
                    frame.Border(Diamonds).Butted(),
                ]
        )
        {
            var sides = border.Chips.GroupBy(chip => Grain(chip)).ToDictionary(side => side.Key);
            sides.Keys.Order().ShouldBe([0, 90]);
            // Above and below the diagonals through the corners.
            sides[0].Select(chip => chip.Outline.Centroid.Y).ShouldAllBe(y => y < 16 || y > 81);
            sides[90].Select(chip => chip.Outline.Centroid.X).ShouldAllBe(x => x < 16 || x > 104);
        }
    }

    [Fact]
    public void A_frame_out_of_one_board_and_a_lid_have_one_grain()
    {
        var frame = Frame.Of(120, 97, band: 16);

        frame.OneBoard().Border(Diamonds).Chips.ShouldAllBe(chip => Grain(chip) == 0);
        var lid = frame.Lid().Border(Diamonds);
        lid.Chips.ShouldAllBe(chip => Grain(chip) == 0);
        lid.Stock.ShouldHaveSingleItem().Area.ShouldBe(120 * 97);
        lid.Caption()[0].ShouldBe("Panel 120 × 97 mm");
    }

    [Theory]
    [MemberData(nameof(Bands))]
    public void Bands_run_one_inside_another(string band)
    {
        var inner = FrameChecks.Band(band);
        var border = Frame
            .Of(190, 160, band: 36)
            .Border(Diamonds, fromEdge: 2)
            .Inside(inner, gap: 1)
            .Inside(TriangleBand.Ruled(1, 3, 1), gap: 0.5);

        border.ShouldBeCarvable();
        border.ShouldFillItsSides();
        border.ShouldHaveTheMirrorsOf(190, 160);
        border.FromEdge.ShouldBe([2, 15, 15.5 + inner.Height], 1e-9);
        border.Fits.Select(fit => (fit.Band, fit.Side)).Distinct().Count().ShouldBe(12);
    }

    [Fact]
    public void Only_the_innermost_band_is_fitted_anew()
    {
        var border = Frame
            .Of(190, 160, band: 36)
            .Border(Diamonds, fromEdge: 2)
            .Inside(Diamonds, gap: 1)
            .Fitted(fit => fit.Pitch(6));

        border.Fits.Select(fit => fit.AskedPitch).ShouldBe([8, 8, 8, 8, 6, 6, 6, 6]);
        border.Caption()[2].ShouldStartWith("Band 1, lower and upper side: ");
    }

    [Fact]
    public void One_motif_stands_in_the_corner_of_all_bands()
    {
        var border = Frame
            .Of(190, 160, band: 36)
            .Border(Diamonds, fromEdge: 4)
            .Inside(Diamonds, gap: 4)
            .Corners(Rosette.Petals(8, 14));

        border.ShouldBeCarvable();
        border.Chips.Count(chip => chip.Outline.Count == 2).ShouldBe(4 * 8);
        border.Fits.Select(fit => fit.Length).Distinct().Count().ShouldBe(2);
    }

    [Fact]
    public async Task A_frame_is_the_same_to_the_last_byte_each_time()
    {
        byte[] Written()
        {
            using var stream = new MemoryStream();
            FrameChecks
                .Border("Running leaves", 160, 112)
                .Save(stream, FileFormat.Svg, For.Viewing);
            return stream.ToArray();
        }
        var once = Written();
        var again = await Task.WhenAll(
            Enumerable
                .Range(0, 4)
                .Select(_ => Task.Run(Written, TestContext.Current.CancellationToken))
        );
        again.ShouldAllBe(bytes => bytes.SequenceEqual(once));
    }

    [Fact]
    public void Whole_repeats_share_one_shape()
    {
        var border = Frame.Of(320, 240, band: 22).Border(Diamonds);

        // Two rows on each of four sides, and the chips that the mitres have shaped.
        border.Chips.Select(chip => chip.Shape).Distinct().Count().ShouldBeLessThan(8 + 4 * 8);
    }

    private static double Grain(Chip chip) => Math.Round(chip.GrainOn(Stock.Thick(12)).Degrees, 9);
}
