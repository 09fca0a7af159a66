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
}
