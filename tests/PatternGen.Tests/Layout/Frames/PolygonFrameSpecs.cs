using CsCheck;

namespace PatternGen.Tests.Layout.Frames;

public class PolygonFrameSpecs
{
    private static readonly TriangleBand Diamonds = TriangleBand.Ruled(2, 4, 4, 2);

    private static readonly Point[] Ell =
    [
        new(0, 0),
        new(150, 0),
        new(150, 64),
        new(70, 64),
        new(70, 120),
        new(0, 120),
    ];

    public static TheoryData<string> Bands => FrameChecks.Bands;

    [Theory]
    [MemberData(nameof(Bands))]
    public void A_regular_frame_has_all_turns_and_mirrors_of_its_outline(string band)
    {
        foreach (var sides in (int[])[3, 5, 6, 8])
        {
            var frame = Frame.Regular(
                sides,
                sides == 3 ? 190 : 90,
                FrameChecks.Band(band).Height + 3
            );
            var middle = frame.Outer.Centroid;
            foreach (var border in Treatments(frame.Border(FrameChecks.Band(band))))
            {
                border.ShouldBeCarvable();
                border.ShouldFillItsSides();
                border.ShouldBeTheSameUnder(Transform.Rotate(360.0 / sides, middle));
                border.ShouldBeTheSameUnder(Transform.MirrorLeftRight(middle.X));
            }
        }
    }

    /// <summary>Opposite sides of a hexagon lie the side times the root of 3 apart.</summary>
    [Fact]
    public void A_hexagonal_box_can_be_measured_by_its_side_or_across()
    {
        var bySide = Frame.Regular(6, 100, band: 15);
        var across = Frame.AcrossFlats(6, 100 * Math.Sqrt(3), band: 15);

        bySide.Height.ShouldBe(173.205080756888, 1e-9);
        bySide.Width.ShouldBe(200, 1e-9);
        across.Width.ShouldBe(200, 1e-9);
        bySide.Outer.Extents.Min.DistanceTo(Point.Origin).ShouldBeLessThan(1e-9);
        // A hexagon within, 15 mm narrower on each side: 3/2 √3 s².
        bySide.Inner.Area.ShouldBe(1.5 * Math.Sqrt(3) * Math.Pow(100 - 30 / Math.Sqrt(3), 2), 1e-8);
    }

    /// <summary>At every corner, also where it points in, mirroring in its bisector swaps the chips of both sides.</summary>
    [Theory]
    [MemberData(nameof(Bands))]
    public void Each_corner_of_a_polygon_is_mitred_on_its_own_bisector(string band)
    {
        Point[] kite = [new(0, 0), new(160, 20), new(200, 130), new(60, 150)];
        foreach (var corners in (Point[][])[Ell, kite])
        {
            var frame = Frame.Polygon(corners, FrameChecks.Band(band).Height + 3);
            var border = frame.Border(FrameChecks.Band(band)).SamePitch();

            border.ShouldBeCarvable();
            border.ShouldFillItsSides();
            for (var i = 0; i < corners.Length; i++)
            {
                var (before, here, after) = (
                    corners[(i + corners.Length - 1) % corners.Length],
                    corners[i],
                    corners[(i + 1) % corners.Length]
                );
                var bisector = ((after - here).Unit() + (before - here).Unit()).Direction;
                var inner = frame.Inner.Vertices[i].Point;
                border.ShouldHaveImages(
                    chip => chip.Outline.Centroid.DistanceTo(here.Towards(inner, 0.5)) < 13,
                    Transform.Mirror(here, bisector)
                );
            }
        }
    }

    [Fact]
    public void Corners_may_be_given_either_way_round_and_on_straight_lines()
    {
        var frame = Frame.Polygon(14, [.. Ell.Reverse(), new(0, 60)]);

        frame.SideCount.ShouldBe(6);
        frame.Outer.IsCounterClockwise.ShouldBeTrue();
        frame.Outer.Area.ShouldBe(150 * 64 + 70 * 56, 1e-9);
    }

    /// <summary>The room between wall and bisector at a corner that points in is the same as at one that points out.</summary>
    [Fact]
    public void A_motif_turns_corners_that_point_in_too()
    {
        var border = Frame.Polygon(Ell, 16).Border(Diamonds).Corners(Rosette.Petals(8, 7));

        border.ShouldBeCarvable();
        border.Chips.Count(chip => chip.Outline.Count == 2).ShouldBe(6 * 8);
    }

    [Fact]
    public void A_band_bends_round_corners_that_point_in_too()
    {
        var border = Frame.Polygon(Ell, 16).Rounded(26).Border(Diamonds).Bent();

        border.ShouldBeCarvable();
        // Each side is 52 mm shorter. Five quarter circles turn left and one turns right; the middle of the band lies 8 mm in.
        var straight = 98 + 12 + 28 + 4 + 18 + 68;
        border.Fits.Single().Length.ShouldBe(straight + (5 * 18 + 34) * Math.PI / 2, 1e-9);
    }

    /// <summary>Corners at growing angles about a middle make a star-shaped outline, convex or not.</summary>
    [Fact]
    public void Any_outline_is_carved_soundly_or_refused()
    {
        var frames =
            from band in Gen.Int[0, BandSampler.All.Count - 1]
            from reach in Gen.Double[40, 110].Array[3, 8]
            from turn in Gen.Double[0, 1]
            select (BandSampler.All[band].Band, reach, turn);
        frames.Sample(
            given =>
            {
                var corners = given.reach.Select(
                    (reach, i) =>
                        Point.Origin.Polar(
                            reach,
                            Angle.OfTurn((i + given.turn) / given.reach.Length)
                        )
                );
                FrameBorder border;
                try
                {
                    border = Frame.Polygon(corners, given.Band.Height + 1).Border(given.Band);
                    _ = border.ChipCount;
                }
                catch (PatternException refused)
                {
                    refused.Remedies.ShouldNotBeEmpty();
                    return;
                }
                if (border.ChipCount > 0)
                    border.ShouldBeCarvable();
                border.ShouldFillItsSides();
            },
            iter: 60
        );
    }

    private static FrameBorder[] Treatments(FrameBorder border) =>
        [border, border.Wrapped(), border.Corners(Rosette.Petals(6, 5), size: 12)];
}
