using System.Globalization;
using System.Text;

namespace PatternGen.Bench;

/// <summary>The same records through a StreamWriter, with doubles formatted by the framework.</summary>
internal static class DxfBenchText
{
    internal static void Write(Stream stream)
    {
        using var writer = new StreamWriter(stream, Encoding.ASCII, 1 << 16, leaveOpen: true)
        {
            NewLine = "\r\n",
        };
        for (var i = 0; i < SvgBenchChips.Count; i++)
            WriteChip(writer, i);
    }

    private static void WriteChip(StreamWriter writer, int index)
    {
        var left = SvgBenchChips.Left + SvgBenchChips.Pitch * index;
        writer.WriteLine("0");
        writer.WriteLine("LWPOLYLINE");
        writer.WriteLine("5");
        writer.WriteLine((index + 48).ToString("X", CultureInfo.InvariantCulture));
        writer.WriteLine("330");
        writer.WriteLine("11");
        writer.WriteLine("100");
        writer.WriteLine("AcDbEntity");
        writer.WriteLine("8");
        writer.WriteLine("CHIPS");
        writer.WriteLine("100");
        writer.WriteLine("AcDbPolyline");
        writer.WriteLine("90");
        writer.WriteLine("3");
        writer.WriteLine("70");
        writer.WriteLine("1");
        writer.WriteLine("43");
        writer.WriteLine("0.0");
        WriteCorner(writer, left, SvgBenchChips.Low);
        WriteCorner(writer, left + SvgBenchChips.Pitch, SvgBenchChips.Low);
        WriteCorner(
            writer,
            left + SvgBenchChips.Pitch / 2,
            SvgBenchChips.Low + SvgBenchChips.Height
        );
        writer.WriteLine("42");
        writer.WriteLine(
            (-SvgBenchChips.Bulge).ToString("0.###############", CultureInfo.InvariantCulture)
        );
    }

    private static void WriteCorner(StreamWriter writer, double x, double y)
    {
        writer.WriteLine("10");
        writer.WriteLine(x.ToString("0.######", CultureInfo.InvariantCulture));
        writer.WriteLine("20");
        writer.WriteLine(y.ToString("0.######", CultureInfo.InvariantCulture));
    }
}
