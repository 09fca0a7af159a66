using System.Globalization;

namespace PatternGen;

internal sealed partial class LengthText
{
    /// <summary>More digits than any measured length has; more would only overflow.</summary>
    private const int MostDigits = 15;

    private static readonly Dictionary<char, double> Fractions = new()
    {
        ['½'] = 1 / 2.0,
        ['¼'] = 1 / 4.0,
        ['¾'] = 3 / 4.0,
        ['⅛'] = 1 / 8.0,
        ['⅜'] = 3 / 8.0,
        ['⅝'] = 5 / 8.0,
        ['⅞'] = 7 / 8.0,
    };

    /// <summary>A decimal number, a fraction, or a whole number with a fraction.</summary>
    private bool TryAmount(out double amount)
    {
        if (TryFractionSign(out amount))
            return true;
        var start = _at;
        if (!TryNumber(out amount))
            return false;
        if (_at < text.Length && text[_at] == '/')
            return TryOver(amount, start, out amount);
        return TryFractionAfter(ref amount, start);
    }

    /// <summary>Reads what may follow a whole number: <c>3/16</c> after a space or hyphen, or a sign such as ½.</summary>
    private bool TryFractionAfter(ref double amount, int start)
    {
        var end = _at;
        if (_at < text.Length && text[_at] == '-')
            _at++;
        else
            SkipSpace();
        var fractionStart = _at;
        if (TryFractionSign(out var fraction))
        {
            amount += fraction;
            return IsWhole(start, end);
        }
        if (_at == text.Length || !char.IsAsciiDigit(text[_at]))
        {
            // Whatever follows is not a fraction: a unit, the inches after feet, or nothing.
            _at = end;
            return true;
        }
        if (!TryNumber(out var above))
            return false;
        if (_at == text.Length || text[_at] != '/')
            return Fails("a second number follows that is no fraction", fractionStart);
        if (!TryOver(above, fractionStart, out fraction))
            return false;
        amount += fraction;
        return IsWhole(start, end)
            && (
                fraction < 1
                || Fails("the fraction after a whole number is less than 1", fractionStart)
            );
    }

    private bool TryFractionSign(out double fraction)
    {
        fraction = 0;
        if (_at == text.Length || !Fractions.TryGetValue(text[_at], out fraction))
            return false;
        _at++;
        return true;
    }

    private bool TryOver(double above, int start, out double fraction)
    {
        fraction = 0;
        if (!IsWhole(start, _at))
            return false;
        _at++;
        var belowStart = _at;
        if (!TryNumber(out var below) || !IsWhole(belowStart, _at))
            return false;
        if (below == 0)
            return Fails("a fraction cannot have the denominator 0", belowStart);
        fraction = above / below;
        return true;
    }

    private bool IsWhole(int start, int end) =>
        !text.AsSpan(start, end - start).Contains('.')
        || Fails("a fraction goes with whole numbers only", start);

    private bool TryNumber(out double number)
    {
        var start = _at;
        while (_at < text.Length && (char.IsAsciiDigit(text[_at]) || text[_at] == '.'))
            _at++;
        number = 0;
        if (_at < text.Length && text[_at] == ',')
            return Fails("decimals are written with a point, not a comma", _at);
        var digits = text.AsSpan(start, _at - start);
        if (digits.IsEmpty)
            return Fails(start == text.Length ? "a number is missing" : NoNumber(start), start);
        if (digits.Length > MostDigits)
            return Fails("the number has too many digits", start);
        return double.TryParse(
                digits,
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out number
            ) || Fails("this is no number", start);
    }

    private string NoNumber(int at) =>
        text[at] is '-' or '−' ? "a length cannot be negative" : "a number is expected";
}
