using System.Text.RegularExpressions;

namespace PatternGen.Tests.Output.Dxf;

internal sealed partial class DxfLint
{
    private const string TableHead = "2 5 330 100 70";
    private const string RecordHead = "5 330 100 100";
    private const string EntityHead = "5 330 100 8 100";

    /// <summary>Codes in their order, as the DXF Reference lists them for release 2000, without optional defaults.</summary>
    private static readonly Dictionary<string, string> R2000Codes = new()
    {
        ["CLASS"] = "1 2 3 90 280 281",
        ["TABLE"] = $"{TableHead}( 100)?",
        ["VPORT"] =
            $"{RecordHead} 2 70 10 20 11 21 12 22 13 23 14 24 15 25 16 26 36 17 27 37 40 41 42 43 44 50 51 71 72 73 74 75 76 77 78 281 65",
        ["LTYPE"] = $"{RecordHead} 2 70 3 72 73 40",
        ["LAYER"] = $"{RecordHead} 2 70 62 6 370 390",
        ["STYLE"] = $"{RecordHead} 2 70 40 41 50 71 42 3 4",
        ["APPID"] = $"{RecordHead} 2 70",
        ["DIMSTYLE"] = "105 330 100 100 2 70",
        ["BLOCK_RECORD"] = $"{RecordHead} 2 340",
        ["BLOCK"] = $"{EntityHead} 2 70 10 20 30 3 1",
        ["ENDBLK"] = EntityHead,
        ["LINE"] = $"{EntityHead} 10 20 30 11 21 31",
        ["CIRCLE"] = $"{EntityHead} 10 20 30 40",
        ["LWPOLYLINE"] = $"{EntityHead} 90 70 43( 10 20( 42)?)+",
        // A polyline in space.
        ["POLYLINE"] = $"{EntityHead} 66 10 20 30 70",
        ["VERTEX"] = $"{EntityHead} 100 10 20 30 70",
        ["SEQEND"] = "5 330 100 8",
        // Neither scale nor extrusion: readers disagree about mirrored arcs.
        ["INSERT"] = $"{EntityHead} 2 10 20 30( 50)?",
        ["DICTIONARY"] = "5 330 100 281( 3 350)*",
        ["ACDBDICTIONARYWDFLT"] = "5 330 100 281( 3 350)* 100 340",
        ["ACDBPLACEHOLDER"] = "5 330",
        ["LAYOUT"] =
            "5 330 100 1 2 4 6 40 41 42 43 44 45 46 47 48 49 140 141 142 143 70 72 73 74 7 75 147 148 149"
            + " 100 1 70 71 10 20 11 21 12 22 32 14 24 34 15 25 35 146 13 23 33 16 26 36 17 27 37 76 330",
    };

    /// <summary>The same for release 12, which knows neither handles nor markers.</summary>
    private static readonly Dictionary<string, string> R12Codes = new()
    {
        ["TABLE"] = "2 70",
        ["LTYPE"] = "2 70 3 72 73 40",
        ["LAYER"] = "2 70 62 6",
        ["STYLE"] = "2 70 40 41 50 71 42 3 4",
        ["LINE"] = "8 10 20 30 11 21 31",
        ["CIRCLE"] = "8 10 20 30 40",
        ["POLYLINE"] = "8 66 10 20 30 70",
        ["VERTEX"] = "8 10 20 30( 42| 70)?",
        ["SEQEND"] = "8",
    };

    private static readonly Dictionary<string, string> Markers = new()
    {
        ["LINE"] = "AcDbEntity AcDbLine",
        ["CIRCLE"] = "AcDbEntity AcDbCircle",
        ["LWPOLYLINE"] = "AcDbEntity AcDbPolyline",
        ["POLYLINE"] = "AcDbEntity AcDb3dPolyline",
        ["VERTEX"] = "AcDbEntity AcDbVertex AcDb3dPolylineVertex",
        ["SEQEND"] = "AcDbEntity",
        ["INSERT"] = "AcDbEntity AcDbBlockReference",
        ["BLOCK"] = "AcDbEntity AcDbBlockBegin",
        ["ENDBLK"] = "AcDbEntity AcDbBlockEnd",
        ["VPORT"] = "AcDbSymbolTableRecord AcDbViewportTableRecord",
        ["LTYPE"] = "AcDbSymbolTableRecord AcDbLinetypeTableRecord",
        ["LAYER"] = "AcDbSymbolTableRecord AcDbLayerTableRecord",
        ["STYLE"] = "AcDbSymbolTableRecord AcDbTextStyleTableRecord",
        ["APPID"] = "AcDbSymbolTableRecord AcDbRegAppTableRecord",
        ["DIMSTYLE"] = "AcDbSymbolTableRecord AcDbDimStyleTableRecord",
        ["BLOCK_RECORD"] = "AcDbSymbolTableRecord AcDbBlockTableRecord",
        ["DICTIONARY"] = "AcDbDictionary",
        ["ACDBDICTIONARYWDFLT"] = "AcDbDictionary AcDbDictionaryWithDefault",
        ["LAYOUT"] = "AcDbPlotSettings AcDbLayout",
    };

    private void CheckGroupOrder()
    {
        var known = IsR12 ? R12Codes : R2000Codes;
        foreach (var record in _document.Records)
        {
            if (record.Type is "SECTION" or "ENDSEC" or "ENDTAB" or "EOF")
                continue;
            Require(
                known.TryGetValue(record.Type, out var codes)
                    && Regex.IsMatch(record.Codes, $"^{codes}$"),
                $"order: groups of {record.Type} at line {record.Line}: {record.Codes}"
            );
            Require(
                IsR12
                    || !Markers.TryGetValue(record.Type, out var markers)
                    || string.Join(' ', record.Markers) == markers,
                $"order: markers of {record.Type} at line {record.Line}"
            );
        }
        Require(
            IsR12 || _document.Groups.Count(group => group.Value == "AcDbDimStyleTable") == 1,
            "order: AcDbDimStyleTable belongs in the head of DIMSTYLE, once"
        );
    }
}
