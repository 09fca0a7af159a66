namespace PatternGen.Tests.Chips;

public class StabCutChipSpecs
{
    private static readonly Contour Triangle = Contour.Polygon(new(0, 0), new(6, 0), new(3, 4));

    /// <summary>A pyramid with its tip under a corner: Euclid XII.7. The floor is a triangle with base 6 and height √(4² + 3²); each stab one of 5 by 3.</summary>
    [Fact]
    public void A_stab_cut_chip_holds_a_third_of_area_times_depth()
    {
        var chip = ChipSolid.StabCut(Triangle, 2, 3);

        chip.Depth.ShouldBe(3);
        chip.Deepest.ShouldBe(new(3, 4));
        chip.Area.ShouldBe(12, 1e-12);
        chip.Volume.ShouldBe(12, 1e-12);
        chip.SurfaceArea.ShouldBe(6 * 5 / 2 + 2 * (5 * 3 / 2.0), 1e-12);
        chip.FloorSlope.Degrees.ShouldBe(36.8698976458440, 1e-12); // atan 3/4, trigonometric tables
        chip.Apex.ShouldBe(2);
    }

    [Fact]
    public void Its_floor_slopes_evenly_from_the_base_to_the_apex()
    {
        var chip = ChipSolid.StabCut(Triangle, 2, 3);

        chip.DepthAt(new(3, 1)).ShouldBe(0.75, 1e-12);
        chip.DepthAt(new(2.4, 2)).ShouldBe(1.5, 1e-12);
        chip.DepthAt(new(3, 3.999999)).ShouldBe(3, 1e-5);
        chip.DepthAt(new(3, -0.1)).ShouldBe(0);
        chip.DepthAt(new(0, 3)).ShouldBe(0);
        Should.Throw<ArgumentOutOfRangeException>(() => chip.DepthAt(new(double.NaN, 0)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Whichever_corner_is_deepest_the_volume_is_the_same(int apex)
    {
        var chip = ChipSolid.StabCut(Triangle, apex, 3);

        chip.Volume.ShouldBe(12, 1e-12);
        chip.Deepest.ShouldBe(Triangle.Vertices[apex].Point);
    }

    [Fact]
    public void The_apex_may_overhang_the_base() =>
        ChipSolid
            .StabCut(Contour.Polygon(new(0, 0), new(6, 0), new(9, 4)), 2, 3)
            .Volume.ShouldBe(12, 1e-12);

    [Fact]
    public void Curved_stabs_hold_what_a_grid_adds_up_to()
    {
        var outline = new Contour(new Vertex(new(0, 0)), new(new(6, 0), 0.3), new(new(3, 4), -0.2));
        var chip = ChipSolid.StabCut(outline, 2, 3);

        var (sum, cells) = (0.0, 500);
        var extents = outline.Extents;
        for (var i = 0; i < cells; i++)
        for (var j = 0; j < cells; j++)
            sum += chip.DepthAt(
                new(
                    extents.Min.X + extents.Width * (i + 0.5) / cells,
                    extents.Min.Y + extents.Height * (j + 0.5) / cells
                )
            );
        chip.Volume.ShouldBe(sum * extents.Width * extents.Height / cells / cells, 0.02);

        // Floor, and strips along the stabs as deep as the floor is at their middles.
        var floor = chip.Area * Math.Sqrt(4 * 4 + 3 * 3) / 4;
        var stabs = 0.0;
        foreach (var side in (Segment[])[outline.SegmentAt(1), outline.SegmentAt(2)])
            for (var i = 0; i < 1000; i++)
                stabs +=
                    side.Length / 1000 * 3 * side.PointAt(side.Length * (i + 0.5) / 1000).Y / 4;
        chip.SurfaceArea.ShouldBe(floor + stabs, 1e-5);
    }

    [Fact]
    public void What_is_no_stab_cut_chip_is_refused()
    {
        Should
            .Throw<ArgumentException>(() =>
                ChipSolid.StabCut(Contour.Rectangle(new(0, 0), new(6, 4)), 0, 3)
            )
            .Message.ShouldContain("three sides, but the outline has 4");
        Should
            .Throw<ArgumentException>(() => ChipSolid.StabCut(Triangle.Reversed(), 2, 3))
            .Message.ShouldContain("counter-clockwise");
        Should
            .Throw<ArgumentException>(() => ChipSolid.StabCut(ChipOutlines.Reuleaux(5), 0, 3))
            .Message.ShouldContain("must be straight");
        Should.Throw<ArgumentOutOfRangeException>(() => ChipSolid.StabCut(Triangle, 3, 3));
        Should.Throw<ArgumentOutOfRangeException>(() => ChipSolid.StabCut(Triangle, -1, 3));
        Should.Throw<ArgumentOutOfRangeException>(() => ChipSolid.StabCut(Triangle, 2, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => ChipSolid.StabCut(Triangle, 2, double.NaN));
        Should.Throw<ArgumentNullException>(() => ChipSolid.StabCut(null!, 2, 3));
    }

    [Fact]
    public void A_floor_that_would_rise_out_of_the_wood_is_refused()
    {
        // The right side bulges round under the line of the base.
        var outline = new Contour(new Vertex(new(0, 0)), new(new(6, 0), 0.7), new(new(9, 4)));

        var refusal = Should.Throw<PatternException>(() => ChipSolid.StabCut(outline, 2, 3));

        refusal.Message.ShouldContain("reaches over the base");
        refusal.Place!.Value.Y.ShouldBeLessThan(0);
        refusal.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_wall_that_reaches_only_just_over_the_base_is_refused_too()
    {
        // A half circle of radius 1.5 on a chord at 89 degrees: it goes down by 1.5 × (1 - sin 89°) = 0.00023 mm.
        var apex = new Point(4, 0).Polar(3, Angle.FromDegrees(89));
        var outline = new Contour(new Vertex(new(0, 0)), new(new(4, 0), 1), new(apex));

        var refusal = Should.Throw<PatternException>(() => ChipSolid.StabCut(outline, 2, 3));

        var lowest = refusal.Place!.Value;
        lowest.Y.ShouldBe(-1.5 * (1 - Math.Sin(89 * Math.PI / 180)), 1e-9);
        // A chord at 91 degrees keeps all of the half circle above.
        var upright = new Point(4, 0).Polar(3, Angle.FromDegrees(91));
        _ = ChipSolid.StabCut(new Contour(new Vertex(0, 0), new(4, 0, 1), new(upright)), 2, 3);
    }

    [Fact]
    public void A_cut_that_leaves_no_floor_is_refused_when_it_is_chosen()
    {
        var outline = new Contour(new Vertex(new(0, 0)), new(new(6, 0), 0.7), new(new(9, 4)));

        var refusal = Should.Throw<PatternException>(() =>
            Pattern.OfChips(outline).WithCut(ChipCut.Stabbed(2))
        );

        refusal.Message.ShouldContain("reaches over the base");
    }
}
