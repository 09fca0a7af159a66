using CsCheck;

namespace PatternGen.Tests.Layout;

public class RailBorderSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    /// <summary>742.5 less twice 6 is 730.5; over 8 that is 91.3, so 91 repeats of 730.5 / 91 = 8.02747.</summary>
    [Fact]
    public void I_can_fit_a_band_to_a_measured_rail()
    {
        var border = Rail.Of(length: 742.5, width: 36).Border(Band, fromEdge: 6).EndMargins(6);

        border
            .Fit.ToString()
            .ShouldBe("91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike");
        border.Fit.InWords().ShouldEndWith("ends alike; each repeat 0.0275 mm longer than asked");
        border.Fit.Repeats.ShouldBe(91);
        border.Fit.Pitch.ShouldBe(730.5 / 91);
        border.Fit.Deviation.ShouldBe(730.5 / 91 - 8);
        border.ChipCount.ShouldBe(182);
        border.Chips.Count().ShouldBe(182);
    }

    [Fact]
    public void The_band_is_centred_across_the_rail_or_lies_where_I_say()
    {
        var rail = Rail.Of(742.5, 36);

        Heights(rail.Border(Band)).ShouldBe((14, 22));
        Heights(rail.Border(Band, fromEdge: 6)).ShouldBe((8, 16));
    }

    [Fact]
    public void Tenons_are_stock_beyond_the_seen_length_and_stay_uncarved()
    {
        var border = Rail.Of(418, 60).WithTenons(30, 25).Border(Band).EndMargins(5);

        border.Stock.Single().Extents.ShouldBe(new(new(-30, 0), new(443, 60)));
        border.Chips.Min(chip => chip.Outline.Extents.Min.X).ShouldBe(5, 1e-9);
        border.Chips.Max(chip => chip.Outline.Extents.Max.X).ShouldBe(413, 1e-9);
        border
            .LayoutLines.Count(line => line.Start.X == line.End.X && line.Length == 60)
            .ShouldBe(2);
    }

    [Fact]
    public void At_100_metres_the_last_repeat_ends_at_the_rails_end()
    {
        var border = Rail.Of(100_000, 20).Border(Band);

        border.Fit.Repeats.ShouldBe(12_500);
        border.Chips.Max(chip => chip.Outline.Extents.Max.X).ShouldBe(100_000, 1e-9);
    }

    [Fact]
    public void Neighbours_meet_to_the_last_digit_at_any_length()
    {
        Gen.Double[20, 5000]
            .Sample(
                length =>
                {
                    var rows = Rail.Of(length, 20)
                        .Border(Band.Staggered())
                        .Chips.GroupBy(chip => chip.Id.Row);
                    foreach (var row in rows)
                    {
                        var chips = row.Select(chip =>
                                chip.Outline.Vertices.Select(v => v.Point.X).Order().ToArray()
                            )
                            .ToArray();
                        for (var i = 1; i < chips.Length; i++)
                            chips[i][0].ShouldBe(chips[i - 1][^1]);
                    }
                },
                iter: 300
            );
    }

    [Fact]
    public void Every_fit_is_whole_and_fills_the_length()
    {
        var fits =
            from length in Gen.Double[10, 3000]
            from nominal in Gen.Double[2, 40]
            from margin in Gen.Double[0, 4]
            where length - 2 * margin > nominal
            select (length, nominal, margin);
        fits.Sample(
            given =>
            {
                var fit = Rail.Of(given.length, 20)
                    .Border(Band)
                    .EndMargins(given.margin)
                    .Fitted(f => f.Pitch(given.nominal))
                    .Fit;
                (fit.Repeats * fit.Pitch + fit.LeftMargin + fit.RightMargin).ShouldBe(
                    given.length,
                    1e-9
                );
                // The nearest pitch: one repeat more or fewer is farther off.
                var carved = given.length - 2 * given.margin;
                var off = Math.Abs(fit.Deviation) - 1e-12;
                Math.Abs(carved / (fit.Repeats + 1) - given.nominal)
                    .ShouldBeGreaterThanOrEqualTo(off);
                if (fit.Repeats > 1)
                    Math.Abs(carved / (fit.Repeats - 1) - given.nominal)
                        .ShouldBeGreaterThanOrEqualTo(off);
            },
            iter: 2000
        );
    }

    [Theory]
    [InlineData(StaggeredEnds.HalfGaps, 9, 4.0, 76.0)]
    [InlineData(StaggeredEnds.HalfChips, 11, 0.0, 80.0)]
    public void Staggered_rows_end_as_I_choose(
        StaggeredEnds ends,
        int count,
        double from,
        double to
    )
    {
        var border = Rail.Of(80, 20).Border(Band.Staggered()).Fitted(f => f.StaggeredRows(ends));

        var staggered = border
            .Chips.Where(chip => chip.Id.Row == 2)
            .Select(chip => chip.Outline.Extents)
            .ToArray();
        staggered.Length.ShouldBe(count);
        staggered.Min(extents => extents.Min.X).ShouldBe(from, 1e-9);
        staggered.Max(extents => extents.Max.X).ShouldBe(to, 1e-9);
        border.Fit.Ends.ShouldBe(EndMatch.Alike);
    }

    [Fact]
    public void Half_chips_are_half_as_large_and_keep_their_curves()
    {
        var border = Rail.Of(80, 20)
            .Border(Band.Staggered().Curved(0.4))
            .Fitted(f => f.StaggeredRows(StaggeredEnds.HalfChips));

        var row = border
            .Chips.Where(chip => chip.Id.Row == 2)
            .Select(chip => chip.Outline.SignedArea)
            .ToArray();
        row[0].ShouldBe(row[1] / 2, 1e-9);
        row[^1].ShouldBe(row[1] / 2, 1e-9);
    }

    [Fact]
    public void Shifted_rows_take_half_a_pitch_more_and_match_by_a_half_turn()
    {
        var border = Rail.Of(84, 20)
            .Border(Band.Staggered())
            .Fitted(f => f.StaggeredRows(StaggeredEnds.Shifted));

        border.Fit.Repeats.ShouldBe(10);
        border.Fit.Pitch.ShouldBe(8);
        border.Fit.Ends.ShouldBe(EndMatch.AlikeByHalfTurn);
        border
            .Chips.Where(chip => chip.Id.Row == 2)
            .Max(chip => chip.Outline.Extents.Max.X)
            .ShouldBe(84, 1e-9);
    }

    [Fact]
    public void A_repeat_or_a_gap_can_sit_on_the_centre_line()
    {
        var border = Rail.Of(100, 20).Border(Band);

        border.Fitted(f => f.RepeatOnCentre()).Fit.Repeats.ShouldBe(13);
        CornersAt(border.Fitted(f => f.RepeatOnCentre()), 50).ShouldBe(2); // tips
        border.Fitted(f => f.GapOnCentre()).Fit.Repeats.ShouldBe(12);
        CornersAt(border.Fitted(f => f.GapOnCentre()), 50).ShouldBe(4); // corners of bases
    }

    [Fact]
    public void A_centre_motif_stands_between_two_equal_bands()
    {
        var motif = Pattern.OfChips(new Circle(Point.Origin, 4).ToContour());
        var border = Rail.Of(200, 20)
            .Border(Band)
            .EndMargins(10)
            .Fitted(f => f.CentreMotif(motif, 20));

        border.Fit.Parts.ShouldBe(2);
        border.Fit.Repeats.ShouldBe(20);
        border
            .Fit.ToString()
            .ShouldBe("2 × 10 repeats, pitch 8 mm (8 asked), 10 mm margins, ends alike");
        border.ChipCount.ShouldBe(41);
        border
            .Chips.Single(chip => chip.Outline.Count == 2)
            .Outline.Centroid.DistanceTo(new(100, 10))
            .ShouldBeLessThan(1e-9);
        border
            .Chips.Where(chip => chip.Outline.Count == 3)
            .ShouldAllBe(chip => Math.Abs(chip.Outline.Centroid.X - 100) > 10);
        Should
            .Throw<PatternException>(() =>
                Rail.Of(200, 20).Border(Band).Fitted(f => f.CentreMotif(motif, 7))
            )
            .Message.ShouldContain("at least 8 mm");
    }

    [Fact]
    public void A_pitch_on_a_grid_leaves_the_rest_to_the_ends()
    {
        var fit = Rail.Of(742.5, 36).Border(Band).EndMargins(6).Fitted(f => f.PitchOnGrid(0.5)).Fit;

        fit.Pitch.ShouldBe(8);
        fit.Repeats.ShouldBe(91); // 91 × 8 = 728, 2.5 mm left over
        fit.LeftMargin.ShouldBe(7.25, 1e-9);
        fit.RightMargin.ShouldBe(7.25, 1e-9);
    }

    [Fact]
    public void Chips_are_numbered_by_row_and_place()
    {
        var ids = Rail.Of(32, 20).Border(Band).Chips.Select(chip => chip.Id.ToString());

        ids.ShouldBe(["1.1", "1.2", "1.3", "1.4", "2.1", "2.2", "2.3", "2.4"]);
    }

    private static (double Low, double High) Heights(Pattern border) =>
        (
            border.Chips.Min(chip => chip.Outline.Extents.Min.Y),
            border.Chips.Max(chip => chip.Outline.Extents.Max.Y)
        );

    private static int CornersAt(Pattern border, double x) =>
        border
            .Chips.SelectMany(chip => chip.Outline.Vertices)
            .Count(vertex => Math.Abs(vertex.Point.X - x) < 1e-9);
}
