namespace PatternGen.Tests.Carving;

/// <summary>Chips on the wood and between ruled lines. Limits: common practice, no source.</summary>
public class InspectionWoodSpecs
{
    private static readonly Pattern Wood = Pattern.OfStock(
        Contour.Rectangle(new(0, 0), new(60, 40))
    );

    [Fact]
    public void A_chip_beyond_the_edge_is_an_error()
    {
        var finding = On(Inspections.Bar(-1, 15)).Only(FindingKind.OffStock);

        finding.Severity.ShouldBe(FindingSeverity.Error);
        finding.Value.ShouldBe(1, 1e-9);
        // 1 mm back, and 5 to the edge, which is end grain.
        var back = finding.Remedy(RemedyKind.Move);
        back.Value.ShouldBe(6);
        On(Inspections.Bar(-1, 15).Moved(back)).ShouldBeClear();
        On(Inspections.Bar(0, 15)).Only(FindingKind.NearEdge).Value.ShouldBe(0, 1e-9);
    }

    [Fact]
    public void A_chip_that_bulges_beyond_the_edge_is_off_by_its_bulge()
    {
        // 3 mm wide about y = 1.4.
        var finding = On(Inspections.Lens(3).Moved(20, 1.4)).Only(FindingKind.OffStock);

        finding.Value.ShouldBe(0.1, 1e-9);
        On(Inspections.Lens(3).Moved(20, 1.4).Moved(finding.Remedy(RemedyKind.Move)))
            .ShouldBeClear();
    }

    [Fact]
    public void A_chip_wholly_off_the_wood_is_an_error()
    {
        var finding = On(Inspections.Bar(100, 15)).Only(FindingKind.OffStock);

        finding.Value.ShouldBe(43, 1e-9);
        On(Inspections.Bar(100, 15).Moved(finding.Remedy(RemedyKind.Move))).ShouldBeClear();
    }

    [Fact]
    public void A_chip_over_a_hole_in_the_wood_is_an_error()
    {
        var wood = Pattern.OfStock(
            Contour.Rectangle(new(0, 0), new(60, 40)),
            new Circle(new(30, 20), 1).ToContour().Reversed()
        );

        Of(Inspections.Bar(28.5, 15)).Only(FindingKind.OffStock);
        // 2 mm from the hole at its left, where the edge is end grain, or 5.
        Of(Inspections.Bar(24, 15)).Only(FindingKind.NearEdge).Value.ShouldBe(2, 1e-9);
        Of(Inspections.Bar(21, 15)).ShouldBeClear();

        InspectionReport Of(Contour chip) =>
            wood.With(Pattern.OfChips(chip)).Inspect(Knife.Held(), Inspections.Board);
    }

    [Theory]
    [InlineData(4.9, 15, 5)] // left, end grain
    [InlineData(60 - 3 - 4.9, 15, 5)] // right, end grain
    [InlineData(30, 2.9, 3)]
    [InlineData(30, 40 - 10 - 2.9, 3)]
    public void A_chip_near_the_edge_is_a_warning(double x, double y, double limit)
    {
        var chip = Inspections.Bar(x, y);
        var finding = On(chip).Only(FindingKind.NearEdge);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Limit.ShouldBe(limit);
        finding.Value.ShouldBe(limit - 0.1, 1e-9);
        var moved = finding.Remedy(RemedyKind.Move);
        moved.Value.ShouldBe(0.1, 1e-9);
        On(chip.Moved(moved)).ShouldBeClear();
        On(chip, InspectionLimits.Default.WithEdge(limit - 0.1)).ShouldBeClear();
    }

    [Fact]
    public void In_a_corner_of_the_wood_one_move_takes_a_chip_far_enough_from_both_edges()
    {
        var chip = Inspections.Bar(1, 1);
        var finding = On(chip).Only(FindingKind.NearEdge);

        // 4 mm short of 5 at the left, 2 mm short of 3 below: √(4² + 2²).
        var move = finding.Remedy(RemedyKind.Move);
        move.Value.ShouldBe(4.48);
        On(chip.Moved(move)).ShouldBeClear();
    }

    [Fact]
    public void In_a_sharp_corner_the_move_makes_up_for_what_each_edge_takes_from_the_other()
    {
        // Edges at 0 and 60 degrees: away from one is partly towards the other.
        var wood = Pattern.OfStock(
            Contour.Polygon(new(0, 0), new(80, 0), new(40, 80 * Math.Sqrt(0.75)))
        );
        var chip = Contour.Polygon(new(4, 1), new(8, 1), new(6, 4));
        var capped = Inspections.Board.WithEndGrain(EndGrain.AtNoEnd);
        var finding = Of(chip).Of(FindingKind.NearEdge).ShouldHaveSingleItem();

        Of(chip.Moved(finding.Remedy(RemedyKind.Move))).Of(FindingKind.NearEdge).ShouldBeEmpty();

        InspectionReport Of(Contour moved) =>
            wood.With(Pattern.OfChips(moved)).Inspect(Knife.Held(), capped);
    }

    [Fact]
    public void Between_edges_too_near_each_other_no_move_is_proposed()
    {
        var strip = Pattern.OfStock(Contour.Rectangle(new(0, 0), new(60, 12)));
        var report = strip
            .With(Pattern.OfChips(Inspections.Bar(30, 1)))
            .Inspect(Knife.Held(), Inspections.Board);

        report.Only(FindingKind.NearEdge).Remedies.ShouldBeEmpty();
    }

    [Fact]
    public void Chips_at_opposite_edges_are_one_finding_but_not_sent_the_same_way()
    {
        // 1 mm from the left and from the right edge.
        var finding = On(Inspections.Bar(1, 15), Inspections.Bar(56, 15))
            .Only(FindingKind.NearEdge);

        finding.Count.ShouldBe(2);
        var move = finding.Remedy(RemedyKind.Move);
        move.Direction.ShouldBeNull();
        finding.Message.ShouldNotContain("to the right");
        On(Inspections.Bar(1 + move.Value, 15), Inspections.Bar(56 - move.Value, 15))
            .ShouldBeClear();
    }

    [Fact]
    public void Borders_laid_on_one_rail_one_by_one_lie_on_one_piece_of_wood()
    {
        var upper = Wood.With(Pattern.OfChips(Inspections.Bar(20, 15)));
        var lower = Wood.With(Pattern.OfChips(Inspections.Bar(30, 15)));

        upper.With(lower).Inspect(Knife.Held(), Inspections.Board).ShouldBeClear();
    }

    [Fact]
    public void Ends_without_end_grain_ask_for_less()
    {
        var capped = Inspections.Board.WithEndGrain(EndGrain.AtNoEnd);
        var pattern = Wood.With(Pattern.OfChips(Inspections.Bar(3, 15)));

        pattern.Inspect(Knife.Held(), capped).ShouldBeClear();
        pattern.Inspect(Knife.Held(), Inspections.Board).Only(FindingKind.NearEdge);
        // Grain upright: the left edge is a side.
        pattern.Inspect(Knife.Held(), Inspections.Board.GrainAlong(90)).ShouldBeClear();
    }

    [Fact]
    public void Without_an_outline_of_the_wood_its_edges_are_not_looked_at() =>
        new[] { Inspections.Bar(-1000, 0) }.Inspect().ShouldBeClear();

    [Fact]
    public void A_chip_that_crosses_its_ruled_line_is_a_warning()
    {
        // 4 mm high between lines 4 mm apart, but 0.2 too high.
        var finding = Ruled(Triangle(4).Moved(0, 0.2)).Only(FindingKind.OffRuledLine);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        Math.Abs(finding.Value).ShouldBe(0.2, 1e-9);
        Ruled(Triangle(4).Moved(0, 0.2).Moved(finding.Remedy(RemedyKind.Move))).ShouldBeClear();
        Ruled(Triangle(4).Moved(0, 0.1)).ShouldBeClear();
        Ruled(Triangle(4)).ShouldBeClear();
    }

    [Fact]
    public void Repeats_that_each_bring_their_ruled_lines_are_held_against_their_own()
    {
        var lines = Pattern.OfLayoutLines(
            Chain.Line(new(0, 0), new(8, 0)),
            Chain.Line(new(0, 4), new(8, 4))
        );
        var row = lines.With(Pattern.OfChips(Triangle(4))).Repeated(50, 10);
        // The last one stands 30 mm up, between lines of its own, and 0.2 mm too high.
        var off = lines.Moved(490, 30).With(Pattern.OfChips(Triangle(4).Moved(490, 30.2)));

        var finding = row.With(off)
            .Inspect(Knife.Held(), Inspections.Board)
            .Only(FindingKind.OffRuledLine);

        finding.Count.ShouldBe(1);
        finding.Place.Y.ShouldBeGreaterThan(30);
    }

    [Theory]
    [InlineData(3.7, -0.3, RemedyKind.Enlarge)]
    [InlineData(4.25, 0.25, RemedyKind.Shrink)]
    public void A_chip_lower_or_higher_than_its_lines_is_a_warning(
        double height,
        double value,
        RemedyKind kind
    )
    {
        var finding = Ruled(Triangle(height)).Only(FindingKind.OffRuledLine);

        finding.Value.ShouldBe(value, 1e-9);
        var fitted = Transform.Resize(finding.Remedy(kind).Value);
        Ruled(Triangle(height).Transformed(fitted)).ShouldBeClear();
    }

    [Fact]
    public void Chips_that_are_not_meant_to_fill_the_space_between_lines_are_no_matter()
    {
        Ruled(Inspections.Lens(3).Moved(0, 2)).ShouldBeClear(); // its corners span nothing
        Ruled(Triangle(2.3)).Of(FindingKind.OffRuledLine).ShouldBeEmpty();
        Ruled(Inspections.Bar(3, -3)).ShouldBeClear(); // across both lines
        Ruled(Triangle(3.7).Moved(60, 0)).ShouldBeClear(); // beyond their ends
    }

    private static Contour Triangle(double height) =>
        Contour.Polygon(new(0, 0), new(8, 0), new(4, height));

    private static InspectionReport Ruled(Contour chip) =>
        Pattern
            .OfLayoutLines(Chain.Line(new(-10, 0), new(50, 0)), Chain.Line(new(-10, 4), new(50, 4)))
            .With(Pattern.OfChips(chip))
            .Inspect(Knife.Held(), Inspections.Board);

    private static InspectionReport On(params Contour[] chips) =>
        Wood.With(Pattern.OfChips(chips)).Inspect(Knife.Held(), Inspections.Board);

    private static InspectionReport On(Contour chip, InspectionLimits? limits) =>
        Wood.With(Pattern.OfChips(chip)).Inspect(Knife.Held(), Inspections.Board, limits);
}
