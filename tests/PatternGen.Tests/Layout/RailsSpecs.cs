namespace PatternGen.Tests.Layout;

public class RailsSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    [Fact]
    public void Rails_whose_lengths_share_a_pitch_get_it_exactly()
    {
        // 738 = 90 × 8.2 and 410 = 50 × 8.2 are carved, between margins of 4 mm.
        var borders = Rails.Of(746, 746, 418, 418).Wide(36).SamePitch().Border(Band).EndMargins(4);

        borders
            .Select(border => border.Fit.Pitch)
            .ShouldAllBe(pitch => Math.Abs(pitch - 8.2) < 1e-9);
        borders.Select(border => border.Fit.Repeats).ShouldBe([90, 90, 50, 50]);
        borders.ShouldAllBe(border => border.Fit.LeftMargin == 4);
    }

    [Fact]
    public void Rails_that_share_no_pitch_get_the_nearest_with_the_rest_in_the_margins()
    {
        var borders = Rails
            .Of(742.5, 742.5, 418, 418)
            .Wide(36)
            .SamePitch()
            .Border(Band)
            .Fitted(f => f.EndMargins(6).PitchBetween(7.9, 8.1));

        borders.Select(border => border.Fit.Pitch).Distinct().Count().ShouldBe(1);
        foreach (var border in borders)
        {
            var fit = border.Fit;
            (fit.Repeats * fit.Pitch + fit.LeftMargin + fit.RightMargin).ShouldBe(
                border.Rail.Length,
                1e-9
            );
            fit.LeftMargin.ShouldBe(fit.RightMargin, 1e-9);
            fit.LeftMargin.ShouldBeInRange(6, 7);
            fit.Pitch.ShouldBeInRange(7.9, 8.1);
        }
    }

    /// <summary>The rule, checked against every pitch on a fine grid: least sum of rest at an end and deviation.</summary>
    [Fact]
    public void No_other_pitch_within_the_limits_is_nearer()
    {
        double[] lengths = [642.5, 311.25, 187];
        var borders = Rails
            .Of(lengths)
            .Wide(36)
            .SamePitch()
            .Border(Band)
            .Fitted(f => f.PitchBetween(7.5, 8.5));
        var cost =
            borders.Max(border => border.Fit.LeftMargin) + Math.Abs(borders[0].Fit.Deviation);

        for (var pitch = 7.5; pitch <= 8.5; pitch += 0.0005)
        {
            var rest = lengths.Max(length => length - Math.Floor(length / pitch) * pitch);
            (rest / 2 + Math.Abs(pitch - 8)).ShouldBeGreaterThanOrEqualTo(cost - 1e-9);
        }
    }

    [Fact]
    public void One_pitch_on_a_grid_fills_all_rails_where_a_step_does()
    {
        // 84 = 10 × 8.4 and 42 = 5 × 8.4, and 8.4 is 21 steps of 0.4.
        var borders = Rails
            .Of(84, 42)
            .Wide(36)
            .SamePitch()
            .Border(Band)
            .Fitted(f => f.PitchOnGrid(0.4));

        borders.ShouldAllBe(border => Math.Abs(border.Fit.Pitch - 8.4) < 1e-9);
        borders.ShouldAllBe(border => border.Fit.LeftMargin == 0);
    }

    [Fact]
    public void A_border_taken_out_of_a_set_can_be_fitted_by_itself()
    {
        var border = Rails.Of(742.5, 418).Wide(36).SamePitch().Border(Band)[0];

        border.Fitted(f => f.Pitch(5).PitchBetween(4.5, 5.5)).Fit.Pitch.ShouldBe(742.5 / 148, 0.1);
        Should.Throw<ArgumentOutOfRangeException>(() =>
            Rails.Of(742.5, 418).Wide(36).Border(Band)[5]
        );
    }

    [Fact]
    public void Without_one_pitch_for_all_each_rail_is_fitted_by_itself()
    {
        var borders = Rails.Of(742.5, 418).Wide(36).Border(Band).EndMargins(6);

        borders.Select(border => border.Fit.Pitch).ShouldBe([730.5 / 91, 406.0 / 51]);
    }

    [Fact]
    public void Rails_of_their_own_width_keep_it()
    {
        var borders = Rails
            .Of(Rail.Of(400, 36), Rail.Of(300, 50).WithTenons(20, 20))
            .SamePitch()
            .Border(Band);

        borders.Select(border => border.Rail.Width).ShouldBe([36, 50]);
        borders.Count.ShouldBe(2);
        borders[1].Rail.LeftTenon.ShouldBe(20);
    }

    [Fact]
    public void Rails_without_a_width_say_what_is_missing()
    {
        Should
            .Throw<InvalidOperationException>(() => Rails.Of(742.5, 418).Border(Band))
            .Message.ShouldContain("Wide");
        Should.Throw<ArgumentException>(() => Rails.Of(Array.Empty<double>()));
    }
}
