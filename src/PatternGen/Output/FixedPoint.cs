using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Writes numbers in fixed point: a decimal point whatever the culture, no exponent, no trailing zeros, no "-0".
/// </summary>
/// <remarks>
/// Rounds the exact binary value, half to even. The framework's formatter does the same for any format string, but
/// takes about five times as long; drawings are mostly numbers.
/// </remarks>
internal static class FixedPoint
{
    /// <summary>Sign, 19 digits and a point.</summary>
    internal const int MaxLength = 24;

    /// <summary>
    /// From here on a scaled double has no fraction left to round. It is 4.5e9 for six decimals, where the largest
    /// pattern reaches to 1e6.
    /// </summary>
    private const double TooLarge = 1L << 52;

    private static readonly ulong[] Powers =
    [
        1,
        10,
        100,
        1_000,
        10_000,
        100_000,
        1_000_000,
        10_000_000,
        100_000_000,
        1_000_000_000,
        10_000_000_000,
        100_000_000_000,
        1_000_000_000_000,
        10_000_000_000_000,
        100_000_000_000_000,
        1_000_000_000_000_000,
        10_000_000_000_000_000,
        100_000_000_000_000_000,
        1_000_000_000_000_000_000,
    ];

    private static ReadOnlySpan<byte> DigitPairs =>
        "00010203040506070809101112131415161718192021222324252627282930313233343536373839404142434445464748495051525354555657585960616263646566676869707172737475767778798081828384858687888990919293949596979899"u8;

    /// <summary>Writes a number and returns how many bytes it took.</summary>
    /// <param name="to">At least <see cref="MaxLength"/> bytes.</param>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals at most, 0 to 18; trailing zeros are cut.</param>
    /// <exception cref="PatternException">The number is not finite or too large to be written.</exception>
    internal static int Write(Span<byte> to, double value, int decimals) =>
        WriteScaled(to, Scale(value, decimals), decimals);

    /// <summary>Returns the number in units of the last decimal: what is written, as an integer.</summary>
    /// <exception cref="PatternException">The number is not finite or too large to be written.</exception>
    internal static long Scale(double value, int decimals)
    {
        double power = Powers[decimals];
        var scaled = value * power;
        if (!(Math.Abs(scaled) < TooLarge))
            throw new PatternException(
                $"The number {Guard.Text(value)} can't be written with {decimals} decimals.",
                remedies: ["a pattern within 1 km of the origin", "fewer decimals"]
            );
        // What the product lost by rounding; it decides exact ties only.
        var lost = Math.FusedMultiplyAdd(value, power, -scaled);
        var rounded = Math.Round(scaled);
        var rest = scaled - rounded;
        if (rest == 0.5 && lost > 0)
            rounded += 1;
        else if (rest == -0.5 && lost < 0)
            rounded -= 1;
        return (long)rounded;
    }

    internal static int WriteScaled(Span<byte> to, long scaled, int decimals)
    {
        var length = 0;
        var size = (ulong)scaled;
        if (scaled < 0)
        {
            to[length++] = (byte)'-';
            size = (ulong)-scaled;
        }
        var power = Powers[decimals];
        var whole = size / power;
        var fraction = size - whole * power;
        length += WriteWhole(to[length..], whole);
        return fraction == 0 ? length : length + WriteFraction(to[length..], fraction, decimals);
    }

    private static int WriteWhole(Span<byte> to, ulong value)
    {
        if (value < 10)
        {
            to[0] = (byte)('0' + value);
            return 1;
        }
        var count = CountDigits(value);
        WriteDigits(to[..count], value);
        return count;
    }

    private static int WriteFraction(Span<byte> to, ulong fraction, int decimals)
    {
        to[0] = (byte)'.';
        var digits = to.Slice(1, decimals);
        WriteDigits(digits, fraction);
        var count = decimals;
        while (digits[count - 1] == (byte)'0')
            count--;
        return 1 + count;
    }

    /// <summary>Fills the span with the value's digits, leading zeros included.</summary>
    private static void WriteDigits(Span<byte> to, ulong value)
    {
        var at = to.Length;
        while (at >= 2)
        {
            var rest = value / 100;
            var pair = (int)(value - rest * 100) * 2;
            to[--at] = DigitPairs[pair + 1];
            to[--at] = DigitPairs[pair];
            value = rest;
        }
        if (at == 1)
            to[0] = (byte)('0' + value % 10);
    }

    private static int CountDigits(ulong value)
    {
        var count = 1;
        while (count < Powers.Length && value >= Powers[count])
            count++;
        return count;
    }
}
