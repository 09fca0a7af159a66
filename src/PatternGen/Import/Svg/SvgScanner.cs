using System.Globalization;

namespace PatternGen;

/// <summary>Reads numbers and flags as SVG writes them: <c>.5.5</c> is two numbers, <c>1e3</c> one, and <c>001</c> can be two flags and a number.</summary>
internal ref struct SvgScanner(ReadOnlySpan<char> text)
{
    private ReadOnlySpan<char> _rest = text;

    /// <summary>What comes next after spaces; the zero character at the end.</summary>
    internal char Next
    {
        get
        {
            SkipSpaces();
            return _rest.IsEmpty ? '\0' : _rest[0];
        }
    }

    internal bool IsAtEnd => Next == '\0' && _rest.IsEmpty;

    internal void Skip() => _rest = _rest[1..];

    /// <summary>Skips spaces and at most one comma.</summary>
    internal void SkipComma()
    {
        if (Next == ',')
            Skip();
    }

    /// <summary>Reads a word of letters.</summary>
    internal ReadOnlySpan<char> Word()
    {
        SkipSpaces();
        var length = 0;
        while (length < _rest.Length && char.IsAsciiLetter(_rest[length]))
            length++;
        return Take(length);
    }

    /// <summary>Reads a flag, one digit that needs nothing after it.</summary>
    internal bool TryFlag(out bool flag)
    {
        SkipComma();
        flag = Next == '1';
        if (!flag && Next != '0')
            return false;
        Skip();
        return true;
    }

    /// <summary>Reads a finite number, after spaces and at most one comma.</summary>
    internal bool TryNumber(out double number)
    {
        SkipComma();
        SkipSpaces();
        number = 0;
        var length = NumberLength();
        return length > 0
            && double.TryParse(
                Take(length),
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out number
            )
            && Math.Abs(number) <= SvgNumbers.MaxNumber;
    }

    private readonly int NumberLength()
    {
        var at = _rest is ['+' or '-', ..] ? 1 : 0;
        var whole = Digits(at);
        at += whole;
        if (at < _rest.Length && _rest[at] == '.')
        {
            var fraction = Digits(at + 1);
            if (whole + fraction == 0)
                return 0;
            at += 1 + fraction;
        }
        else if (whole == 0)
        {
            return 0;
        }
        return at + ExponentLength(at);
    }

    private readonly int ExponentLength(int at)
    {
        if (at >= _rest.Length || (_rest[at] | 0x20) != 'e')
            return 0;
        var sign = at + 1 < _rest.Length && _rest[at + 1] is '+' or '-' ? 1 : 0;
        var digits = Digits(at + 1 + sign);
        // "1em" is a length, not a number with an exponent.
        return digits == 0 ? 0 : 1 + sign + digits;
    }

    private readonly int Digits(int from)
    {
        var at = from;
        while (at < _rest.Length && char.IsAsciiDigit(_rest[at]))
            at++;
        return Math.Max(0, at - from);
    }

    private ReadOnlySpan<char> Take(int length)
    {
        var taken = _rest[..length];
        _rest = _rest[length..];
        return taken;
    }

    private void SkipSpaces()
    {
        var length = 0;
        while (length < _rest.Length && _rest[length] is ' ' or '\t' or '\n' or '\r' or '\f')
            length++;
        _rest = _rest[length..];
    }
}
