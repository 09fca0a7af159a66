using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;

namespace PatternGen.Tests.Layout;

public partial class ImpossibleFitSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);
    private static readonly TriangleBand Leaning = Band.Leaning(0.8);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e12)]
    public void Absurd_sizes_are_refused_at_once(double size)
    {
        Should
            .Throw<ArgumentOutOfRangeException>(() => Rail.Of(size, 36))
            .Message.ShouldContain("length");
        Should.Throw<ArgumentOutOfRangeException>(() => Rail.Of(742.5, size));
        Should.Throw<ArgumentOutOfRangeException>(() => Band.WithPitch(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Rails.Of(418, size));
        if (size != 0)
        {
            Should.Throw<ArgumentOutOfRangeException>(() =>
                Rail.Of(742.5, 36).Border(Band).EndMargins(size)
            );
            Should.Throw<ArgumentOutOfRangeException>(() => Rail.Of(742.5, 36).WithTenons(size, 0));
        }
    }

    [Fact]
    public void A_million_million_repeats_are_refused_at_once()
    {
        var border = Rail.Of(1e6, 36).Border(Band).Fitted(f => f.Pitch(1e-6));

        Should.Throw<PatternException>(() => border.Fit).Message.ShouldContain("repeats");
    }

    [Fact]
    public void Each_remedy_for_an_impossible_pitch_works()
    {
        var questions =
            from length in Gen.Double[10, 300]
            from min in Gen.Double[5, 20]
            from width in Gen.Double[0.001, 0.5]
            from parity in Gen.Int[0, 2]
            select (length, min, max: min + width, parity);
        var refused = 0;
        questions.Sample(
            given =>
            {
                Fitting Describe(Fitting f, double min, double max)
                {
                    var fitting = f.Pitch((min + max) / 2).PitchBetween(min, max);
                    return given.parity switch
                    {
                        1 => fitting.RepeatOnCentre(),
                        2 => fitting.GapOnCentre(),
                        _ => fitting,
                    };
                }

                RailBorder Fit(double length, double min, double max) =>
                    Rail.Of(length, 36)
                        .Border(Band)
                        .EndMargins(1)
                        .Fitted(f => Describe(f, min, max));

                try
                {
                    _ = Fit(given.length, given.min, given.max).Fit;
                }
                catch (PatternException error)
                {
                    Interlocked.Increment(ref refused);
                    error.Place.ShouldNotBeNull();
                    error.Remedies.Count.ShouldBeGreaterThanOrEqualTo(3);
                    foreach (var remedy in error.Remedies)
                    {
                        var value = double.Parse(
                            Figure().Match(remedy).Value,
                            CultureInfo.InvariantCulture
                        );
                        if (remedy.Contains("length"))
                            Fit(value, given.min, given.max).Fit.Repeats.ShouldBePositive();
                        else
                            Fit(
                                given.length,
                                Math.Min(given.min, value),
                                Math.Max(given.max, value)
                            )
                                .Fit.Repeats.ShouldBePositive();
                    }
                }
            },
            iter: 3000
        );
        refused.ShouldBeGreaterThan(100);
    }

    [Theory]
    [InlineData(8.0, 200.0, 300.0)] // limits far above the nominal pitch
    [InlineData(20.0, 5.0, 5.001)] // and far below it
    public void Remedies_work_where_the_limits_exclude_the_nominal_pitch(
        double nominal,
        double min,
        double max
    )
    {
        RailBorder Fit(double length) =>
            Rail.Of(length, 36).Border(Band).Fitted(f => f.Pitch(nominal).PitchBetween(min, max));

        var error = Should.Throw<PatternException>(() => Fit(103.7).Fit);

        foreach (var remedy in error.Remedies.Where(remedy => remedy.Contains("length")))
            Fit(double.Parse(Figure().Match(remedy).Value, CultureInfo.InvariantCulture))
                .Fit.Repeats.ShouldBePositive();
    }

    [Theory]
    [InlineData(742.5)]
    [InlineData(3)]
    public void The_shortest_pitch_that_is_offered_works(double length)
    {
        RailBorder Fit(double pitch) =>
            Rail.Of(length, 36).Border(Band).Fitted(f => f.Pitch(pitch));

        var remedy = Should.Throw<PatternException>(() => Fit(1e-8).Fit).Remedies[0];

        Fit(double.Parse(Figure().Match(remedy).Value, CultureInfo.InvariantCulture))
            .Fit.Repeats.ShouldBePositive();
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(20.0)]
    public void A_step_that_is_offered_works(double step)
    {
        RailBorder Fit(double grid) =>
            Rail.Of(200, 36).Border(Band).Fitted(f => f.PitchBetween(8.1, 8.4).PitchOnGrid(grid));

        var remedy = Should
            .Throw<PatternException>(() => Fit(step).Fit)
            .Remedies.Single(remedy => remedy.Contains("step"));

        Fit(double.Parse(Figure().Match(remedy).Value, CultureInfo.InvariantCulture))
            .Fit.Repeats.ShouldBePositive();
    }

    [Fact]
    public void Bands_that_fill_a_rail_exactly_are_not_refused_for_rounding()
    {
        // 0.1 + 0.2 is a little more than 0.3 in binary.
        Rail.Of(100, 0.3).Border(TriangleBand.Ruled(0.1, 0.2)).ChipCount.ShouldBePositive();
    }

    [Fact]
    public void Chips_left_out_where_a_band_turns_are_said()
    {
        var border = Rail.Of(80, 20).Border(Leaning.Staggered()).Fitted(f => f.TurnedAtMiddle());

        border.Fit.LeftOutAtMiddle.ShouldBe(1);
        border.Fit.ToString().ShouldEndWith("ends alike, 1 chip left out at the middle");
        border.ChipCount.ShouldBe(10 + 8);
    }

    [Fact]
    public void Mirrored_ends_need_an_upright_mirror_and_the_message_offers_what_works()
    {
        var rail = Rail.Of(80, 20);

        var error = Should.Throw<PatternException>(() =>
            rail.Border(Leaning).Fitted(f => f.MirroredEnds()).Fit
        );
        error.Message.ShouldContain("no upright mirror");
        error.Remedies[0].ShouldContain("TurnedAtMiddle");

        var turned = rail.Border(Leaning).Fitted(f => f.TurnedAtMiddle());
        turned.Fit.Ends.ShouldBe(EndMatch.Alike);
        ShouldBeItsOwnMirrorImage(turned, 40);
    }

    [Fact]
    public void Ends_alike_by_a_half_turn_are_offered_where_they_work()
    {
        var band = BandSampler.All.Single(sample => sample.Name == "Turning teeth").Band;
        var border = Rail.Of(80, 20).Border(band);

        Should
            .Throw<PatternException>(() => border.Fitted(f => f.MirroredEnds()).Fit)
            .Remedies.ShouldContain(remedy => remedy.Contains("HalfTurnEnds"));
        border.Fitted(f => f.HalfTurnEnds()).Fit.Ends.ShouldBe(EndMatch.AlikeByHalfTurn);
        Should
            .Throw<PatternException>(() =>
                Rail.Of(80, 20).Border(Leaning.Following()).Fitted(f => f.HalfTurnEnds()).Fit
            )
            .Remedies.ShouldContain(remedy => remedy.Contains("TurnedAtMiddle"));
    }

    [Theory]
    [InlineData(StaggeredEnds.HalfGaps)]
    [InlineData(StaggeredEnds.HalfChips)]
    public void A_leaning_staggered_band_turned_at_its_middle_is_its_own_mirror_image(
        StaggeredEnds ends
    )
    {
        var border = Rail.Of(80, 20)
            .Border(Leaning.Staggered())
            .Fitted(f => f.TurnedAtMiddle().StaggeredRows(ends));

        ShouldBeItsOwnMirrorImage(border, 40);
    }

    [Fact]
    public void Contradictions_are_named()
    {
        var border = Rail.Of(80, 20).Border(Band.Staggered());
        var motif = Pattern.OfChips(new Circle(Point.Origin, 4).ToContour());

        Should.Throw<PatternException>(() =>
            border.Fitted(f => f.TurnedAtMiddle().RepeatOnCentre()).Fit
        );
        Should.Throw<PatternException>(() =>
            border.Fitted(f => f.CentreMotif(motif, 10).GapOnCentre()).Fit
        );
        Should.Throw<PatternException>(() =>
            border.Fitted(f => f.TurnedAtMiddle().StaggeredRows(StaggeredEnds.Shifted)).Fit
        );
        Should.Throw<PatternException>(() =>
            border.Fitted(f => f.StaggeredRows(StaggeredEnds.Shifted).RepeatOnCentre()).Fit
        );
        var oneRow = Band.WithRows(TriangleRow.Between(1, 2).Leaning(0.5).Staggered());
        Should
            .Throw<PatternException>(() =>
                Rail.Of(16, 20).Border(oneRow).Fitted(f => f.TurnedAtMiddle()).Fit
            )
            .Message.ShouldContain("no chip");
        var tall = Pattern.OfChips(new Circle(Point.Origin, 30).ToContour());
        Should
            .Throw<PatternException>(() =>
                Rail.Of(200, 40).Border(Band).Fitted(f => f.CentreMotif(tall, 70)).ChipCount
            )
            .Message.ShouldContain("20 mm");
        Should
            .Throw<PatternException>(() => Rail.Of(80, 20).Border(Band.WithLineCuts(9)).LineCuts)
            .Message.ShouldContain("2 mm away");
        Should
            .Throw<PatternException>(() => border.EndMargins(40).Fit)
            .Message.ShouldContain("nothing of the 80 mm");
        Should
            .Throw<PatternException>(() => Rail.Of(80, 10).Border(Band))
            .Message.ShouldContain("12 mm");
        Should
            .Throw<PatternException>(() => Rail.Of(80, 20).Border(Band, 9))
            .Message.ShouldContain("at most 8 mm");
        Should
            .Throw<PatternException>(() => Rail.Of(80, 20).Border(Band.WithGap(9)).ChipCount)
            .Message.ShouldContain("gap");
    }

    private static void ShouldBeItsOwnMirrorImage(Pattern pattern, double x)
    {
        var marks = pattern.Chips.Select(chip => chip.Outline.Centroid).ToArray();
        marks.ShouldNotBeEmpty();
        foreach (var mark in marks)
            marks.ShouldContain(other => other.DistanceTo(new(2 * x - mark.X, mark.Y)) < 1e-9);
    }

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Figure();
}
