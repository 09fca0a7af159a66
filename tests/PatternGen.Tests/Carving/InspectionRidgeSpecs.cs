using CsCheck;

namespace PatternGen.Tests.Carving;

/// <summary>Chips beside each other. Limits: common practice, no source.</summary>
public class InspectionRidgeSpecs
{
    /// <summary>The grain runs as the ridges between upright bars do.</summary>
    private const double AlongBars = 90;

    [Fact]
    public void Chips_that_overlap_are_an_error()
    {
        var report = Bars(0, 2).Inspect();
        var finding = report.Only(FindingKind.ChipsOverlap);

        report.IsCarvable.ShouldBeFalse();
        finding.Value.ShouldBe(1, 1e-9);
        finding.Chip.ToString().ShouldBe("1.1");
        finding.Other.ToString().ShouldBe("1.2");
        // 1 mm, and the ridge of 1.2 that may run across the grain.
        var apart = finding.Remedy(RemedyKind.MoveApart);
        apart.Value.ShouldBe(2.2);
        new[] { Bars(0)[0], Bars(2)[0].Moved(apart) }.Inspect().ShouldBeClear();
        Bars(0, 3).Inspect().ShouldBeClear();
    }

    [Fact]
    public void Chips_overlap_where_one_lies_in_the_other_or_both_are_the_same()
    {
        var small = Inspections.Bar(0.4, 2, 2.2, 3);

        new[] { Inspections.Bar(), small }
            .Inspect()
            .Only(FindingKind.ChipsOverlap)
            .Value.ShouldBe(2.6, 1e-9);
        new[] { small, Inspections.Bar() }.Inspect().Only(FindingKind.ChipsOverlap);
        Bars(0, 0).Inspect().Only(FindingKind.ChipsOverlap).Value.ShouldBe(3, 1e-9);
        // Part of a side in common, but on one side of it.
        new[] { Inspections.Bar(), Inspections.Bar(0, 2, 2.2, 3) }
            .Inspect()
            .Only(FindingKind.ChipsOverlap);
    }

    [Fact]
    public void Chips_with_arcs_overlap_by_what_their_bulges_do()
    {
        // Two-sided chips 3 mm wide, their middles 2.9 apart.
        Contour[] lenses = [Inspections.Lens(3), Inspections.Lens(3).Moved(0, 2.9)];
        var finding = lenses.Inspect().Only(FindingKind.ChipsOverlap);

        finding.Value.ShouldBe(0.1, 1e-9);
        lenses[1] = lenses[1].Moved(finding.Remedy(RemedyKind.MoveApart));
        lenses.Inspect().ShouldBeClear();
    }

    [Fact]
    public void A_chip_may_fill_the_hole_of_another()
    {
        var ring = Part(Inspections.Bar(0, 0, 9, 9), Inspections.Bar(3, 3, 3, 3));
        var filled = new[] { ring, Part(Inspections.Bar(3, 3, 3, 3)) };
        var covered = new[] { ring, Part(Inspections.Bar(3, 3, 4, 3)) };

        Of(filled).ShouldBeClear();
        Of(covered).Of(FindingKind.ChipsOverlap).ShouldHaveSingleItem().Value.ShouldBe(6, 1e-9);

        static InspectionReport Of(RegionPart[] parts) =>
            Pattern.OfChips(parts).Inspect(Knife.Held(), Inspections.Board.GrainAlong(AlongBars));
    }

    [Fact]
    public void A_ridge_that_is_thin_but_not_sharp_is_a_warning()
    {
        var finding = Bars(0, 3.7).Inspect(AlongBars).Only(FindingKind.RidgeTooThin);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Value.ShouldBe(0.7, 1e-9);
        finding.Limit.ShouldBe(0.8);
        finding.Place.X.ShouldBe(3.35, 1e-9);
        Bars(0, 3.8).Inspect(AlongBars).ShouldBeClear();
        Bars(0, 3.7).Inspect(AlongBars, InspectionLimits.Default.WithRidge(0.6)).ShouldBeClear();
        var second = Bars(3.7)[0];
        foreach (var kind in (RemedyKind[])[RemedyKind.MoveApart, RemedyKind.MoveTogether])
            new[] { Bars(0)[0], second.Moved(finding.Remedy(kind)) }
                .Inspect(AlongBars)
                .ShouldBeClear();
        finding.Message.ShouldBe(
            "Warning: chips 1.1 and 1.2, at (3.4, 5): a ridge of 0.7 mm, neither sharp nor 0.8 mm wide. "
                + "Move the second one up to the first by 0.7 mm to the left, "
                + "or move the second one away by 0.1 mm to the right."
        );
    }

    [Fact]
    public void A_ridge_across_the_grain_is_to_be_wider()
    {
        var finding = Bars(0, 4.1).Inspect(grain: 0).Only(FindingKind.RidgeTooThin);

        finding.Value.ShouldBe(1.1, 1e-9);
        finding.Limit.ShouldBe(1.2);
        Bars(0, 4.2).Inspect(grain: 0).ShouldBeClear();
        // At 45 degrees it counts as across.
        Bars(0, 4.1).Inspect(grain: 45).Only(FindingKind.RidgeTooThin);
        Bars(0, 4.1).Inspect(grain: 46).ShouldBeClear();
        var turned = finding.Remedy(RemedyKind.TurnGrain).Value;
        turned.ShouldBe(90);
        Bars(0, 4.1).Inspect(turned).ShouldBeClear();
        new[] { Bars(0)[0], Bars(4.1)[0].Moved(finding.Remedy(RemedyKind.MoveApart)) }
            .Inspect(grain: 0)
            .ShouldBeClear();
        // Turning does not help a ridge that is too thin along the grain as well.
        Bars(0, 3.7)
            .Inspect(grain: 0)
            .Only(FindingKind.RidgeTooThin)
            .Remedies.ShouldNotContain(remedy => remedy.Kind == RemedyKind.TurnGrain);
    }

    [Fact]
    public void Each_member_of_a_pattern_has_its_own_grain()
    {
        var bars = Pattern.OfChips(Bars(0, 4.1));
        var both = bars.With(bars.Moved(20, 0).WithGrain(90));

        both.Inspect(Knife.Held(), Inspections.Board)
            .Only(FindingKind.RidgeTooThin)
            .Chips.Select(id => id.Row)
            .ShouldAllBe(row => row == 1);
    }

    [Fact]
    public void A_ridge_between_arcs_is_measured_where_it_is_thinnest()
    {
        // Two-sided chips 3 mm wide, their middles 3.7 apart, one 2 mm on: both arcs have the radius
        // (10² + 1.5²) / 3, and their centres are that less 1.5 mm beyond the middles.
        Contour[] lenses = [Inspections.Lens(3), Inspections.Lens(3).Moved(2, 3.7)];
        var radius = (100 + 2.25) / 3;
        var apart = double.Hypot(3.7 + 2 * (radius - 1.5), 2);

        lenses.Inspect().Only(FindingKind.RidgeTooThin).Value.ShouldBe(apart - 2 * radius, 1e-9);
    }

    [Fact]
    public void Sides_that_touch_in_a_point_leave_no_ridge_there()
    {
        Contour[] lenses = [Inspections.Lens(3), Inspections.Lens(3).Moved(0, 3)];
        var finding = lenses.Inspect().Only(FindingKind.RidgeTooThin);

        finding.Value.ShouldBe(0, 1e-6);
        finding.Place.DistanceTo(new(10, 1.5)).ShouldBeLessThan(1e-4);
        lenses[1] = lenses[1].Moved(finding.Remedy(RemedyKind.MoveApart));
        lenses.Inspect().ShouldBeClear();
    }

    [Fact]
    public void Sides_that_chips_share_are_sharp_ridges_whole_or_in_part()
    {
        // Straight, and shifted so that only a part is shared.
        new[] { Inspections.Bar(), Inspections.Bar(3), Inspections.Bar(6, 4) }
            .Inspect()
            .ShouldBeClear();
        // An arc, hollow for one and bulging for the other; and a part of it only.
        var half = new Segment(new(20, 0), new(0, 0), 0.1);
        var (left, right) = half.SplitAt(half.Length / 3);
        Contour Above(Segment side) =>
            Contour.Of(
                side.Reversed(),
                new(side.Start, new(side.Start.X, 4)),
                new(new(side.Start.X, 4), new(side.End.X, 4)),
                new(new(side.End.X, 4), side.End)
            );
        var lens = Contour.Of(half, new(new(0, 0), new(20, 0), 0.1));
        new[] { lens, Above(half) }.Inspect().Of(FindingKind.RidgeTooThin).ShouldBeEmpty();
        var parts = new[] { lens, Above(left), Above(right) }.Inspect();
        parts.Of(FindingKind.RidgeTooThin).ShouldBeEmpty();
        parts.Of(FindingKind.ChipsOverlap).ShouldBeEmpty();
        // A corner on the other's arc, along which its side runs on: no ground comes to a point there.
        new[] { lens, Above(left) }
            .Inspect(limits: InspectionLimits.Default.WithRidgeTipAngle(1))
            .Of(FindingKind.ShortGrain)
            .ShouldBeEmpty();
    }

    [Fact]
    public void A_chip_in_between_leaves_no_ridge_between_those_beside_it()
    {
        var middle = Inspections.Bar(3, 0, 0.5);

        Bars(0, 3.5).Inspect(AlongBars).Only(FindingKind.RidgeTooThin);
        new[] { Bars(0)[0], middle, Bars(3.5)[0] }
            .Inspect(AlongBars)
            .Only(FindingKind.TooNarrow)
            .Chip.Index.ShouldBe(2);
    }

    [Fact]
    public void A_tip_that_nearly_meets_a_side_is_told()
    {
        // A tip 0.3 mm above the upper end of a bar lying level.
        Contour[] chips = [Inspections.Bar(-5, -3, 10, 3), Inspections.Tip(60, 120).Moved(0, 0.3)];
        var finding = chips.Inspect().Only(FindingKind.RidgeTooThin);

        finding.Value.ShouldBe(0.3, 1e-9);
        foreach (var kind in (RemedyKind[])[RemedyKind.MoveApart, RemedyKind.MoveTogether])
            new[] { chips[0], chips[1].Moved(finding.Remedy(kind)) }.Inspect().ShouldBeClear();
    }

    [Fact]
    public void Two_tips_meet_or_stay_apart()
    {
        Contour[] Tips(double apart) =>
            [Inspections.Tip(-20, 20), Inspections.Tip(160, 200).Moved(-apart, 0)];

        Tips(0).Inspect().ShouldBeClear();
        Tips(0.7).Inspect().Only(FindingKind.RidgeTooThin).Value.ShouldBe(0.7, 1e-9);
        Tips(1.2).Inspect().ShouldBeClear();
    }

    [Fact]
    public void Ground_that_a_chip_goes_round_is_a_ridge_too()
    {
        // A slot of ground 0.6 mm wide reaches 6 mm down into a chip, blunt at its end.
        var slotted = Contour.Polygon(
            new(0, 0),
            new(6.6, 0),
            new(6.6, 10),
            new(3.6, 10),
            new(3.6, 4),
            new(3, 4),
            new(3, 10),
            new(0, 10)
        );

        var finding = new[] { slotted }
            .Inspect(AlongBars, InspectionLimits.Default.WithComfortableDepth(6))
            .Only(FindingKind.RidgeTooThin);

        finding.Value.ShouldBe(0.6, 1e-9);
        finding.Other.ShouldBeNull();
        var larger = slotted.Transformed(
            Transform.Resize(finding.Remedy(RemedyKind.Enlarge).Value)
        );
        new[] { larger }.Inspect(AlongBars).Of(FindingKind.RidgeTooThin).ShouldBeEmpty();
    }

    [Fact]
    public void Ground_that_stands_in_a_hole_is_a_ridge_too()
    {
        InspectionReport Of(double width) =>
            Pattern
                .OfChips(
                    Part(Inspections.Bar(0, 0, 6 + width, 12), Inspections.Bar(3, 3, width, 6))
                )
                .Inspect(Knife.Held(), Inspections.Board.GrainAlong(AlongBars));

        Of(0.7).Only(FindingKind.RidgeTooThin).Value.ShouldBe(0.7, 1e-9);
        Of(0.8).ShouldBeClear();
    }

    [Fact]
    public void Ridges_of_a_lattice_are_told_though_four_corners_come_near_each_other()
    {
        var lattice =
            from x in Enumerable.Range(0, 3)
            from y in Enumerable.Range(0, 3)
            select Inspections.Bar(3.7 * x, 3.7 * y, 3, 3);
        var limits = InspectionLimits.Default.WithComfortableDepth(9);

        lattice
            .Inspect(AlongBars, limits)
            .Findings.Select(finding => (finding.Kind, finding.Limit, finding.Count))
            .ShouldBe([(FindingKind.RidgeTooThin, 1.2, 6), (FindingKind.RidgeTooThin, 0.8, 6)]);
    }

    private static Contour[] Bars(params double[] places) =>
        [.. places.Select(x => Inspections.Bar(x))];

    private static RegionPart Part(params Contour[] rings) => new Region(rings).Parts.Single();

    [Theory]
    [InlineData(-1e-8)]
    [InlineData(0)]
    [InlineData(3e-9)]
    [InlineData(1e-8)]
    [InlineData(1e-7)]
    public void A_ridge_between_corners_that_face_each_other_but_for_rounding_is_found(double aside)
    {
        var lower = Inspections.Bar(0, 0, 2.3, 1.1);
        var upper = Inspections
            .Bar(0, 0, 5, 2.5)
            .Transformed(Transform.Rotate(2.2).Then(Transform.Move(aside, 1.7)));

        new[] { lower, upper }
            .Inspect()
            .Of(FindingKind.RidgeTooThin)
            .ShouldHaveSingleItem()
            .Value.ShouldBe(0.6, 1e-9);
    }

    [Fact]
    public void Moves_that_a_ridge_asks_for_clear_it_between_any_two_chips() =>
        Gen.Select(Hooked, Hooked)
            .Sample(
                (one, other) =>
                {
                    var report = new[] { one, other }.Inspect();
                    foreach (var finding in report.Of(FindingKind.RidgeTooThin))
                    foreach (
                        var remedy in finding.Remedies.Where(r =>
                            r.Kind is RemedyKind.MoveApart or RemedyKind.MoveTogether
                        )
                    )
                        if (finding.Other is not null)
                            new[] { one, other.Moved(remedy) }
                                .Inspect()
                                .Of(FindingKind.RidgeTooThin)
                                .Where(left => left.Other is not null)
                                .ShouldBeEmpty();
                },
                iter: 2000
            );

    [Fact]
    public void Pairs_that_lie_in_different_directions_are_not_all_sent_the_first_ones_way()
    {
        // Of the second pair, the second bar lies at the left of the first.
        Contour[] bars =
        [
            Inspections.Bar(0),
            Inspections.Bar(3.5),
            Inspections.Bar(53.5),
            Inspections.Bar(50),
        ];
        var finding = bars.Inspect(grain: 90).Only(FindingKind.RidgeTooThin);

        finding.Count.ShouldBe(2);
        var apart = finding.Remedy(RemedyKind.MoveApart);
        apart.Direction.ShouldBeNull();
        // Away from the first of each pair.
        bars[1] = bars[1].Moved(apart.Value, 0);
        bars[3] = bars[3].Moved(-apart.Value, 0);
        bars.Inspect(grain: 90).ShouldBeClear();
    }

    /// <summary>Chips with a notch, turned and moved anywhere.</summary>
    private static Gen<Contour> Hooked { get; } =
        Gen.Select(
                Gen.Double[-7, 7],
                Gen.Double[-7, 7],
                Gen.Double[0, 360],
                Gen.Double[1, 2.5],
                Gen.Double[2, 4]
            )
            .Select(
                (x, y, degrees, across, along) =>
                    Contour
                        .Polygon(
                            new(0, 0),
                            new(6, 0),
                            new(6, 2),
                            new(along, across + 0.5),
                            new(across, 6),
                            new(0, 6)
                        )
                        .Transformed(Transform.Rotate(degrees).Then(Transform.Move(x, y)))
            );
}
