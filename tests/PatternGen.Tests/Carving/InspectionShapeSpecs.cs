namespace PatternGen.Tests.Carving;

/// <summary>Chips that are narrow, sharp or hollow. Limits: common practice, no source.</summary>
public class InspectionShapeSpecs
{
    [Fact]
    public void A_chip_too_narrow_to_be_cut_cleanly_is_a_warning()
    {
        var finding = One(Inspections.Lens(1.9)).Inspect().Only(FindingKind.TooNarrow);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Value.ShouldBe(1.9, 1e-9);
        One(Inspections.Lens(2)).Inspect().ShouldBeClear();
        One(Inspections.Lens(1.9))
            .Inspect(limits: InspectionLimits.Default.WithChipWidth(1.5))
            .ShouldBeClear();
        var larger = Inspections
            .Lens(1.9)
            .Transformed(Transform.Resize(finding.Remedy(RemedyKind.Enlarge).Value));
        One(larger).Inspect().ShouldBeClear();
    }

    [Fact]
    public void A_tip_too_sharp_is_a_warning()
    {
        var finding = One(Inspections.Tip(0, 11, 12)).Inspect().Only(FindingKind.TipTooSharp);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Value.ShouldBe(11, 1e-9);
        finding.Place.ShouldBe(Point.Origin);
        var opened = finding.Remedy(RemedyKind.OpenTip).Value;
        One(Inspections.Tip(0, opened, 12)).Inspect().ShouldBeClear();
        One(Inspections.Tip(0, 11, 12))
            .Inspect(limits: InspectionLimits.Default.WithTipAngle(11))
            .ShouldBeClear();
    }

    [Fact]
    public void A_tip_whose_sides_are_tangent_has_no_angle()
    {
        // A circle of radius 6 and one of radius 4.1 that touches it from within, from the left to the contact on the right.
        var moon = new Contour(new Vertex(-6, 0, 1), new Vertex(6, 0, -1), new Vertex(-2.2, 0));

        var tip = One(moon)
            .Inspect(limits: InspectionLimits.Default.WithChipWidth(0))
            .Of(FindingKind.TipTooSharp)
            .ShouldHaveSingleItem();

        tip.Value.ShouldBe(0);
        tip.Place.DistanceTo(new(6, 0)).ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void A_hollow_side_tighter_than_the_blade_follows_is_a_warning()
    {
        var finding = One(Hollow(3.9)).Inspect().Only(FindingKind.HollowTooTight);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Value.ShouldBe(3.9, 1e-9);
        finding.Limit.ShouldBe(4);
        One(Hollow(finding.Remedy(RemedyKind.FlatterCurve).Value)).Inspect().ShouldBeClear();
        var larger = Transform.Resize(finding.Remedy(RemedyKind.Enlarge).Value);
        One(Hollow(3.9).Transformed(larger)).Inspect().ShouldBeClear();
        var narrow = Knife.Held().WithSmallestCurve(finding.Remedy(RemedyKind.NarrowerBlade).Value);
        Pattern.OfChips(Hollow(3.9)).Inspect(narrow, Inspections.Board).ShouldBeClear();
    }

    [Fact]
    public void A_bit_follows_every_curve_unless_a_limit_is_set()
    {
        var hollow = Pattern.OfChips(Hollow(3.9));
        var limits = InspectionLimits.Default.WithHollowRadius(5);

        hollow.Inspect(VBit.Of(60, 12), Inspections.Board).ShouldBeClear();
        hollow
            .Inspect(VBit.Of(60, 12), Inspections.Board, limits)
            .Only(FindingKind.HollowTooTight)
            .Limit.ShouldBe(5);
    }

    [Fact]
    public void A_bulging_side_may_be_as_tight_as_it_likes() =>
        // A half circle of radius 1.5.
        One(new Contour(new Vertex(0, 0, 1), new Vertex(3, 0), new Vertex(3, 4), new Vertex(0, 4)))
            .Inspect()
            .ShouldBeClear();

    [Fact]
    public void A_curve_that_a_straight_cut_follows_is_none()
    {
        // Radius 0.75 over 30 degrees, as at a plain centre: it rises 0.026 mm.
        var petals = Rosette.Petals(12, radius: 26).Carve(part => part.IsPetal);

        petals.Chips.ShouldContain(chip => chip.Outline.Segments.Any(side => side.Radius < 1));
        petals.Inspect(Knife.Held(), Inspections.Board).ShouldBeClear();
    }

    private static Contour[] One(Contour chip) => [chip];

    /// <summary>A chip 6 mm wide and 4.6 high whose upper side is an arc into it.</summary>
    private static Contour Hollow(double radius) =>
        Contour.Of(
            new Segment(new(0, 0), new(6, 0)),
            new Segment(new(6, 0), new(6, 4.6)),
            Segment.WithSagitta(
                new(6, 4.6),
                new(0, 4.6),
                -(radius - Math.Sqrt(radius * radius - 9))
            ),
            new Segment(new(0, 4.6), new(0, 0))
        );
}
