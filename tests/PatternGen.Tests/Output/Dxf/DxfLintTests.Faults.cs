namespace PatternGen.Tests.Output.Dxf;

public partial class DxfLintTests
{
    private const string RulePlaces = "10 0|20 10|30 0.0|11 50|21 10|31 0.0|";

    /// <summary>What the fault is, what is replaced (groups, each ended by a bar), by what, and how the finding begins.</summary>
    public static TheoryData<string, string, string, string> R2000Faults =>
        new()
        {
            { "an exponent", "11 50|21 10|", "11 5E+01|21 10|", "number" },
            { "a comma", "11 50|21 10|", "11 50,0|21 10|", "number" },
            { "a negative zero", "10 0|20 10|", "10 -0|20 10|", "number" },
            { "text that is not ASCII", "3 Solid line|", "3 Sólid line|", "text: not ASCII" },
            { "a group after the end", "0 EOF|", "0 EOF|999 end|", "text: does not end" },
            {
                "a section left open",
                "0 ENDSEC|0 SECTION|2 CLASSES|",
                "0 SECTION|2 CLASSES|",
                "section"
            },
            { "a section missing", "2 OBJECTS|", "2 THINGS|", "section" },
            { "inches", "9 $INSUNITS|70 4|", "9 $INSUNITS|70 1|", "header: $INSUNITS" },
            {
                "English units",
                "9 $MEASUREMENT|70 1|",
                "9 $MEASUREMENT|70 0|",
                "header: $MEASUREMENT"
            },
            { "no code page", "9 $DWGCODEPAGE|3 ANSI_1252|", "", "header: no $DWGCODEPAGE" },
            { "wrong extents", "9 $EXTMAX|10 60|", "9 $EXTMAX|10 61|", "header: $EXTMAX" },
            { "a table missing", "2 UCS|5 6|", "2 VIEW|5 6|", "table: UCS" },
            {
                "a wrong count of records",
                "5 3|330 0|100 AcDbSymbolTable|70 7|",
                "5 3|330 0|100 AcDbSymbolTable|70 8|",
                "table: LAYER"
            },
            {
                "no block for model space",
                "100 AcDbBlockBegin|2 *Model_Space|",
                "100 AcDbBlockBegin|2 *Other|",
                "block"
            },
            {
                "the dimension marker twice",
                "0 DIMSTYLE|105 1D|",
                "0 DIMSTYLE|105 1D|100 AcDbDimStyleTable|",
                "order: AcDbDimStyleTable"
            },
            {
                "a layer without plot style",
                "6 Continuous|370 -3|390 E|0 ENDTAB|",
                "6 Continuous|370 -3|0 ENDTAB|",
                "order"
            },
            {
                "the count before its marker",
                "100 AcDbPolyline|90 3|",
                "90 3|100 AcDbPolyline|",
                "order"
            },
            { "a wrong marker", "100 AcDbLine|", "100 AcDbArc|", "order: markers" },
            {
                "an elevation",
                "100 AcDbPolyline|90 3|70 1|43 0.0|",
                "100 AcDbPolyline|90 3|70 1|38 1.0|43 0.0|",
                "order"
            },
            { "an entity that is not allowed", "0 LINE|", "0 SPLINE|", "order" },
            { "a handle twice", "0 LINE|5 31|", "0 LINE|5 30|", "handle: 30" },
            { "the handle 0", "0 LINE|5 31|", "0 LINE|5 0|", "handle: none" },
            { "a low seed", "9 $HANDSEED|5 35|", "9 $HANDSEED|5 34|", "handle: $HANDSEED" },
            {
                "an owner that is not there",
                "0 LINE|5 31|330 11|",
                "0 LINE|5 31|330 FF|",
                "owner: FF"
            },
            {
                "an owner of the wrong kind",
                "0 LINE|5 31|330 11|",
                "0 LINE|5 31|330 14|",
                "owner: 14"
            },
            { "a pointer to nothing", "390 E|0 ENDTAB|", "390 FE|0 ENDTAB|", "owner: LAYER" },
            {
                "a root dictionary that comes later",
                "0 DICTIONARY|5 A|330 0|",
                "0 DICTIONARY|5 A|330 B|",
                "owner"
            },
            {
                "an undeclared layer",
                "8 LAYOUT_LINES|100 AcDbLine|" + RulePlaces,
                "8 RULES|100 AcDbLine|" + RulePlaces,
                "layer: 'RULES'"
            },
            {
                "a colour of its own",
                "8 LAYOUT_LINES|100 AcDbLine|" + RulePlaces,
                "8 LAYOUT_LINES|62 1|100 AcDbLine|" + RulePlaces,
                "layer: colour"
            },
            { "a name in small letters", "2 NOTE|", "2 Note|", "layer: bad name" },
            {
                "a colour out of range",
                "2 NOTE|70 0|62 8|",
                "2 NOTE|70 0|62 256|",
                "layer: bad colour"
            },
            {
                "a line type not declared",
                "2 NOTE|70 0|62 8|6 Continuous|",
                "2 NOTE|70 0|62 8|6 Dashed|",
                "layer: line type"
            },
            { "a line without length", "11 50|21 10|", "11 0|21 10|", "shape: doubled corner" },
            {
                "a doubled corner",
                "90 3|70 1|43 0.0|10 0|20 0|",
                "90 4|70 1|43 0.0|10 0|20 0|10 0|20 0|",
                "shape: doubled corner"
            },
            { "a wrong count of corners", "90 3|70 1|", "90 4|70 1|", "shape: wrong number" },
            {
                "a first corner repeated",
                "10 4|20 4|",
                "10 4|20 4|10 0|20 0|",
                "closed: first corner"
            },
            {
                "a closed contour without its flag",
                "90 3|70 1|43 0.0|10 0|20 0|10 8|20 0|42 0.1|10 4|20 4|",
                "90 4|70 0|43 0.0|10 0|20 0|10 8|20 0|42 0.1|10 4|20 4|10 0|20 0|",
                "closed: no flag"
            },
            { "an arc over a half circle", "42 0.1|", "42 1.5|", "bulge: more" },
            { "a bulge too small", "42 0.1|", "42 0.0000000001|", "bulge: too flat" },
            {
                "an entity twice",
                "10 0|20 12|30 0.0|11 50|21 12|",
                "10 0|20 10|30 0.0|11 50|21 10|",
                "duplicate"
            },
            {
                "a part twice",
                "10 0|20 12|30 0.0|11 50|21 12|",
                "10 0|20 10|30 0.0|11 60|21 10|",
                "overlap"
            },
            { "a gap", "10 0|20 12|", "10 0|20 10.02|", "gap" },
        };
}
