using static PatternGen.Tests.Layout.PathSamples;

namespace PatternGen.Tests.Layout;

public class PathVariationSpecs
{
    private static readonly Chain Line = Chain.Line(new(0, 0), new(60, 0));
    private static readonly double Diagonal = Math.Sqrt(0.5);

    [Fact]
    public void Motifs_follow_each_other_in_turn()
    {
        var repeats = Line.Repeat([Lens, Hook], 10);

        repeats.Chips.Select(chip => chip.Outline.Count).ShouldBe([2, 3, 2, 3, 2, 3]);
        repeats
            .Chips.Select(chip => chip.Id.ToString())
            .ShouldBe(["1.1", "1.2", "1.3", "1.4", "1.5", "1.6"]);
    }

    /// <summary>314.159 mm at 16 would take 20 repeats; of three motifs in turn, 21 is the multiple whose spacing is nearest.</summary>
    [Fact]
    public void Motifs_in_turn_close_round_a_contour()
    {
        var third = Pattern.OfChips(Contour.Rectangle(new(0, 0), new(1, 1)));
        var ring = Circle50.Repeat([Lens, Hook, third], 16);

        ring.Fit.Repeats.ShouldBe(21);
        ring.Chips.Select(chip => chip.Outline.Count)
            .ShouldBe(Enumerable.Repeat((int[])[2, 3, 4], 7).SelectMany(counts => counts));
        // In turn and mirrored in turn, only every sixth is like the first.
        ring.EverySecondMirrored().Fit.Repeats.ShouldBe(18);
    }

    [Fact]
    public void Every_second_motif_is_mirrored_in_the_path()
    {
        var repeats = Line.Repeat(Hook, 10, Heading.Along.Turned(45))
            .OffsetBy(3)
            .EverySecondMirrored();

        repeats.Origins().Select(at => at.Y).ShouldBe([3, -3, 3, -3, 3, -3]);
        for (var i = 0; i < 6; i++)
        {
            var tip = repeats.Chips.ElementAt(i).Outline.Extents;
            repeats.Placements[i].IsMirrored.ShouldBe(i % 2 != 0);
            repeats.Headings()[i].ShouldBe(new(Diagonal, i % 2 == 0 ? Diagonal : -Diagonal), 1e-12);
            (i % 2 == 0 ? tip.Min.Y : -tip.Max.Y).ShouldBe(3, 1e-12);
        }
    }

    [Fact]
    public void Both_sides_of_the_path_are_mirror_images()
    {
        var both = Line.Repeat(Hook, 10, Heading.Across.Turned(-30)).OffsetBy(2).OnBothSides();

        both.Fit.ToString().ShouldStartWith("6 repeats on each side, spacing 10 mm");
        both.ChipCount.ShouldBe(12);
        var chips = both.Chips.ToArray();
        for (var i = 0; i < 12; i += 2)
        {
            var mirrored = chips[i].Outline.Transformed(Transform.MirrorTopBottom());
            mirrored.Area.ShouldBe(chips[i + 1].Outline.Area, 1e-12);
            mirrored.Centroid.ShouldBe(chips[i + 1].Outline.Centroid, 1e-12);
            mirrored.Extents.Min.ShouldBe(chips[i + 1].Outline.Extents.Min, 1e-12);
            chips[i + 1].Outline.IsCounterClockwise.ShouldBeTrue();
        }
        both.OnOneSide().ChipCount.ShouldBe(6);
    }

    [Fact]
    public void Repeats_grow_and_shrink_with_their_place()
    {
        var line = Chain.Line(new(0, 0), new(50, 0));
        Scales(line.Repeat(Lens, 10).RepeatsScaled(1, 0.2))
            .ShouldBe([1, 0.8, 0.6, 0.4, 0.2], 1e-12);
        Scales(line.Repeat(Lens, 10).RepeatsScaled(0.5, 1, 0.5))
            .ShouldBe([0.5, 0.75, 1, 0.75, 0.5], 1e-12);
        Scales(line.Repeat(Lens, 10).RepeatsScaled(2)).ShouldBe([2, 2, 2, 2, 2], 1e-12);
    }

    /// <summary>Eight repeats once round: the fifth is half-way, and the eighth as far from the first as the second.</summary>
    [Fact]
    public void Scaled_repeats_close_round_a_contour()
    {
        var ring = Circle50.Repeat(Lens, Circle50.Length / 8).RepeatsScaled(0.6, 1, 0.6);

        Scales(ring).ShouldBe([0.6, 0.7, 0.8, 0.9, 1, 0.9, 0.8, 0.7], 1e-12);
    }

    [Fact]
    public void Repeats_swell_to_the_middle_of_each_side()
    {
        var sides = Square100
            .Repeat(Lens, 20)
            .CornerGaps()
            .RepeatsScaledBetweenCorners(0.6, 1, 0.6);

        Scales(sides)
            .ShouldBe(
                [
                    .. Enumerable
                        .Repeat((double[])[0.6, 0.8, 1, 0.8, 0.6], 4)
                        .SelectMany(side => side),
                ],
                1e-12
            );
    }

    [Fact]
    public void A_motif_faces_where_I_say()
    {
        var at = new Point(5, 0);
        Faces(Heading.Along).ShouldBe(new(1, 0));
        Faces(Heading.Along.Turned(90)).ShouldBe(new(0, 1), 1e-15);
        Faces(Heading.Across).ShouldBe(new(0, 1));
        Faces(Heading.Across.Turned(180)).ShouldBe(new(0, -1), 1e-15);
        Faces(Heading.Fixed(30)).ShouldBe(Vector.Towards(Angle.FromDegrees(30)), 1e-15);
        Faces(Heading.Fixed(30).Turned(15)).ShouldBe(new(Diagonal, Diagonal), 1e-15);
        Faces(Heading.Towards(at + new Vector(3, 4))).ShouldBe(new(0.6, 0.8), 1e-15);
        Faces(Heading.AwayFrom(at + new Vector(3, 4))).ShouldBe(new(-0.6, -0.8), 1e-15);

        static Vector Faces(Heading heading) => Line.Repeat(Hook, 10, heading).Headings()[0];
    }

    [Fact]
    public void Inwards_is_into_the_contour_whichever_way_it_runs()
    {
        foreach (var ring in (Contour[])[Circle50, Circle50.Reversed()])
        {
            foreach (
                var (heading, sign) in ((Heading, int)[])
                    [(Heading.Inwards, -1), (Heading.Outwards, 1)]
            )
            {
                var repeats = ring.Repeat(Hook, 20, heading);
                foreach (var (at, facing) in repeats.Origins().Zip(repeats.Headings()))
                    facing.ShouldBe((at - Point.Origin) * (sign / 50.0), 1e-12);
            }
        }
    }

    [Fact]
    public void A_point_is_faced_from_beside_the_path_too()
    {
        Point target = new(20, 30);
        var repeats = Line.Repeat(Hook, 10, Heading.Towards(target)).OffsetBy(4).OnBothSides();

        foreach (var (at, facing) in repeats.Origins().Zip(repeats.Headings()))
            facing.ShouldBe((target - at).Unit(), 1e-12);
    }

    private static double[] Scales(PathRepeats repeats) =>
        [.. repeats.Placements.Select(placement => placement.Scale)];
}
