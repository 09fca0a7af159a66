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

    private static InspectionReport On(Contour chip, InspectionLimits? limits = null) =>
        Wood.With(Pattern.OfChips(chip)).Inspect(Knife.Held(), Inspections.Board, limits);
}
