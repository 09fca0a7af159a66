using PatternGen.Geometry;

namespace PatternGen;

internal sealed partial class R2000File
{
    private void WriteTables(Extents extents)
    {
        _groups.Write(
            """
            0 SECTION
            2 TABLES
            """
        );
        WriteViewports(extents);
        WriteLineTypes();
        WriteLayers();
        WriteStyles();
        WriteTable("VIEW", ViewTable, 0);
        WriteTableEnd();
        WriteTable("UCS", UcsTable, 0);
        WriteTableEnd();
        WriteApplications();
        WriteDimensionStyles();
        WriteBlockRecords();
        _groups.Write("0 ENDSEC");
    }

    private void WriteLineTypes()
    {
        WriteTable("LTYPE", LineTypeTable, 3);
        WriteLineType(ByBlockLineType, "ByBlock", "");
        WriteLineType(ByLayerLineType, "ByLayer", "");
        WriteLineType(ContinuousLineType, "Continuous", "Solid line");
        WriteTableEnd();
    }

    private void WriteLineType(string handle, string name, string text)
    {
        WriteRecord("LTYPE", handle, LineTypeTable, "AcDbLinetypeTableRecord");
        _groups.Write(
            $"""
            2 {name}
            70 0
            3 {text}
            72 65
            73 0
            40 0.0
            """
        );
    }

    private void WriteLayers()
    {
        var layers = _layers;
        WriteTable("LAYER", LayerTable, layers.Count + 1);
        WriteLayer(LayerZero, "0", colour: 7);
        for (var i = 0; i < layers.Count; i++)
            WriteLayer(
                $"{FirstLayer + i:X}",
                DxfLayers.NameOf(layers[i]),
                DxfLayers.ColourOf(layers[i])
            );
        WriteTableEnd();
    }

    private void WriteLayer(string handle, string name, int colour)
    {
        WriteRecord("LAYER", handle, LayerTable, "AcDbLayerTableRecord");
        _groups.Write(
            $"""
            2 {name}
            70 0
            62 {colour}
            6 Continuous
            370 -3
            390 {PlotStyle}
            """
        );
    }

    private void WriteStyles()
    {
        WriteTable("STYLE", StyleTable, 1);
        WriteRecord("STYLE", TextStyle, StyleTable, "AcDbTextStyleTableRecord");
        _groups.WriteTextStyle("Standard");
        WriteTableEnd();
    }

    private void WriteApplications()
    {
        WriteTable("APPID", ApplicationTable, 1);
        WriteRecord("APPID", Application, ApplicationTable, "AcDbRegAppTableRecord");
        _groups.Write(
            """
            2 ACAD
            70 0
            """
        );
        WriteTableEnd();
    }

    private void WriteDimensionStyles()
    {
        WriteTable("DIMSTYLE", DimensionTable, 1);
        _groups.Write("100 AcDbDimStyleTable");
        // The one record whose handle has code 105, since 5 is taken by an arrow block's name.
        _groups.Write(
            $"""
            0 DIMSTYLE
            105 {DimensionStyle}
            330 {DimensionTable}
            100 AcDbSymbolTableRecord
            100 AcDbDimStyleTableRecord
            2 Standard
            70 0
            """
        );
        WriteTableEnd();
    }

    private void WriteBlockRecords()
    {
        WriteTable("BLOCK_RECORD", BlockTable, 2 + _shapes.Count);
        WriteBlockRecord(ModelRecord, "*Model_Space", ModelLayout);
        WriteBlockRecord(PaperRecord, "*Paper_Space", PaperLayout);
        for (var i = 0; i < _shapes.Count; i++)
            WriteBlockRecord($"{_blockHandles[i]:X}", BlockName(i), NoLayout);
        WriteTableEnd();
    }

    private void WriteBlockRecord(string handle, string name, string layout)
    {
        WriteRecord("BLOCK_RECORD", handle, BlockTable, "AcDbBlockTableRecord");
        _groups.Write(
            $"""
            2 {name}
            340 {layout}
            """
        );
    }

    private void WriteTable(string name, string handle, int recordCount) =>
        _groups.Write(
            $"""
            0 TABLE
            2 {name}
            5 {handle}
            330 0
            100 AcDbSymbolTable
            70 {recordCount}
            """
        );

    private void WriteTableEnd() => _groups.Write("0 ENDTAB");

    private void WriteRecord(string type, string handle, string table, string marker) =>
        _groups.Write(
            $"""
            0 {type}
            5 {handle}
            330 {table}
            100 AcDbSymbolTableRecord
            100 {marker}
            """
        );
}
