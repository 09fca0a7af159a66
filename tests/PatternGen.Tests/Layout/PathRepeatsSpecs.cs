using CsCheck;
using static PatternGen.Tests.Layout.PathSamples;

namespace PatternGen.Tests.Layout;

public class PathRepeatsSpecs
{
    /// <summary>By how much of a spacing the distances may differ.</summary>
    private const double Equal = 1e-9;

    /// <summary>2π × 50 is 314.159 mm; over 16 that is 19.6, so 20 repeats of 314.159 / 20 = 15.708, every 18°.</summary>
    [Fact]
    public void I_can_repeat_a_motif_round_a_circle()
    {
        var ring = Circle50.Repeat(Lens, spacing: 16);

        ring.Fit.ToString()
            .ShouldBe("20 repeats, spacing 15.708 mm (16 asked), closed without a seam");
        ring.Fit.Repeats.ShouldBe(20);
        ring.ChipCount.ShouldBe(20);
        var origins = ring.Origins();
        var headings = ring.Headings();
        for (var i = 0; i < 20; i++)
        {
            var turn = Angle.OfTurn(i / 20.0);
            origins[i].ShouldBe(Point.Origin.Polar(50, turn), 1e-12);
            headings[i].ShouldBe(Vector.Towards(turn).Left, 1e-12);
        }
    }

    [Fact]
    public void Repeats_are_equally_far_apart_along_any_open_path()
    {
        // A spacing of up to 1.5 times the length may come out a third shorter, and so fit once.
        Gen.Select(Chains, Gen.Double[0.01, 1.4], Gen.Bool)
            .Sample(
                (chain, share, onEnds) =>
                {
                    var spacing = chain.Length * share;
                    var repeats = chain.Repeat(Lens, spacing);
                    if (onEnds)
                        repeats = repeats.RepeatsOnEnds();

                    var places = Walked(chain, repeats);

                    var gap = repeats.Fit.LargestSpacing;
                    (gap / spacing).ShouldBeInRange(2 / 3.0 - Equal, 4 / 3.0 + Equal);
                    var expected = onEnds ? 0 : gap / 2;
                    foreach (var place in places)
                    {
                        place.ShouldBe(expected, Equal * gap);
                        expected += gap;
                    }
                    // What is left over at the far end is as long as what was left free at the near one.
                    places[^1].ShouldBe(chain.Length - places[0], Equal * gap);
                },
                iter: 200
            );
    }

    [Fact]
    public void Repeats_close_round_any_closed_path_without_a_seam()
    {
        Gen.Select(Rings, Gen.Double[2, 20], Gen.Double[-500, 500])
            .Sample(
                (ring, spacing, start) =>
                {
                    // Turned on the corner itself they stand where they would stand anyway.
                    var repeats = ring.Repeat(Lens, spacing).StartingAt(start);

                    var places = Walked(ring, repeats);

                    var gap = ring.Length / places.Length;
                    repeats.Fit.LargestSpacing.ShouldBe(gap, Equal * gap);
                    for (var i = 0; i < places.Length; i++)
                    {
                        var next = places[(i + 1) % places.Length] - places[i];
                        next -= Math.Floor(next / ring.Length) * ring.Length;
                        // One repeat alone is a whole round from itself.
                        (places.Length == 1 ? ring.Length : next).ShouldBe(gap, Equal * gap);
                    }
                    var off = Math.IEEERemainder(places[0] - start, ring.Length);
                    off.ShouldBe(0, Equal * gap);
                },
                iter: 200
            );
    }

    /// <summary>The direction from a little before to a little after: off by (k h)² / 6 at most, with h = 1e-4 mm and curvature k under 1/mm.</summary>
    [Fact]
    public void The_heading_is_the_true_tangent()
    {
        const double Step = 1e-4;
        Chains.Sample(
            chain =>
            {
                var repeats = chain.Repeat(Lens, 3);
                var headings = repeats.Headings();
                for (var i = 0; i < headings.Length; i++)
                {
                    var at = repeats.Fit.Stretches[0].First + i * repeats.Fit.LargestSpacing;
                    if (Enumerable.Range(0, chain.Count).Any(k => Near(chain.SegmentAt(k), i)))
                        continue;
                    var way = chain.PointAt(at + Step) - chain.PointAt(at - Step);
                    headings[i].ShouldBe(way.Unit(), 1e-8);
                }

                bool Near(Segment segment, int i) =>
                    segment.Start.DistanceTo(repeats.Origins()[i]) < 2 * Step;
            },
            iter: 50
        );
    }

    [Fact]
    public void Repeats_stand_at_the_very_offset_from_the_path()
    {
        Gen.Select(Gen.Double[0.5, 27], Gen.Bool)
            .Sample(
                (offset, isInside) =>
                {
                    var path = Rounded;
                    var beside = path.Repeat(Lens, 11).OffsetBy(isInside ? offset : -offset);

                    foreach (var (on, off) in path.Repeat(Lens, 11).Origins().Zip(beside.Origins()))
                    {
                        // The inside of the arcs is 28 mm, so that no other place of the path is nearer.
                        path.DistanceTo(off).ShouldBe(offset, 1e-9);
                        path.Nearest(off).Point.ShouldBe(on, 1e-6);
                        path.Locate(off)
                            .ShouldBe(isInside ? Containment.Inside : Containment.Outside);
                    }
                },
                iter: 50
            );
    }

    [Fact]
    public void I_can_leave_margins_at_the_ends()
    {
        var line = Chain.Line(new(0, 0), new(120, 0));

        // 120 - 12 - 8 = 100 mm in four spacings of 25.
        var ends = line.Repeat(Lens, 25).EndMargins(12, 8).RepeatsOnEnds();
        Along(ends).ShouldBe([12, 37, 62, 87, 112], 1e-12);
        var half = line.Repeat(Lens, 25).EndMargins(10);
        Along(half).ShouldBe([22.5, 47.5, 72.5, 97.5], 1e-12);
        ends.HalfSpacingIn().Fit.Repeats.ShouldBe(4);
    }

    /// <summary>Four spacings of 28 mm take 112 of 120, and 4 are left at each end; half a spacing in, 4 × 28 leave the same.</summary>
    [Fact]
    public void I_can_ask_for_an_exact_spacing_and_the_rest_goes_to_the_ends()
    {
        var exact = Chain.Line(new(0, 0), new(120, 0)).Repeat(Lens, 28).ExactSpacing();

        Along(exact.RepeatsOnEnds()).ShouldBe([4, 32, 60, 88, 116], 1e-12);
        Along(exact).ShouldBe([18, 46, 74, 102], 1e-12);
        exact.Fit.LargestSpacing.ShouldBe(28);
        Square100.Repeat(Lens, 16).ExactSpacing().Fit.Repeats.ShouldBe(25);
    }

    /// <summary>400 mm round: 26.7 at 15 mm, so 27 or, even, 26; within 15.5 and 16.5 mm only 25.</summary>
    [Fact]
    public void I_can_bound_the_spacing_and_ask_for_an_odd_or_even_number()
    {
        var repeats = Square100.Repeat(Lens, 15);

        repeats.Fit.Repeats.ShouldBe(27);
        repeats.EvenRepeats().Fit.Repeats.ShouldBe(26);
        repeats.OddRepeats().Fit.Repeats.ShouldBe(27);
        repeats.SpacingBetween(15.5, 16.5).Fit.Repeats.ShouldBe(25);
    }

    [Fact]
    public void Repeats_of_a_motif_share_one_shape_and_count_along_the_path()
    {
        var chips = Circle50.Repeat(Hook, 0.0314159).Chips.ToArray();

        chips.Length.ShouldBe(10_000);
        chips.ShouldAllBe(chip => ReferenceEquals(chip.Shape, chips[0].Shape));
        chips
            .Select(chip => chip.Id)
            .ShouldBe(Enumerable.Range(1, 10_000).Select(i => new ChipId(1, i)));
    }

    [Fact]
    public void The_extents_hold_every_chip_and_no_more()
    {
        Rings.Sample(
            ring =>
            {
                var repeats = ring.Repeat(Hook, 9, Heading.Outwards);
                var all = repeats
                    .Chips.Select(chip => chip.Outline.Extents)
                    .Aggregate((a, b) => a.Including(b));
                var extents = repeats.Extents.ShouldNotBeNull();
                extents.Min.ShouldBe(all.Min, 1e-9);
                extents.Max.ShouldBe(all.Max, 1e-9);
            },
            iter: 50
        );
    }

    [Fact]
    public void The_path_is_drawn_as_a_layout_line_if_I_ask()
    {
        Circle50.Repeat(Lens, 16).LayoutLines.ShouldBeEmpty();
        var line = Circle50.Repeat(Lens, 16).PathAsLayoutLine().LayoutLines.ShouldHaveSingleItem();
        line.Length.ShouldBe(Circle50.Length, 1e-9);
        line.End.ShouldBe(line.Start);
    }

    private static double[] Along(PathRepeats repeats) => [.. repeats.Origins().Select(at => at.X)];

    /// <summary>Where the motifs stand along the path, found from their places alone, and that they stand on it.</summary>
    private static double[] Walked(SegmentRun path, PathRepeats repeats) =>
        [
            .. repeats
                .Origins()
                .Select(at =>
                {
                    var nearest = path.Nearest(at);
                    nearest.Distance.ShouldBeLessThan(1e-10);
                    return nearest.Length;
                }),
        ];
}
