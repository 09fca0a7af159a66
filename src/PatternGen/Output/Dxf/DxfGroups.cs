using System.Numerics;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes groups, the pairs of a code and a value that a DXF is made of, each on a line of its own.</summary>
internal sealed class DxfGroups(OutputBuffer output, int decimals)
{
    /// <summary>Decimals of a bulge: 15 leave at least 11 digits from 1e-5 up; below it 18 leave at least 10.</summary>
    private const int BulgeDecimals = 15;
    private const int SmallBulgeDecimals = 18;
    private const double SmallBulge = 1e-5;

    /// <summary>Three numbers with their codes and line ends.</summary>
    private const int MaxVertexLength = 3 * (FixedPoint.MaxLength + 6);

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

    /// <summary>Writes a turn in degrees.</summary>
    internal void WriteTurn(ReadOnlySpan<byte> code, double degrees)
    {
        output.Write(code);
        output.Write(degrees, ChipCopy.TurnDecimals);
        output.Write("\r\n"u8);
    }

    /// <summary>Writes a coordinate that is rounded already.</summary>
    internal void WriteScaled(ReadOnlySpan<byte> code, long scaled)
    {
        output.Write(code);
        output.WriteScaled(scaled, decimals);
        output.Write("\r\n"u8);
    }

    /// <summary>Writes a corner in the plane, and the bulge of an arc that starts there; 0 is the default.</summary>
    /// <param name="vertex">The corner.</param>
    /// <param name="afterPlace">Groups between the place and the bulge, short.</param>
    internal void Write(in RoundedVertex vertex, ReadOnlySpan<byte> afterPlace = default)
    {
        // Most of a file is corners, hence one piece of buffer for all their groups.
        var room = output.Room(MaxVertexLength + afterPlace.Length);
        var length = Copy("10\r\n"u8, room);
        length += FixedPoint.WriteScaled(room[length..], vertex.X, decimals);
        length += Copy("\r\n20\r\n"u8, room[length..]);
        length += FixedPoint.WriteScaled(room[length..], vertex.Y, decimals);
        length += Copy("\r\n"u8, room[length..]);
        length += Copy(afterPlace, room[length..]);
        if (vertex.Bulge != 0)
            length += WriteBulge(room[length..], vertex.Bulge);
        output.Advance(length);
    }

    /// <summary>Writes what a polyline in space says of itself after its layer and marker.</summary>
    internal void WriteSpatialHead(bool closed)
    {
        Write("66\r\n1\r\n10\r\n0.0\r\n20\r\n0.0\r\n30\r\n0.0\r\n70\r\n"u8);
        Write(closed ? "9\r\n"u8 : "8\r\n"u8);
    }

    /// <summary>Writes a corner in space.</summary>
    internal void Write(in RoundedPlace place)
    {
        WriteScaled("10\r\n"u8, place.X);
        WriteScaled("20\r\n"u8, place.Y);
        WriteScaled("30\r\n"u8, place.Z);
        Write("70\r\n32\r\n"u8);
    }

    /// <summary>Writes the ends of a line.</summary>
    internal void WriteEnds(in RoundedVertex from, in RoundedVertex to)
    {
        WriteScaled("10\r\n"u8, from.X);
        WriteScaled("20\r\n"u8, from.Y);
        Write("30\r\n0.0\r\n"u8);
        WriteScaled("11\r\n"u8, to.X);
        WriteScaled("21\r\n"u8, to.Y);
        Write("31\r\n0.0\r\n"u8);
    }

    /// <summary>Writes the centre and the radius of a circle.</summary>
    internal void Write(Circle circle)
    {
        Write("10\r\n"u8, circle.Centre.X);
        Write("20\r\n"u8, circle.Centre.Y);
        Write("30\r\n0.0\r\n40\r\n"u8, circle.Radius);
    }

    /// <summary>Writes what a text style says of itself, which no entity uses but readers expect.</summary>
    internal void WriteTextStyle(string name) =>
        Write(
            $"""
            2 {name}
            70 0
            40 0.0
            41 1.0
            50 0.0
            71 0
            42 2.5
            3 txt
            4
            """
        );

    /// <summary>Writes a handle: a number above 0 that names an entity, in base 16.</summary>
    internal void WriteHandle(long handle)
    {
        var room = output.Room(16);
        var length = (BitOperations.Log2((ulong)handle) + 4) / 4;
        for (var at = length - 1; at >= 0; at--)
        {
            room[at] = "0123456789ABCDEF"u8[(int)(handle & 15)];
            handle >>= 4;
        }
        output.Advance(length);
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

    private static int WriteBulge(Span<byte> room, double bulge)
    {
        var bulgeDecimals = Math.Abs(bulge) < SmallBulge ? SmallBulgeDecimals : BulgeDecimals;
        var length = Copy("42\r\n"u8, room);
        length += FixedPoint.Write(room[length..], bulge, bulgeDecimals);
        return length + Copy("\r\n"u8, room[length..]);
    }

    private static int Copy(ReadOnlySpan<byte> bytes, Span<byte> room)
    {
        bytes.CopyTo(room);
        return bytes.Length;
    }

    private void WriteLine(ReadOnlySpan<char> text)
    {
        foreach (var character in text)
            output.Write([(byte)character]);
        output.Write("\r\n"u8);
    }
}
