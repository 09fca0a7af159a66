namespace PatternGen.Tests.Layout.Frames;

public class FrameCornerSpecs
{
    private static readonly TriangleBand Diamonds = TriangleBand.Ruled(2, 4, 4, 2);

    public static TheoryData<string> Bands => FrameChecks.Bands;

    public static TheoryData<string> UprightBands => FrameChecks.UprightBands;

    [Fact]
    public void I_can_turn_the_corners_with_a_rosette()
    {
        var border = Frame.Of(320, 240, band: 22).Border(Diamonds).Corners(Rosette.Petals(6, 9));

        border.ShouldBeCarvable();
        // Blocks as wide as the members: 276 and 196 mm between them, 34.5 and 24.5 times 8.
        border.Fits.Select(fit => fit.Length).ShouldBe([276, 196, 276, 196]);
        border.Chips.Count(chip => chip.Outline.Count == 2).ShouldBe(4 * 6);
        border
            .Chips.Where(chip => chip.Outline.Count == 3)
            .ShouldAllBe(chip =>
                chip.Outline.Extents.Min.X > 22 - 1e-9 || chip.Outline.Extents.Min.Y > 22 - 1e-9
            );
        // A petal points to each corner.
        foreach (var corner in (Point[])[new(0, 0), new(320, 0), new(320, 240), new(0, 240)])
        {
            var centre = new Point(corner.X == 0 ? 11 : 309, corner.Y == 0 ? 11 : 229);
            var tip = centre + (corner - centre).Unit() * 9;
            border
                .Chips.SelectMany(chip => chip.Outline.Vertices)
                .ShouldContain(v => v.Point.DistanceTo(tip) < 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Bands))]
    public void A_motif_without_a_mirror_is_seen_in_a_mirror_at_every_second_corner(string band)
    {
        var whirl = Rosette.Whirl(6, 5.5).Carve(_ => true);
        foreach (var (width, height) in FrameChecks.Sizes)
        {
            var border = FrameChecks
                .Border(band, width, height)
                .Corners(whirl, size: 11, margin: 1);

            border.ShouldBeCarvable();
            border.ShouldFillItsSides();
            // A quarter turn would take a whirl to one that whirls the other way.
            border.ShouldBeTheSameUnder(Transform.MirrorLeftRight(width / 2));
            border.ShouldBeTheSameUnder(Transform.MirrorTopBottom(height / 2));
        }
    }

    [Fact]
    public void A_motif_can_stand_upright_in_all_corners()
    {
        var teardrop = Pattern.OfChips(Contour.Polygon(new(-3, -4), new(3, -4), new(0, 5)));
        var border = Frame
            .Of(120, 90, band: 16)
            .Border(Diamonds)
            .Corners(teardrop, turn: FrameTurn.Upright);

        border
            .Chips.TakeLast(4)
            .ShouldAllBe(chip => Math.Abs(chip.Outline.Extents.Width - 6) < 1e-9);
    }

    /// <summary>Every row's cell is halved by its diagonal, so there are twice the square of the strips.</summary>
    [Theory]
    [MemberData(nameof(Bands))]
    public void A_band_can_turn_the_corner_with_a_piece_of_its_own(string band)
    {
        var rows = FrameChecks.Band(band).Rows;
        var strips = rows.Select(row => row.LowerRule).Distinct().Count();
        foreach (var (width, height) in FrameChecks.Sizes)
        {
            var border = FrameChecks.Border(band, width, height).Wrapped();

            border.ShouldBeCarvable();
            border.ShouldFillItsSides();
            border.ShouldHaveTheMirrorsOf(width, height);
            // The halves come first on each side.
            border
                .Chips.GroupBy(chip => chip.Id.Row)
                .OrderBy(row => row.Key)
                .Where((_, i) => i % (rows.Count + 1) == 0)
                .Sum(row => row.Count())
                .ShouldBe(4 * 2 * strips * strips);
        }
    }

    /// <summary>The cells of two rows lie round the middle of the carved square, from 4 to 12 mm, where all diagonals meet.</summary>
    [Fact]
    public void The_corner_of_a_double_row_is_a_star_of_eight()
    {
        var border = Frame.Of(120, 90, band: 16).Border(Diamonds).Wrapped();

        border
            .Chips.Count(chip => chip.Outline.Vertices.Any(v => v.Point == new Point(8, 8)))
            .ShouldBe(8);
    }

    [Theory]
    [MemberData(nameof(Bands))]
    public void Two_sides_can_run_through_and_two_stop_against_them(string band)
    {
        foreach (var (width, height) in FrameChecks.Sizes)
        foreach (var through in Enum.GetValues<FrameThrough>())
        {
            var border = FrameChecks.Border(band, width, height).Butted(through);
            var member = FrameChecks.Band(band).Height + 3;

            border.ShouldBeCarvable();
            border.ShouldFillItsSides();
            var level = through == FrameThrough.Level;
            // 1.5 mm lie between band and edge.
            border.Fits[0].Length.ShouldBe(width - (level ? 3 : 2 * member), 1e-9);
            border.Fits[1].Length.ShouldBe(height - (level ? 2 * member : 3), 1e-9);
            border.ShouldBeTheSameUnder(Transform.MirrorLeftRight(width / 2));
            border.ShouldBeTheSameUnder(Transform.MirrorTopBottom(height / 2));
        }
    }

    [Theory]
    [MemberData(nameof(UprightBands))]
    public void A_band_can_bend_round_rounded_corners(string band)
    {
        foreach (var (width, height) in ((double, double)[])[(160, 160), (180, 130)])
        {
            var border = Frame
                .Of(width, height, FrameChecks.Band(band).Height + 3)
                .Rounded(50)
                .Border(FrameChecks.Band(band))
                .Bent();

            border.ShouldBeCarvable();
            border.ShouldFillItsSides();
            border.ShouldHaveTheMirrorsOf(width, height);
        }
    }

    /// <summary>Two straights of 180 - 100 and two of 130 - 100 mm, and a circle of radius 50 - 8 at the middle of the band.</summary>
    [Fact]
    public void The_repeats_of_a_bent_band_go_all_round()
    {
        var border = Frame.Of(180, 130, band: 16).Rounded(50).Border(Diamonds).Bent();

        var fit = border.Fits.ShouldHaveSingleItem();
        fit.Length.ShouldBe(2 * (80 + 30) + 2 * Math.PI * 42, 1e-9);
        (fit.Repeats % 2).ShouldBe(0);
        border.Caption()[2].ShouldStartWith("All round: ");
        border.Stock[0].Length.ShouldBe(2 * (80 + 30) + 2 * Math.PI * 50, 1e-9);
        border.Stock[1].Length.ShouldBe(2 * (80 + 30) + 2 * Math.PI * 34, 1e-9);
    }

    [Fact]
    public void One_pitch_for_all_leaves_the_rest_at_the_ends_of_straight_sides()
    {
        var border = Frame
            .Of(323, 240, band: 22)
            .Border(Diamonds)
            .Corners(Rosette.Petals(6, 9))
            .SamePitch();

        border.Fits.Select(fit => fit.Pitch).Distinct().ShouldHaveSingleItem();
        border.ShouldFillItsSides();
        border.Fits.ShouldAllBe(fit =>
            Math.Abs(fit.FirstMargin - fit.LastMargin) < 1e-9 && fit.MiddleGap == 0
        );
    }

    /// <summary>However a rectangle is made, it is the same: round from another corner, or by an angle's sine and cosine.</summary>
    [Fact]
    public void Any_rectangle_may_be_butted_with_its_upright_sides_through()
    {
        static FrameBorder Butted(Frame frame) =>
            frame.Border(TriangleBand.Ruled(2, 4, 4, 2)).Butted();

        ShouldBeSame(
            Butted(Frame.Polygon(16, new(200, 0), new(200, 150), new(0, 150), new(0, 0))),
            Butted(Frame.Of(200, 150, 16))
        );
        ShouldBeSame(Butted(Frame.AcrossFlats(4, 150, 16)), Butted(Frame.Of(150, 150, 16)));

        static void ShouldBeSame(FrameBorder one, FrameBorder other)
        {
            one.ChipCount.ShouldBe(other.ChipCount);
            foreach (var chip in one.Chips)
                other
                    .Chips.Min(like => like.Outline.Centroid.DistanceTo(chip.Outline.Centroid))
                    .ShouldBeLessThan(FrameChecks.Same);
        }
    }
}
