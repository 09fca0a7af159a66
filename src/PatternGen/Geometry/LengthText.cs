using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Reads one length from a text, from left to right, and remembers the first thing that makes no sense.</summary>
internal sealed class LengthText(string text)
{
    private const double MillimetresInInch = 25.4;
    private const int InchesInFoot = 12;

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

    private int _at;

    /// <summary>What is wrong with the text, where, and what would work; null while nothing is.</summary>
    internal string? Problem { get; private set; }

    internal bool TryRead(out double millimetres)
    {
        millimetres = 0;
        SkipSpace();
        if (!TryAmount(out var amount) || !TryUnit(out var unit))
            return false;
        switch (unit)
        {
            case Unit.Feet:
                if (!TryInchesAfterFeet(out var inches))
                    return false;
                millimetres = (amount * InchesInFoot + inches) * MillimetresInInch;
                break;
            case Unit.None:
            case Unit.Inch:
                millimetres = amount * MillimetresInInch;
                break;
            case Unit.Centimetre:
                millimetres = amount * 10;
                break;
            case Unit.Metre:
                millimetres = amount * 1000;
                break;
            default:
                millimetres = amount;
                break;
        }
        return IsAtEnd() && IsOfUsableSize(millimetres);
    }

    private bool TryInchesAfterFeet(out double inches)
    {
        inches = 0;
        if (_at < text.Length && text[_at] == '-')
            _at++;
        SkipSpace();
        if (_at == text.Length)
            return true;
        var start = _at;
        if (!TryAmount(out inches) || !TryUnit(out var unit))
            return false;
        if (unit is not (Unit.None or Unit.Inch))
            return Fails("only inches can follow feet", start);
        return inches < InchesInFoot || Fails("inches after feet are less than 12", start);
    }

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

    private bool TryUnit(out Unit unit)
    {
        unit = Unit.None;
        SkipSpace();
        var start = _at;
        if (_at < text.Length && char.IsLetter(text[_at]))
            while (_at < text.Length && (char.IsLetter(text[_at]) || text[_at] == '.'))
                _at++;
        else
            while (_at < text.Length && text[_at] is '"' or '″' or '”' or '\'' or '′' or '’')
                _at++;
        Unit? named = text[start.._at].ToLowerInvariant() switch
        {
            "" => Unit.None,
            "\"" or "″" or "”" or "''" or "in" or "in." or "inch" or "inches" => Unit.Inch,
            "'" or "′" or "’" or "ft" or "ft." or "foot" or "feet" => Unit.Feet,
            "mm" or "mm." => Unit.Millimetre,
            "cm" or "cm." => Unit.Centimetre,
            "m" => Unit.Metre,
            _ => null,
        };
        unit = named ?? Unit.None;
        if (named is null)
            return Fails($"'{text[start.._at]}' is no unit known here", start);
        SkipSpace();
        return true;
    }

    private bool IsAtEnd() => _at == text.Length || Fails("nothing can follow here", _at);

    private bool IsOfUsableSize(double millimetres) =>
        millimetres <= Guard.MaxSize || Fails("a length is at most 1 km", 0);

    private void SkipSpace()
    {
        while (_at < text.Length && char.IsWhiteSpace(text[_at]))
            _at++;
    }

    private bool Fails(string problem, int at)
    {
        Problem ??=
            $"\"{text}\" gives no length: {problem}, at character {at + 1}. "
            + "What works: 29 3/16, 29.1875\", 2' 5 3/16\", 742.5 mm, 74.25 cm.";
        return false;
    }

    private enum Unit
    {
        None,
        Inch,
        Feet,
        Millimetre,
        Centimetre,
        Metre,
    }
}
