using CsCheck;

namespace PatternGen.Tests.Layout;

public class TightPathSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    [Theory]
    [InlineData(BentSides.Straight)]
    [InlineData(BentSides.Following)]
    public void An_arc_too_tight_for_the_band_is_refused_with_a_radius_that_works(BentSides sides)
    {
        foreach (var offset in (double[])[-6, 0, 2, -12, -15])
        {
            PathBorder Border(double radius) =>
                BentChecks.Ess(radius).Border(Band, offset).WithSides(sides);

            var refusal = Should.Throw<PatternException>(() => Border(4).Extents);

            var works = BentChecks.Number(refusal, "a radius of at least");
            if (Math.Abs(offset + 6) > 6)
            {
                // The other half circle is tight on its own: its turn comes next.
                var next = Should.Throw<PatternException>(() => Border(0.05).Extents);
                works = Math.Max(works, BentChecks.Number(next, "a radius of at least"));
            }
            Border(works).ShouldBeSound();
            refusal.Place.ShouldNotBeNull();
        }
    }

    [Fact]
    public void A_corner_is_refused_with_a_radius_to_round_it_by_that_works()
    {
        foreach (var sides in Enum.GetValues<BentSides>())
        {
            var rectangle = Contour.Rectangle(new(0, 0), new(120, 80));

            var refusal = Should.Throw<PatternException>(() =>
                rectangle.Border(Band, offset: 2).WithSides(sides).Extents
            );

            refusal.Message.ShouldContain("turns by 90 degrees at a corner");
            var radius = BentChecks.Number(refusal, "rounded");
            BentChecks
                .Rounded(120, 80, radius)
                .Border(Band, offset: 2)
                .WithSides(sides)
                .ShouldBeSound();
        }
    }

    [Fact]
    public void Straight_sides_that_would_cut_across_a_rule_are_refused_with_what_works()
    {
        PathBorder Border(double radius) =>
            BentChecks.Ess(radius).Border(TriangleBand.Ruled(2, 1, 2)).Fitted(f => f.Pitch(9));

        var refusal = Should.Throw<PatternException>(() => Border(10).Extents);

        Border(10).WithSides(BentSides.Following).ShouldBeSound();
        Border(BentChecks.Number(refusal, "a radius")).ShouldBeSound();
        var pitch = BentChecks.Number(refusal, "a pitch");
        Border(10).Fitted(f => f.PitchBetween(pitch / 2, pitch)).ShouldBeSound();
    }

    [Fact]
    public void Chips_along_any_path_that_is_taken_are_sound()
    {
        var paths =
            from radius in Gen.Double[8, 60]
            from offset in Gen.Double[-20, 8]
            from pitch in Gen.Double[4, 14]
            from band in Gen.Int[0, BandSampler.All.Count - 1]
            from following in Gen.Bool
            from closed in Gen.Bool
            select (radius, offset, pitch, band, following, closed);
        var taken = 0;
        paths.Sample(
            given =>
            {
                SegmentRun path = given.closed
                    ? BentChecks.Rounded(150, 130, given.radius)
                    : BentChecks.Ess(given.radius + 20);
                var border = path.Border(BandSampler.All[given.band].Band, given.offset)
                    .Fitted(f => f.Pitch(given.pitch))
                    .WithSides(given.following ? BentSides.Following : BentSides.Straight);
                try
                {
                    _ = border.Extents;
                }
                catch (PatternException)
                {
                    return;
                }
                border.ShouldBeSound();
                Interlocked.Increment(ref taken);
            },
            iter: 40
        );
        taken.ShouldBeGreaterThan(15);
    }

    /// <summary>The first margin ends 200 mm along the path, past both half circles: on the line to the right at its end.</summary>
    [Fact]
    public void What_does_not_fit_is_refused_at_its_place_on_the_path()
    {
        var path = BentChecks.Ess(25);

        var refusal = Should.Throw<PatternException>(() =>
            path.Border(Band, offset: 0)
                .Fitted(f => f.EndMargins(200, 46))
                .PitchOn(BandLine.LowerEdge)
                .Fit
        );

        refusal.Place.ShouldNotBeNull().DistanceTo(path.PointAt(200)).ShouldBe(0, 1e-9);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        var path = BentChecks.Ess(25);

        Should.Throw<ArgumentNullException>(() => path.Border(null!));
        Should.Throw<ArgumentNullException>(() => ((Chain)null!).Border(Band));
        Should.Throw<ArgumentOutOfRangeException>(() => path.Border(Band, double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => path.Border(Band).EndMargins(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => path.Border(Band).WithSides((BentSides)9));
        Should.Throw<ArgumentOutOfRangeException>(() => path.Border(Band).PitchOn((BandLine)9));
        Should.Throw<InvalidOperationException>(() => path.Border(Band).StartingAt(5));
        Should.Throw<PatternException>(() => Chain.Line(new(1, 1), new(1, 1)).Border(Band).Fit);
        Should.Throw<PatternException>(() =>
            BentChecks.Rounded(120, 80, 20).Border(Band).EndMargins(3).Fit
        );
    }
}
