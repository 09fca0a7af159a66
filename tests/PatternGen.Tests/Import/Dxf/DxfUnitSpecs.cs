namespace PatternGen.Tests.Importing.Dxf;

public sealed class DxfUnitSpecs
{
    [Theory]
    // The table of $INSUNITS in the DXF Reference, with the international and the survey foot as the law has them.
    [InlineData(1, 25.4)]
    [InlineData(2, 304.8)]
    [InlineData(4, 1)]
    [InlineData(5, 10)]
    [InlineData(6, 1000)]
    [InlineData(9, 0.0254)]
    [InlineData(10, 914.4)]
    [InlineData(13, 0.001)]
    [InlineData(14, 100)]
    [InlineData(21, 1200000.0 / 3937)]
    public void The_header_says_the_unit(int unit, double millimetres)
    {
        var drawing = DxfFile.Import(File(unit));

        drawing.Unit.ShouldBe(millimetres, 1e-12 * millimetres);
        drawing.Chains[0].Length.ShouldBe(500 * millimetres, 1e-9 * millimetres);
        drawing.Notes.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(0)]
    [InlineData(null)]
    public void A_drawing_without_a_unit_is_taken_as_millimetres_and_says_so(int? unit)
    {
        var drawing = DxfFile.Import(File(unit));

        drawing.Unit.ShouldBe(1);
        drawing.Chains[0].Length.ShouldBe(500);
        var note = drawing.Notes.ShouldHaveSingleItem();
        note.ToString().ShouldBe("Assumed: no unit given: taken as millimetres");
    }

    [Theory]
    [InlineData(18)]
    [InlineData(99)]
    [InlineData(-1)]
    public void A_unit_that_nothing_is_measured_in_is_said(int unit)
    {
        var drawing = DxfFile.Import(File(unit));

        drawing.Unit.ShouldBe(1);
        drawing.Notes.ShouldHaveSingleItem().ToString().ShouldStartWith($"Assumed: unit {unit} ");
    }

    [Fact]
    public void I_can_say_the_unit_whatever_the_file_says()
    {
        var drawing = DxfFile.Import(File(4), ImportSettings.Default.WithUnit(25.4));

        drawing.Unit.ShouldBe(25.4);
        drawing.Chains[0].Length.ShouldBe(12700, 1e-9);
    }

    private static string File(int? unit) =>
        DxfFile.Groups(
            (unit is { } given ? $"0 SECTION 2 HEADER 9 $INSUNITS 70 {given} 0 ENDSEC " : "")
                + $"0 SECTION 2 ENTITIES {DxfFile.Line(0, 0, 500, 0)} 0 ENDSEC 0 EOF"
        );
}
