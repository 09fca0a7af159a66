using System.Globalization;
using System.Text;

namespace PatternGen;

/// <summary>Writes numbers so that every reader takes them alike: fixed point, no exponent, a space between.</summary>
internal static class SvgNumbers
{
    /// <summary>Numbers beyond this are none of a drawing's: squares of them, and of their squares, stay finite in double.</summary>
    internal const double MaxNumber = 1e30;

    /// <summary>Appends a space and a number.</summary>
    internal static StringBuilder Number(this StringBuilder text, double number)
    {
        text.Append(' ');
        Span<char> digits = stackalloc char[32];
        // In this range the shortest form has no exponent, and takes a quarter of the time.
        return
            (number == 0 || Math.Abs(number) is >= 1e-4 and < 1e15)
            && number.TryFormat(digits, out var length, default, CultureInfo.InvariantCulture)
            ? text.Append(digits[..length])
            : text.Append(Number(number));
    }

    internal static string Number(double number) =>
        number.ToString("0.###############", CultureInfo.InvariantCulture);
}
