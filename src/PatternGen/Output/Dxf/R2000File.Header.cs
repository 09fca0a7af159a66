using PatternGen.Geometry;

namespace PatternGen;

internal sealed partial class R2000File
{
    private void WriteHeader(Extents extents, long handleSeed)
    {
        _groups.Write(
            $"""
            0 SECTION
            2 HEADER
            9 $ACADVER
            1 AC1015
            9 $DWGCODEPAGE
            3 ANSI_1252
            9 $HANDSEED
            5 {handleSeed:X}
            9 $INSUNITS
            70 4
            9 $MEASUREMENT
            70 1
            """
        );
        _groups.WriteExtents(extents);
        _groups.Write("0 ENDSEC");
    }

    private void WriteClasses() =>
        _groups.Write(
            """
            0 SECTION
            2 CLASSES
            0 CLASS
            1 ACDBDICTIONARYWDFLT
            2 AcDbDictionaryWithDefault
            3 ObjectDBX Classes
            90 0
            280 0
            281 0
            0 CLASS
            1 ACDBPLACEHOLDER
            2 AcDbPlaceHolder
            3 ObjectDBX Classes
            90 0
            280 0
            281 0
            0 CLASS
            1 LAYOUT
            2 AcDbLayout
            3 ObjectDBX Classes
            90 0
            280 0
            281 0
            0 ENDSEC
            """
        );

    private void WriteBlocks()
    {
        _groups.Write(
            """
            0 SECTION
            2 BLOCKS
            """
        );
        WriteSpaceBlock("*Model_Space", ModelRecord, ModelBlock, ModelBlockEnd);
        WriteSpaceBlock("*Paper_Space", PaperRecord, PaperBlock, PaperBlockEnd);
        _groups.Write("0 ENDSEC");
    }

    private void WriteSpaceBlock(string name, string record, string begin, string end) =>
        _groups.Write(
            $"""
            0 BLOCK
            5 {begin}
            330 {record}
            100 AcDbEntity
            8 0
            100 AcDbBlockBegin
            2 {name}
            70 0
            10 0.0
            20 0.0
            30 0.0
            3 {name}
            1
            0 ENDBLK
            5 {end}
            330 {record}
            100 AcDbEntity
            8 0
            100 AcDbBlockEnd
            """
        );
}
