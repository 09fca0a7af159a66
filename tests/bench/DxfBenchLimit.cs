using System.Buffers;

namespace PatternGen.Bench;

/// <summary>
/// The numbers of the same records and nothing else, known as integers beforehand: what no writer of these chips beats
/// by much.
/// </summary>
internal static class DxfBenchLimit
{
    private const int MaxChip = 7 * 21;

    internal static void Write(Stream stream)
    {
        var buffer = ArrayPool<byte>.Shared.Rent(1 << 16);
        var start = SvgBenchLimit.Scaled(SvgBenchChips.Left);
        var low = SvgBenchLimit.Scaled(SvgBenchChips.Low);
        var high = SvgBenchLimit.Scaled(SvgBenchChips.Low + SvgBenchChips.Height);
        var pitch = SvgBenchLimit.Scaled(SvgBenchChips.Pitch);
        var bulge = SvgBenchLimit.Scaled(SvgBenchChips.Bulge);
        var count = 0;
        for (var i = 0; i < SvgBenchChips.Count; i++)
        {
            if (buffer.Length - count < MaxChip)
            {
                stream.Write(buffer, 0, count);
                count = 0;
            }
            var left = start + pitch * i;
            Append(left, low);
            Append(left + pitch, low);
            Append(left + pitch / 2, high);
            count += SvgBenchLimit.Digits(buffer.AsSpan(count), bulge);
        }
        stream.Write(buffer, 0, count);
        ArrayPool<byte>.Shared.Return(buffer);

        void Append(long x, long y)
        {
            count += SvgBenchLimit.Digits(buffer.AsSpan(count), x);
            count += SvgBenchLimit.Digits(buffer.AsSpan(count), y);
        }
    }
}
