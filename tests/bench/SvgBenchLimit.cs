using System.Buffers;

namespace PatternGen.Bench;

/// <summary>
/// The numbers of the same paths and nothing else, known as integers beforehand: what no writer of these chips beats
/// by much.
/// </summary>
internal static class SvgBenchLimit
{
    private const long Unit = 1_000_000;
    private const int MaxChip = 8 * 21;

    internal static void Write(Stream stream)
    {
        var buffer = ArrayPool<byte>.Shared.Rent(1 << 16);
        var low = Scaled(SvgBenchChips.Margin + SvgBenchChips.Height);
        var high = Scaled(SvgBenchChips.Margin);
        var pitch = Scaled(SvgBenchChips.Pitch);
        var radius = Scaled(SvgBenchChips.Radius);
        var count = 0;
        for (var i = 0; i < SvgBenchChips.Count; i++)
        {
            if (buffer.Length - count < MaxChip)
            {
                stream.Write(buffer, 0, count);
                count = 0;
            }
            var left = high + pitch * i;
            Append(left, low);
            Append(left + pitch, low);
            Append(left + pitch / 2, high);
            Append(radius, radius);
            Append(left, low);
        }
        stream.Write(buffer, 0, count);
        ArrayPool<byte>.Shared.Return(buffer);

        void Append(long x, long y)
        {
            count += Digits(buffer.AsSpan(count), x);
            count += Digits(buffer.AsSpan(count), y);
        }
    }

    internal static long Scaled(double value) => (long)Math.Round(value * Unit);

    /// <summary>Writes a number, the point before its last six digits, and a space.</summary>
    internal static int Digits(Span<byte> to, long value)
    {
        var (whole, fraction) = ((uint)(value / Unit), (uint)(value % Unit));
        var length = 1;
        for (var power = 10u; whole >= power; power *= 10)
            length++;
        to[length + 7] = (byte)' ';
        for (var i = length + 6; i > length; i--)
        {
            to[i] = (byte)('0' + fraction % 10);
            fraction /= 10;
        }
        to[length] = (byte)'.';
        for (var i = length - 1; i >= 0; i--)
        {
            to[i] = (byte)('0' + whole % 10);
            whole /= 10;
        }
        return length + 8;
    }
}
