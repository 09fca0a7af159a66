namespace PatternGen.Tests.Output.Dxf;

public partial class DxfLintTests
{
    private const string Head = "66 1|10 0.0|20 0.0|30 0.0|70 8|";

    [Theory]
    [InlineData(
        $"100 AcDb3dPolyline|{Head}",
        "100 AcDb2dPolyline|66 1|10 0.0|20 0.0|30 0.0|70 8|",
        "order: markers"
    )]
    [InlineData(
        $"100 AcDb3dPolyline|{Head}",
        "100 AcDb3dPolyline|66 1|10 0.0|20 0.0|30 0.0|70 0|",
        "polyline: not in space"
    )]
    [InlineData("100 AcDb3dPolylineVertex|", "100 AcDb2dVertex|", "order: markers")]
    [InlineData("70 32|", "70 0|", "polyline: corner of another kind")]
    [InlineData("70 32|", "", "order: groups of VERTEX")]
    [InlineData("0 SEQEND|", "0 POLYLINE|", "polyline: POLYLINE")]
    public void A_fault_of_a_polyline_in_space_is_found(
        string find,
        string replace,
        string finding
    ) =>
        DxfLint
            .Check(Replace(Paths(DxfVersion.R2000), find, replace))
            .ShouldContain(text => text.StartsWith(finding, StringComparison.Ordinal));

    [Theory]
    [InlineData(Head, "66 1|10 0.0|20 0.0|30 0.0|70 0|", "polyline: corner of another kind")]
    [InlineData("0 SEQEND|8 GROOVES|", "0 SEQEND|8 STOCK|", "polyline: SEQEND")]
    [InlineData("0 SEQEND|8 GROOVES|", "", "polyline: POLYLINE")]
    public void A_fault_of_a_polyline_in_space_of_release_12_is_found(
        string find,
        string replace,
        string finding
    ) =>
        DxfLint
            .Check(Replace(Paths(DxfVersion.R12), find, replace))
            .ShouldContain(text => text.StartsWith(finding, StringComparison.Ordinal));

    [Theory]
    [InlineData("VERTEX")]
    [InlineData("SEQEND")]
    public void A_corner_or_end_that_its_polyline_does_not_own_is_found(string type)
    {
        var clean = Paths(DxfVersion.R2000);
        var part = DxfDocument.Parse(clean).Entities.First(record => record.Type == type);

        // 11 is the record of model space in all our files.
        var broken = Replace(
            clean,
            $"5 {part.Handle}|330 {part.Owner}|",
            $"5 {part.Handle}|330 11|"
        );

        DxfLint
            .Check(broken)
            .ShouldContain(text => text.StartsWith("owner: 11", StringComparison.Ordinal));
    }

    /// <summary>Of a square: two paths, each from corner to corner.</summary>
    private static byte[] Paths(DxfVersion version)
    {
        var paths = Pattern
            .OfChips(Contour.Rectangle(new(0, 0), new(6, 6)))
            .With(Pattern.OfStock(Contour.Rectangle(new(-5, -5), new(11, 11))))
            .GroovePaths(VBit.Of());
        using var stream = new MemoryStream();
        paths.Save(stream, SaveOptions.Default.WithDxfVersion(version));
        return stream.ToArray();
    }
}
