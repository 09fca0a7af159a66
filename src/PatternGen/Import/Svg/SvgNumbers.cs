using System.Globalization;
using System.Text;

namespace PatternGen;

/// <summary>Writes numbers so that every reader takes them alike: fixed point, no exponent, a space between.</summary>
internal static class SvgNumbers
{
    /// <summary>Numbers beyond this are none of a drawing's: squares of them, and of their squares, stay finite in double.</summary>
    internal const double MaxNumber = 1e30;

    /// <summary>Appends a space and a number.</summary>
    internal static StringBuilder Number(this StringBuilder text, double number) =>
        text.Append(' ').Append(Number(number));

    internal static string Number(double number) =>
        number.ToString("0.###############", CultureInfo.InvariantCulture);
}
