using System.Globalization;
using System.Text;

namespace PatternGen.Bench;

/// <summary>Writes a large DXF as machines' programs write them: handles and subclass markers, six decimals.</summary>
internal static class ImportBenchFile
{
    private const int InARow = 400;
    private const double Pitch = 12;

    internal static void Write(string path, int outlines)
    {
        using var file = new StreamWriter(path, false, Encoding.ASCII, 1 << 16) { NewLine = "\n" };
        Groups(file, $"0 SECTION 2 HEADER 9 $ACADVER 1 AC1015 9 $INSUNITS 70 4 0 ENDSEC");
        Groups(file, $"0 SECTION 2 ENTITIES");
        for (var i = 0; i < outlines; i++)
        {
            var (x, y) = (i % InARow * Pitch + 0.123456, i / InARow * Pitch + 0.654321);
            var handle = 256 + 4 * i;
            Line(file, handle, x, y, x + 10, y);
            Line(file, handle + 1, x + 10, y, x + 10, y + 8);
            Groups(
                file,
                $"0 LWPOLYLINE 5 {handle + 2:X} 100 AcDbEntity 8 CUT 100 AcDbPolyline 90 4 70 0 43 0.0 10 {x + 10:F6} 20 {y + 8:F6} 42 0.2 10 {x + 5:F6} 20 {y + 8:F6} 42 -0.1 10 {x:F6} 20 {y + 8:F6} 10 {x:F6} 20 {y:F6}"
            );
            Groups(
                file,
                $"0 CIRCLE 5 {handle + 3:X} 100 AcDbEntity 8 HOLES 100 AcDbCircle 10 {x + 4:F6} 20 {y + 4:F6} 30 0.0 40 1.25"
            );
        }
        Groups(file, $"0 ENDSEC 0 EOF");
    }

    private static void Line(
        StreamWriter file,
        int handle,
        double x,
        double y,
        double toX,
        double toY
    ) =>
        Groups(
            file,
            $"0 LINE 5 {handle:X} 100 AcDbEntity 8 CUT 100 AcDbLine 10 {x:F6} 20 {y:F6} 30 0.0 11 {toX:F6} 21 {toY:F6} 31 0.0"
        );

    /// <summary>Codes and values with blanks between, each on its line.</summary>
    private static void Groups(StreamWriter file, FormattableString groups) =>
        file.WriteLine(groups.ToString(CultureInfo.InvariantCulture).Replace(' ', '\n'));
}
