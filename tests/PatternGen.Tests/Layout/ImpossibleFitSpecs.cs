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
