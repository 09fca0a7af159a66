using CsCheck;

namespace PatternGen.Tests.Layout;

public class RingSpecs
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    public static TheoryData<string> BandNames => BentChecks.BandNames;

    /// <summary>2π × 60 / 8 is 47.1, so 47 repeats of 376.991 / 47 = 8.0211.</summary>
    [Fact]
    public void I_can_carve_a_band_round_a_ring()
    {
        var border = Ring.Of(radius: 60).Border(Band);

        border.Fit.ToString().ShouldBe("47 repeats all round, pitch 8.0211 mm (8 asked)");
        border.Fit.IsClosed.ShouldBeTrue();
        border.Fit.Pitch.ShouldBe(Math.Tau * 60 / 47, 1e-12);
        border.ChipCount.ShouldBe(94);
        border.Caption().ShouldContain("Ring of 60 mm radius");
        border.Caption().ShouldContain("pitch measured round 60 mm radius");
    }

    [Fact]
    public void I_say_whether_the_radius_is_that_of_the_middle_or_of_an_edge()
    {
        Ring.Of(60).Border(Band).Radii.ShouldBe([54, 56, 60, 64, 66]);
        Ring.Inside(60).Border(Band).Radii.ShouldBe([48, 50, 54, 58, 60]);
        Ring.Outside(60).Border(Band).Radii.ShouldBe([60, 62, 66, 70, 72]);
        Ring.Of(60).Border(Band).FacingIn().Radii.ShouldBe([66, 64, 60, 56, 54]);
        Ring.Inside(60).Border(Band).FacingIn().Radii.ShouldBe([60, 58, 54, 50, 48]);
        Ring.Outside(60).Border(Band).FacingIn().FacingOut().Radii[0].ShouldBe(60);
    }

    [Theory]
    [InlineData(BandLine.LowerEdge, 54)]
    [InlineData(BandLine.Middle, 60)]
    [InlineData(BandLine.UpperEdge, 66)]
    public void I_say_on_which_circle_the_pitch_is_measured(BandLine line, double radius)
    {
        var border = Ring.Of(60).Border(Band).PitchOn(line);

        border.PitchRadius.ShouldBe(radius);
        border.Fit.Repeats.ShouldBe((int)Math.Round(Math.Tau * radius / 8));
        border.Fit.Pitch.ShouldBe(Math.Tau * radius / border.Fit.Repeats, 1e-12);
    }

    [Fact]
    public void Rules_and_grooves_become_whole_circles()
    {
        var border = Ring.Of(60).Border(Band.WithLineCuts());

        border.LayoutLines.Count.ShouldBe(5);
        foreach (var (line, radius) in border.LayoutLines.Zip(border.Radii))
            ShouldBeCircle(line, radius);
        border.LineCuts.Count.ShouldBe(2);
        ShouldBeCircle(border.LineCuts[0].Path, 54);
        ShouldBeCircle(border.LineCuts[1].Path, 66);
    }

    /// <summary>Bases run along a rule's circle, so they are its arcs; the sides between stay straight.</summary>
    [Fact]
    public void Bases_are_arcs_of_their_rules_circle_and_sides_are_straight()
    {
        foreach (var chip in Ring.Of(60).Border(Band).Chips)
        {
            chip.Outline.Count.ShouldBe(3);
            var bases = chip.Outline.Segments.Where(side => !side.IsLine).ToArray();
            var radius = chip.Id.Row == 1 ? 56 : 64;
            bases.Single().Radius.ShouldBe(radius, 1e-9);
            bases.Single().Centre.DistanceTo(Point.Origin).ShouldBe(0, 1e-9);
            chip.Outline.Vertices.Select(corner => corner.Point.DistanceTo(Point.Origin))
                .Order()
                .ShouldBe(chip.Id.Row == 1 ? [56, 56, 60] : [60, 64, 64], 1e-12);
        }
    }

    [Theory]
    [InlineData(BentSides.Straight)]
    [InlineData(BentSides.Following)]
    public void Uprights_become_radii(BentSides sides)
    {
        var border = Ring.Of(40).Border(BentChecks.Band("Saw teeth")).WithSides(sides);

        foreach (var chip in border.Chips)
            chip.Outline.Segments.Count(side =>
                    side.IsLine
                    && Math.Abs((side.Start - Point.Origin).Unit().Cross(side.Chord.Unit())) < 1e-9
                )
                .ShouldBe(1);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_band_faces_outwards_or_inwards(bool inwards)
    {
        var border = Ring.Of(40).Border(TriangleBand.Ruled(2, 4, 2));
        foreach (var chip in (inwards ? border.FacingIn() : border).Chips)
        {
            var radii = chip.Outline.Vertices.Select(corner =>
                corner.Point.DistanceTo(Point.Origin)
            );
            radii.Order().ShouldBe(inwards ? [38, 42, 42] : [38, 38, 42], 1e-12);
        }
    }

    /// <summary>Facing out the band runs clockwise, so the next repeat lies an angle of one repeat clockwise; facing in the other way.</summary>
    [Theory]
    [MemberData(nameof(BandNames))]
    public void A_turn_by_one_repeat_takes_the_ring_into_itself(string name)
    {
        foreach (var inwards in (bool[])[false, true])
        {
            var border = Ring.Of(60).Border(BentChecks.Band(name));
            if (inwards)
                border = border.FacingIn();
            var turn = Transform.Rotate(
                Angle.OfTurn((inwards ? 1.0 : -1.0) / border.Fit.Repeats),
                Point.Origin
            );
            foreach (var row in border.Chips.GroupBy(chip => chip.Id.Row))
            {
                var chips = row.ToArray();
                chips.Length.ShouldBe(border.Fit.Repeats);
                for (var i = 0; i < chips.Length; i++)
                {
                    var next = chips[(i + 1) % chips.Length].Outline;
                    foreach (var (a, b) in chips[i].Outline.Vertices.Zip(next.Vertices))
                    {
                        turn.Apply(a.Point).DistanceTo(b.Point).ShouldBe(0, 1e-10);
                        b.Bulge.ShouldBe(a.Bulge);
                    }
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(BandNames))]
    public void Any_band_runs_round_a_ring_without_a_seam_or_an_overlap(string name)
    {
        var border = Ring.Of(60).Border(BentChecks.Band(name));
        foreach (var sides in Enum.GetValues<BentSides>())
        {
            border.WithSides(sides).ShouldBeSound();
            border.WithSides(sides).FacingIn().ShouldBeSound();
        }
    }

    [Fact]
    public void Neighbours_share_corners_to_the_last_digit_at_any_radius()
    {
        var rings =
            from radius in Gen.Double[20, 400]
            from start in Gen.Double[-400, 400]
            from band in Gen.Int[0, BandSampler.All.Count - 1]
            from following in Gen.Bool
            select (radius, start, band, following);
        rings.Sample(
            given =>
                Ring.Of(given.radius)
                    .From(given.start)
                    .Border(BandSampler.All[given.band].Band)
                    .WithSides(given.following ? BentSides.Following : BentSides.Straight)
                    .ShouldHaveNoSeams(),
            iter: 30
        );
    }

    [Theory]
    [MemberData(nameof(BandNames))]
    public void All_chips_of_a_row_are_one_shape(string name)
    {
        var border = Ring.Of(60).Border(BentChecks.Band(name)).WithSides(BentSides.Following);

        foreach (var row in border.Chips.GroupBy(chip => chip.Id.Row))
            row.Select(chip => chip.Shape)
                .Distinct(ReferenceEqualityComparer.Instance)
                .Count()
                .ShouldBe(1);
    }

    [Fact]
    public void Staggered_rows_run_round_with_whole_chips_however_rails_end()
    {
        foreach (var ends in Enum.GetValues<StaggeredEnds>())
        {
            var border = Ring.Of(60).Border(Band.Staggered()).Fitted(f => f.StaggeredRows(ends));

            border.Chips.GroupBy(chip => chip.Id.Row).Select(row => row.Count()).ShouldBe([47, 47]);
        }
    }

    [Fact]
    public void The_first_repeat_begins_at_twelve_oclock_or_where_I_say()
    {
        Point First(Ring ring) =>
            ring.Border(TriangleBand.Ruled(4).WithRows(TriangleRow.Between(0, 1)))
                .Chips.First()
                .Outline.Vertices[0]
                .Point;

        First(Ring.Outside(50)).DistanceTo(new(0, 50)).ShouldBe(0, 1e-12);
        First(Ring.Outside(50).From(0)).DistanceTo(new(50, 0)).ShouldBe(0, 1e-12);
        First(Ring.Outside(50).From(210))
            .DistanceTo(Point.Origin.Polar(50, Angle.FromDegrees(210)))
            .ShouldBe(0, 1e-12);
    }

    [Fact]
    public void I_can_ask_for_an_even_or_odd_number_of_repeats()
    {
        var border = Ring.Of(60).Border(Band);

        (border.Fitted(f => f.GapOnCentre()).Fit.Repeats % 2).ShouldBe(0);
        (border.Fitted(f => f.RepeatOnCentre()).Fit.Repeats % 2).ShouldBe(1);
        border.Fitted(f => f.Pitch(Math.Tau * 60 / 24)).Fit.Repeats.ShouldBe(24);
    }

    [Fact]
    public void A_turned_disc_is_the_stock()
    {
        var border = Ring.Of(60).OnDisc(80, hole: 10).Named("Plate").Border(Band);

        border.Stock.Count.ShouldBe(2);
        border.Stock[0].SignedArea.ShouldBe(Math.PI * 6400, 1e-8);
        border.Stock[1].SignedArea.ShouldBe(-Math.PI * 100, 1e-8);
        border.Name.ShouldBe("Plate");
        Ring.Of(60).Border(Band).Stock.ShouldBeEmpty();
        border.Inspect(Knife.Held(65), Stock.Thick(12)).Findings.ShouldBeEmpty();
    }

    [Fact]
    public void A_ring_is_the_same_every_time()
    {
        IEnumerable<Contour> Outlines() =>
            Ring.Of(47.3)
                .Border(Band.Curved(0.3))
                .WithSides(BentSides.Following)
                .Chips.Select(chip => chip.Outline);

        Outlines().SelectMany(o => o.Vertices).ShouldBe(Outlines().SelectMany(o => o.Vertices));
    }

    private static void ShouldBeCircle(Chain line, double radius)
    {
        line.Start.ShouldBe(line.End);
        line.Length.ShouldBe(Math.Tau * radius, 1e-9);
        foreach (var point in BentChecks.Samples(line))
            point.DistanceTo(Point.Origin).ShouldBe(radius, 1e-12);
    }
}
