using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Reads one length from a text, from left to right, and remembers the first thing that makes no sense.</summary>
internal sealed partial class LengthText(string text)
{
    private const int InchesInFoot = 12;

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
                millimetres = (amount * InchesInFoot + inches) * Inches.Millimetres;
                break;
            case Unit.None:
            case Unit.Inch:
                millimetres = amount * Inches.Millimetres;
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
        var hasHyphen = _at < text.Length && text[_at] == '-';
        if (hasHyphen)
            _at++;
        SkipSpace();
        if (_at == text.Length)
            return !hasHyphen || Fails("inches are missing after the hyphen", _at);
        var start = _at;
        if (!TryAmount(out inches) || !TryUnit(out var unit))
            return false;
        if (unit is not (Unit.None or Unit.Inch))
            return Fails("only inches can follow feet", start);
        return inches < InchesInFoot || Fails("inches after feet are less than 12", start);
    }

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
