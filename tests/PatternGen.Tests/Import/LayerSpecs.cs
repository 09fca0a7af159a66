using PatternGen.Tests.Importing.Dxf;
using PatternGen.Tests.Importing.Svg;

namespace PatternGen.Tests.Importing;

/// <summary>Layers, in files of both kinds alike.</summary>
public sealed class LayerSpecs
{
    private const string Table =
        "0 SECTION 2 TABLES 0 TABLE 2 LAYER 70 2 0 LAYER 2 notes 70 0 62 7 0 LAYER 2 cut 70 0 62 -7 0 ENDTAB 0 ENDSEC";

    private static readonly string Dxf =
        DxfFile.Groups(Table)
        + DxfFile.Of(DxfFile.Line(0, 0, 9, 0, "notes"), DxfFile.Line(0, 5, 9, 5, "extra"));

    private static readonly string Svg = Svgs.Sheet(
        """<g id="notes"><path d="M0 0H9"/></g><g style="display:none"><g id="cut"><path d="M0 5H9"/></g></g><g id="extra"/>"""
    );

    [Theory]
    [InlineData(FileFormat.Dxf, "burn")]
    [InlineData(FileFormat.Svg, "burn")]
    [InlineData(FileFormat.Dxf, "burn", "NOTES")]
    [InlineData(FileFormat.Svg, "burn", "NOTES")]
    public void A_layer_that_is_not_there_is_an_error_that_names_those_that_are(
        FileFormat format,
        params string[] layers
    )
    {
        var error = Should.Throw<ImportException>(() => Read(format, layers));

        error.Message.ShouldContain("no layer named burn.");
        error.Remedies.ShouldHaveSingleItem().ShouldBe("one of its layers: notes, cut, extra");
    }

    [Theory]
    [InlineData(FileFormat.Dxf)]
    [InlineData(FileFormat.Svg)]
    public void A_layer_that_is_hidden_is_there_and_told(FileFormat format)
    {
        var drawing = Read(format, "cut");

        drawing.Chains.ShouldBeEmpty();
        if (format == FileFormat.Svg)
            drawing.Notes.ShouldContain(note => note.What == "hidden element");
    }

    [Theory]
    [InlineData(FileFormat.Dxf)]
    [InlineData(FileFormat.Svg)]
    public void Of_a_layer_that_is_there_only_its_curves_are_read(FileFormat format) =>
        Read(format, "Notes").Chains.ShouldHaveSingleItem().Length.ShouldBe(9, 1e-5);

    [Fact]
    public void Every_DXF_file_has_the_layer_0() =>
        DxfFile
            .Import(
                DxfFile.Of(DxfFile.Line(0, 0, 9, 0, "notes")),
                ImportSettings.Default.WithLayers("0")
            )
            .Chains.ShouldBeEmpty();

    private static ImportedDrawing Read(FileFormat format, params string[] layers)
    {
        var settings = ImportSettings.Default.WithLayers(layers);
        return format == FileFormat.Svg ? Svgs.Read(Svg, settings) : DxfFile.Import(Dxf, settings);
    }
}
