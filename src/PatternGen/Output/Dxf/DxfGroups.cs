using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes groups, the pairs of a code and a value that a DXF is made of, each on a line of its own.</summary>
internal sealed class DxfGroups(OutputBuffer output, int decimals)
{
    /// <summary>Decimals of a bulge: 15 leave at least 11 digits from 1e-5 up; below it 18 leave at least 10.</summary>
    private const int BulgeDecimals = 15;
    private const int SmallBulgeDecimals = 18;
    private const double SmallBulge = 1e-5;

    /// <summary>Writes groups in a readable form, for what is written once in a file.</summary>
    /// <param name="groups">ASCII; a group a line, as code, space, value. A code alone has an empty value.</param>
    internal void Write(string groups)
    {
        foreach (var group in groups.AsSpan().EnumerateLines())
        {
            var space = group.IndexOf(' ');
            WriteLine(space < 0 ? group : group[..space]);
            WriteLine(space < 0 ? default : group[(space + 1)..]);
        }
    }

    /// <summary>Writes bytes as they are: lines that end in CR LF.</summary>
    internal void Write(ReadOnlySpan<byte> lines) => output.Write(lines);

    internal void Write(ReadOnlySpan<byte> code, long value)
    {
        output.Write(code);
        output.Write(value);
        output.Write("\r\n"u8);
    }

    /// <summary>Writes a coordinate or length in mm.</summary>
    internal void Write(ReadOnlySpan<byte> code, double value)
    {
        output.Write(code);
        output.Write(value, decimals);
        output.Write("\r\n"u8);
    }

    /// <summary>Writes a coordinate that is rounded already.</summary>
    internal void WriteScaled(ReadOnlySpan<byte> code, long scaled)
    {
        output.Write(code);
        output.WriteScaled(scaled, decimals);
        output.Write("\r\n"u8);
    }

    /// <summary>Writes a bulge, and nothing for a line, whose bulge is the default.</summary>
    internal void WriteBulge(double bulge)
    {
        if (bulge == 0)
            return;
        output.Write("42\r\n"u8);
        output.Write(bulge, Math.Abs(bulge) < SmallBulge ? SmallBulgeDecimals : BulgeDecimals);
        output.Write("\r\n"u8);
    }

    /// <summary>Writes a handle: a number that names an entity, in base 16.</summary>
    internal void WriteHandle(long handle)
    {
        Span<byte> digits = stackalloc byte[16];
        handle.TryFormat(
            digits,
            out var count,
            "X",
            System.Globalization.CultureInfo.InvariantCulture
        );
        output.Write(digits[..count]);
    }

    internal void WriteExtents(Extents extents)
    {
        Write("9 $EXTMIN");
        WritePoint(extents.Min);
        Write("9 $EXTMAX");
        WritePoint(extents.Max);
    }

    private void WritePoint(Point point)
    {
        Write("10\r\n"u8, point.X);
        Write("20\r\n"u8, point.Y);
        Write("30\r\n0.0\r\n"u8);
    }

    private void WriteLine(ReadOnlySpan<char> text)
    {
        foreach (var character in text)
            output.Write([(byte)character]);
        output.Write("\r\n"u8);
    }
}
