namespace PatternGen;

internal sealed partial class R2000File
{
    private void WriteObjects()
    {
        _groups.Write(
            """
            0 SECTION
            2 OBJECTS
            """
        );
        WriteDictionary(
            RootDictionary,
            "0",
            ("ACAD_GROUP", GroupDictionary),
            ("ACAD_LAYOUT", LayoutDictionary),
            ("ACAD_PLOTSTYLENAME", PlotStyleDictionary)
        );
        WriteDictionary(GroupDictionary, RootDictionary);
        WriteDictionary(
            LayoutDictionary,
            RootDictionary,
            ("Layout1", PaperLayout),
            ("Model", ModelLayout)
        );
        WritePlotStyles();
        WriteLayout(ModelLayout, "Model", ModelRecord, order: 0, plotFlags: 1024);
        WriteLayout(PaperLayout, "Layout1", PaperRecord, order: 1, plotFlags: 0);
        _groups.Write("0 ENDSEC");
    }

    private void WriteDictionary(
        string handle,
        string owner,
        params ReadOnlySpan<(string Key, string Handle)> entries
    )
    {
        _groups.Write(
            $"""
            0 DICTIONARY
            5 {handle}
            330 {owner}
            100 AcDbDictionary
            281 1
            """
        );
        foreach (var entry in entries)
            _groups.Write(
                $"""
                3 {entry.Key}
                350 {entry.Handle}
                """
            );
    }

    /// <summary>The plot style that every layer refers to.</summary>
    private void WritePlotStyles() =>
        _groups.Write(
            $"""
            0 ACDBDICTIONARYWDFLT
            5 {PlotStyleDictionary}
            330 {RootDictionary}
            100 AcDbDictionary
            281 1
            3 Normal
            350 {PlotStyle}
            100 AcDbDictionaryWithDefault
            340 {PlotStyle}
            0 ACDBPLACEHOLDER
            5 {PlotStyle}
            330 {PlotStyleDictionary}
            """
        );

    /// <summary>A layout on A4, for whoever plots the drawing; the drawing itself is in model space.</summary>
    private void WriteLayout(string handle, string name, string record, int order, int plotFlags) =>
        _groups.Write(
            $"""
            0 LAYOUT
            5 {handle}
            330 {LayoutDictionary}
            100 AcDbPlotSettings
            1
            2
            4
            6
            40 7.5
            41 7.5
            42 7.5
            43 7.5
            44 297.0
            45 210.0
            46 0.0
            47 0.0
            48 0.0
            49 0.0
            140 0.0
            141 0.0
            142 1.0
            143 1.0
            70 {plotFlags}
            72 1
            73 0
            74 5
            7
            75 16
            147 1.0
            148 0.0
            149 0.0
            100 AcDbLayout
            1 {name}
            70 1
            71 {order}
            10 0.0
            20 0.0
            11 297.0
            21 210.0
            12 0.0
            22 0.0
            32 0.0
            14 0.0
            24 0.0
            34 0.0
            15 0.0
            25 0.0
            35 0.0
            146 0.0
            13 0.0
            23 0.0
            33 0.0
            16 1.0
            26 0.0
            36 0.0
            17 0.0
            27 1.0
            37 0.0
            76 0
            330 {record}
            """
        );
}
