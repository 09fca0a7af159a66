using CsCheck;

namespace PatternGen.Tests.Layout;

/// <summary>The shapes of chips on rings, against plain trigonometry and NetTopologySuite.</summary>
public class RingShapeSpecs
{
    public static TheoryData<string> BandNames => BentChecks.BandNames;

    /// <summary>
    /// Corners at radius R, angles ±φ/2, and at radius r, angle 0: the triangle has R sin(φ/2) × |r - R cos(φ/2)|, and the
    /// base adds its circular segment (R²/2)(φ - sin φ) if it bulges out of the chip (r &lt; R), else takes it away.
    /// </summary>
    [Theory]
    [InlineData(60, 8)]
    [InlineData(20, 8)]
    [InlineData(15, 9)]
    public void The_area_of_a_chip_is_that_of_a_triangle_and_a_circular_segment(
        double radius,
        double pitch
    )
    {
        var border = Ring.Of(radius)
            .Border(TriangleBand.Ruled(2, 4, 4, 2))
            .Fitted(f => f.Pitch(pitch));
        var angle = Math.Tau / border.Fit.Repeats;
        foreach (var row in border.Chips.GroupBy(chip => chip.Id.Row))
        {
            var outer = row.Key == 2;
            var (big, small) = (radius + (outer ? 4 : -4), radius);
            var triangle = big * Math.Sin(angle / 2) * Math.Abs(small - big * Math.Cos(angle / 2));
            var segment = big * big / 2 * (angle - Math.Sin(angle));
            foreach (var chip in row)
                chip.Outline.Area.ShouldBe(triangle + (outer ? segment : -segment), 1e-9);
        }
    }

    /// <summary>
    /// The same band on a straight rail as long as the circle gives each chip's outline before it is bent; its points are
    /// mapped here by sine and cosine. Where a ring's chips are wanted to follow, they may be off by the accuracy.
    /// </summary>
    [Theory]
    [MemberData(nameof(BandNames))]
    public void Sides_follow_the_polar_image_within_the_accuracy(string name)
    {
        foreach (
            var (radius, accuracy) in ((double, double)[])[(60, 0.01), (20, 0.01), (20, 0.0002)]
        )
        foreach (var inwards in (bool[])[false, true])
        {
            var band = BentChecks.Band(name);
            var border = Ring.Of(radius).Border(band).WithSides(BentSides.Following, accuracy);
            if (inwards)
                border = border.FacingIn();
            Point Polar(Point flat)
            {
                var outward = (inwards ? -1 : 1) * (flat.Y - band.Height / 2);
                var angle = Math.PI / 2 + (inwards ? 1 : -1) * flat.X / radius;
                return new(
                    (radius + outward) * Math.Cos(angle),
                    (radius + outward) * Math.Sin(angle)
                );
            }
            var rail = Rail.Of(Math.Tau * radius, band.Height)
                .Border(band)
                .Chips.ToDictionary(chip => chip.Id, chip => chip.Outline);
            foreach (var chip in border.Chips.Where(chip => rail.ContainsKey(chip.Id)).Take(40))
            {
                foreach (var point in BentChecks.Samples(rail[chip.Id]))
                    chip.Outline.DistanceTo(Polar(point)).ShouldBeLessThan(accuracy);
                var image = Reference.Polygon(
                    Contour.Polygon(BentChecks.Samples(rail[chip.Id], 200).Select(Polar).Distinct())
                );
                // A strip as wide as the accuracy all round, and 1 in 1000 for the sampling.
                var room = accuracy * chip.Outline.Length + image.Area / 1000;
                chip.Outline.Area.ShouldBe(image.Area, room);
            }
        }
    }

    [Fact]
    public void A_finer_accuracy_takes_more_arcs()
    {
        int Sides(double accuracy) =>
            Ring.Of(15)
                .Border(TriangleBand.Ruled(1, 8, 1).Leaning(-0.5))
                .WithSides(BentSides.Following, accuracy)
                .Chips.First()
                .Outline.Count;

        Sides(1e-5).ShouldBeGreaterThan(Sides(1e-2));
    }

    [Fact]
    public void Stab_cut_chips_keep_three_sides_and_their_apex_at_the_tip()
    {
        foreach (var inwards in (bool[])[false, true])
        foreach (var sides in Enum.GetValues<BentSides>())
        {
            var border = Ring.Of(40)
                .Border(TriangleBand.Ruled(2, 4, 4, 2).StabCut())
                .WithSides(sides);
            if (inwards)
                border = border.FacingIn();
            foreach (var chip in border.Chips)
            {
                chip.Outline.Count.ShouldBe(3);
                chip.Outline.Segments.ShouldAllBe(side => side.IsLine);
                var apex = chip.Outline.Vertices[chip.Cut.Apex.ShouldNotBeNull()].Point;
                apex.DistanceTo(Point.Origin).ShouldBe(40, 1e-9);
            }
            border.ShouldBeSound();
        }
    }

    [Fact]
    public void Chips_are_sound_at_any_radius_that_is_taken()
    {
        var rings =
            from radius in Gen.Double[3, 80]
            from pitch in Gen.Double[4, 14]
            from band in Gen.Int[0, BandSampler.All.Count - 1]
            from following in Gen.Bool
            from inwards in Gen.Bool
            select (radius, pitch, band, following, inwards);
        var taken = 0;
        rings.Sample(
            given =>
            {
                var border = Ring.Of(given.radius)
                    .Border(BandSampler.All[given.band].Band)
                    .Fitted(f => f.Pitch(given.pitch))
                    .WithSides(given.following ? BentSides.Following : BentSides.Straight);
                if (given.inwards)
                    border = border.FacingIn();
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
            iter: 60
        );
        taken.ShouldBeGreaterThan(20);
    }
}
