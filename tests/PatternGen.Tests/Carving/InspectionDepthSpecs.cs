namespace PatternGen.Tests.Carving;

/// <summary>Chips that are too deep or too wide. Limits: common practice, no source; tan 65° from tables.</summary>
public class InspectionDepthSpecs
{
    private static readonly Knife Blade = Knife.Held();

    [Fact]
    public void A_chip_deeper_than_is_comfortable_is_a_warning()
    {
        var report = Of(3.74).Inspect(Blade, Inspections.Board);
        var finding = report.Only(FindingKind.OverComfortableDepth);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Value.ShouldBe(3.74 / 2 * Inspections.Tan65, 1e-9);
        finding.Limit.ShouldBe(4);
        finding.Place.DistanceTo(new(10, 0)).ShouldBeLessThan(1e-9);
        report.IsCarvable.ShouldBeTrue();
        // 3.73 / 2 × tan 65° is 3.9995.
        Of(3.73).Inspect(Blade, Inspections.Board).ShouldBeClear();
        Of(3.74)
            .Inspect(Blade, Inspections.Board, InspectionLimits.Default.WithComfortableDepth(4.1))
            .ShouldBeClear();
    }

    [Fact]
    public void A_chip_6_mm_wide_is_shrunk_cut_flatter_or_split()
    {
        var finding = Of(6)
            .Inspect(Blade, Inspections.Board)
            .Only(FindingKind.OverComfortableDepth);

        // 4 / tan 65° is 1.8652 mm from the outline, of 3; atan(4 / 3) is 53.13°.
        var factor = finding.Remedy(RemedyKind.Shrink).Value;
        factor.ShouldBe(0.621);
        finding.Remedy(RemedyKind.HoldKnifeAt).Value.ShouldBe(53.1);
        finding.Remedy(RemedyKind.Split).Value.ShouldBe(3.73);
        Of(6).Scaled(factor).Inspect(Blade, Inspections.Board).ShouldBeClear();
        Of(6).Inspect(Knife.Held(53.1), Inspections.Board).ShouldBeClear();
        Halves(6).Inspect(Blade, Inspections.Board).ShouldBeClear();
        Halves(6).Chips.ShouldAllBe(half => half.Outline.Extents.Height <= 3.73);
        finding.Message.ShouldBe(
            "Warning: chip 1.1, at (10, 0): 6.43 mm deep, over the comfortable 4 mm. "
                + "Shrink it to 62.1 %, 3.73 mm wide, or hold the knife at 53.1°, "
                + "or split it by a middle ridge into two parts at most 3.73 mm wide."
        );
    }

    [Fact]
    public void The_knife_is_never_held_under_40_degrees()
    {
        // 4 mm in 4.8 from the outline would ask for 39.8°.
        Of(9.6)
            .Inspect(Blade, Stock.Thick(30))
            .Only(FindingKind.OverComfortableDepth)
            .Remedies.ShouldNotContain(remedy => remedy.Kind == RemedyKind.HoldKnifeAt);
        // And 40.1° in 4.75 will do.
        var remedy = Of(9.5)
            .Inspect(Blade, Stock.Thick(30))
            .Only(FindingKind.OverComfortableDepth)
            .Remedy(RemedyKind.HoldKnifeAt);
        Of(9.5).Inspect(Knife.Held(remedy.Value), Stock.Thick(30)).ShouldBeClear();
    }

    [Fact]
    public void A_chip_that_leaves_too_thin_a_floor_is_an_error()
    {
        var thin = Stock.Thick(6);
        var report = Of(3).Inspect(Blade, thin);
        var finding = report.Only(FindingKind.TooDeepForStock);

        report.IsCarvable.ShouldBeFalse();
        finding.Value.ShouldBe(6 - 1.5 * Inspections.Tan65, 1e-9);
        finding.Limit.ShouldBe(3);
        // 3 mm deep is 2.798 wide.
        Of(2.79).Inspect(Blade, thin).ShouldBeClear();
        Of(3).Inspect(Blade, thin, InspectionLimits.Default.WithFloor(0.4, 2.5)).ShouldBeClear();
        Of(3).Scaled(finding.Remedy(RemedyKind.Shrink).Value).Inspect(Blade, thin).ShouldBeClear();
        Of(3)
            .Inspect(Knife.Held(finding.Remedy(RemedyKind.HoldKnifeAt).Value), thin)
            .ShouldBeClear();
        Of(3)
            .Inspect(Blade, Stock.Thick(finding.Remedy(RemedyKind.ThickerStock).Value))
            .ShouldBeClear();
        // The least thickness: half of it stays, so twice 3.2168.
        finding.Remedy(RemedyKind.ThickerStock).Value.ShouldBe(6.5);
        Halves(3).Inspect(Blade, thin).Of(FindingKind.TooDeepForStock).ShouldBeEmpty();
    }

    [Fact]
    public void A_chip_that_goes_through_the_wood_says_by_how_much()
    {
        var finding = Of(6)
            .Inspect(Blade, Stock.Thick(6))
            .Of(FindingKind.TooDeepForStock)
            .ShouldHaveSingleItem();

        finding.Value.ShouldBe(6 - 3 * Inspections.Tan65, 1e-9);
        finding.Message.ShouldContain("goes through the wood by 0.43 mm");
    }

    [Fact]
    public void A_chip_deeper_than_the_blade_reaches_is_an_error()
    {
        var short3 = Blade.WithReach(3);
        var finding = Of(3).Inspect(short3, Inspections.Board).Only(FindingKind.BeyondReach);

        finding.Severity.ShouldBe(FindingSeverity.Error);
        finding.Value.ShouldBe(1.5 * Inspections.Tan65, 1e-9);
        Of(2.79).Inspect(short3, Inspections.Board).ShouldBeClear();
        Of(3)
            .Scaled(finding.Remedy(RemedyKind.Shrink).Value)
            .Inspect(short3, Inspections.Board)
            .ShouldBeClear();
        Of(3)
            .Inspect(
                Knife.Held(finding.Remedy(RemedyKind.HoldKnifeAt).Value).WithReach(3),
                Inspections.Board
            )
            .ShouldBeClear();
        Of(3)
            .Inspect(
                Blade.WithReach(finding.Remedy(RemedyKind.LongerReach).Value),
                Inspections.Board
            )
            .ShouldBeClear();
    }

    [Fact]
    public void A_chip_wider_than_the_bit_is_an_error()
    {
        var bit = VBit.Of(60, 4);
        var finding = Of(4.2).Inspect(bit, Inspections.Board).Only(FindingKind.WiderThanBit);

        finding.Severity.ShouldBe(FindingSeverity.Error);
        finding.Value.ShouldBe(4.2, 1e-9);
        finding.Limit.ShouldBe(4);
        Of(4).Inspect(bit, Inspections.Board).ShouldBeClear();
        Of(4.2)
            .Scaled(finding.Remedy(RemedyKind.Shrink).Value)
            .Inspect(bit, Inspections.Board)
            .ShouldBeClear();
        Halves(4.2).Inspect(bit, Inspections.Board).ShouldBeClear();
        Of(4.2)
            .Inspect(VBit.Of(60, finding.Remedy(RemedyKind.LargerBit).Value), Inspections.Board)
            .ShouldBeClear();
    }

    [Fact]
    public void A_knife_that_goes_no_deeper_than_wanted_flattens_walls_and_notes_it()
    {
        var careful = Blade.NoDeeperThan(4);
        var report = Of(6).Inspect(careful, Inspections.Board);
        var finding = report.Only(FindingKind.WallsFlattened);

        finding.Severity.ShouldBe(FindingSeverity.Note);
        finding.Value.ShouldBe(double.RadiansToDegrees(Math.Atan2(4, 3)), 1e-9);
        report.Count(FindingSeverity.Warning).ShouldBe(0);
        Of(3.73).Inspect(careful, Inspections.Board).ShouldBeClear();
    }

    [Fact]
    public void Walls_that_a_chip_has_of_its_own_count()
    {
        var flat = Of(6).WithCut(ChipCut.WallsAt(50));

        // 3 × tan 50° is 3.575.
        flat.Inspect(Blade, Inspections.Board).ShouldBeClear();
        // 3 × tan 55° is 4.284; the knife's own angle is no matter.
        Of(6)
            .WithCut(ChipCut.WallsAt(55))
            .Inspect(Blade, Inspections.Board)
            .Only(FindingKind.OverComfortableDepth)
            .Remedies.Select(remedy => remedy.Kind)
            .ShouldBe([RemedyKind.Shrink, RemedyKind.Split]);
    }

    [Fact]
    public void A_stab_is_as_deep_as_its_floor_slopes()
    {
        // 8 mm wide and 8 high: 8 × tan 30° is 4.619 mm at the apex.
        var triangle = Contour.Polygon(new(0, 0), new(8, 0), new(4, 8));
        var stab = Pattern.OfChips(triangle).WithCut(ChipCut.Stabbed(2));
        var finding = stab.Inspect(Blade, Inspections.Board).Only(FindingKind.OverComfortableDepth);

        finding.Value.ShouldBe(8 * Math.Tan(Math.PI / 6), 1e-9);
        stab.Scaled(finding.Remedy(RemedyKind.Shrink).Value)
            .Inspect(Blade, Inspections.Board)
            .ShouldBeClear();
    }

    private static Pattern Of(double width) => Pattern.OfChips(Inspections.Lens(width));

    /// <summary>The two-sided chip with a ridge along its middle: two chips that share a straight side.</summary>
    private static Pattern Halves(double width)
    {
        var bulge = width / 20;
        return Pattern.OfChips(
            new Contour(new Vertex(0, 0, bulge), new Vertex(20, 0)),
            new Contour(new Vertex(0, 0), new Vertex(20, 0, bulge))
        );
    }
}
