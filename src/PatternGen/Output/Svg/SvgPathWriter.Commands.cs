namespace PatternGen;

internal sealed partial class SvgPathWriter
{
    private void WriteRun(ReadOnlySpan<SvgPiece> pieces)
    {
        WriteTo((byte)'M', _run.StartX, _run.StartY);
        foreach (ref readonly var piece in pieces)
            if (piece.IsLine)
                WriteTo((byte)'L', piece.X, piece.Y);
            else
                WriteArc(piece);
    }

    private void WriteTo(byte command, long x, long y)
    {
        var room = output.Room(MaxCommand);
        room[0] = command;
        output.Advance(1 + WritePair(room[1..], x, y));
    }

    private void WriteArc(in SvgPiece piece)
    {
        var room = output.Room(MaxCommand);
        var length = 1;
        room[0] = (byte)'A';
        var radius =
            piece.Radius < LargeRadius
                ? FixedPoint.Write(room[length..], piece.Radius, decimals)
                : FixedPoint.Write(room[length..], piece.Radius, 0);
        // Both radii are the same digits.
        room[length + radius] = (byte)' ';
        room.Slice(length, radius + 1).CopyTo(room[(length + radius + 1)..]);
        length += 2 * (radius + 1);
        var flags = piece.IsClockwise ? "0 0 1 "u8 : "0 0 0 "u8;
        flags.CopyTo(room[length..]);
        length += flags.Length;
        output.Advance(length + WritePair(room[length..], piece.X, piece.Y));
    }

    private int WritePair(Span<byte> to, long x, long y)
    {
        var length = FixedPoint.WriteScaled(to, x, decimals);
        to[length++] = (byte)' ';
        return length + FixedPoint.WriteScaled(to[length..], y, decimals);
    }
}
