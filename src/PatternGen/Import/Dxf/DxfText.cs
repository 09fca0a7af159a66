using System.Globalization;
using System.Text;

namespace PatternGen;

/// <summary>Numbers and names as a DXF file writes them.</summary>
internal static class DxfText
{
    private const int LongestShown = 40;

    /// <summary>Powers of ten that are exact as doubles.</summary>
    private static readonly double[] Powers =
    [
        1e0,
        1e1,
        1e2,
        1e3,
        1e4,
        1e5,
        1e6,
        1e7,
        1e8,
        1e9,
        1e10,
        1e11,
        1e12,
        1e13,
        1e14,
        1e15,
        1e16,
        1e17,
        1e18,
        1e19,
        1e20,
        1e21,
        1e22,
    ];

    private static readonly UTF8Encoding Utf8 = new(false, throwOnInvalidBytes: true);

    internal static ReadOnlySpan<byte> Trimmed(ReadOnlySpan<byte> text)
    {
        var (start, end) = (0, text.Length);
        while (start < end && IsSpace(text[start]))
            start++;
        while (end > start && IsSpace(text[end - 1]))
            end--;
        return text[start..end];
    }

    /// <summary>Reads a finite number with a decimal point.</summary>
    internal static bool TryNumber(ReadOnlySpan<byte> text, out double number) =>
        TryPlain(text, out number)
        || (
            double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number)
            && double.IsFinite(number)
        );

    /// <summary>Returns text for people: cut short, with nothing that would not print.</summary>
    internal static string Shown(ReadOnlySpan<byte> text)
    {
        var shown = new StringBuilder();
        foreach (var letter in Decoded(text[..Math.Min(text.Length, LongestShown)]))
            shown.Append(char.IsControl(letter) ? '?' : letter);
        return text.Length > LongestShown ? shown.Append("...").ToString() : shown.ToString();
    }

    /// <summary>Returns a name with its characters beyond ASCII: as UTF-8, or one byte each, or written <c>\U+00E9</c>.</summary>
    internal static string Decoded(ReadOnlySpan<byte> text)
    {
        string plain;
        try
        {
            plain = Utf8.GetString(text);
        }
        catch (ArgumentException)
        {
            plain = Encoding.Latin1.GetString(text);
        }
        return plain.Contains(@"\U+", StringComparison.OrdinalIgnoreCase)
            ? Unescaped(plain)
            : plain;
    }

    private static string Unescaped(string text)
    {
        var letters = new StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            var isEscape =
                i + 7 <= text.Length
                && text.AsSpan(i, 3).Equals(@"\U+", StringComparison.OrdinalIgnoreCase);
            if (
                isEscape
                && ushort.TryParse(
                    text.AsSpan(i + 3, 4),
                    NumberStyles.AllowHexSpecifier,
                    CultureInfo.InvariantCulture,
                    out var code
                )
            )
            {
                letters.Append((char)code);
                i += 6;
            }
            else
                letters.Append(text[i]);
        }
        return letters.ToString();
    }

    /// <summary>
    /// Digits and a point only, as nearly all numbers of a file are. Up to 2^53 the digits are exact as a double, and so is
    /// the power of ten: their quotient is rounded once, which makes it the nearest double.
    /// </summary>
    private static bool TryPlain(ReadOnlySpan<byte> text, out double number)
    {
        number = 0;
        var at = text.Length > 0 && text[0] == '-' ? 1 : 0;
        var isNegative = at == 1;
        ulong digits = 0;
        var count = 0;
        var decimals = -1;
        for (; at < text.Length; at++)
        {
            var letter = text[at];
            if (letter == '.' && decimals < 0)
                decimals = 0;
            else if (letter is >= (byte)'0' and <= (byte)'9' && count < 18)
            {
                digits = 10 * digits + (ulong)(letter - '0');
                count++;
                if (decimals >= 0)
                    decimals++;
            }
            else
                return false;
        }
        if (count == 0 || digits > 1UL << 53)
            return false;
        number = decimals > 0 ? digits / Powers[decimals] : digits;
        if (isNegative)
            number = -number;
        return true;
    }

    private static bool IsSpace(byte letter) => letter is (byte)' ' or (byte)'\t' or 0x0B or 0x0C;
}
