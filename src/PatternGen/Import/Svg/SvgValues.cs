using System.Text;

namespace PatternGen;

/// <summary>Reads the values of attributes, and writes them as plainly as can be.</summary>
internal sealed class SvgValues(ImportLimits limits)
{
    /// <summary>Longest text that is kept of a title, label or style sheet.</summary>
    internal const int MostText = 1 << 20;

    /// <summary>Most transforms in one list: far more than a hand or a program writes.</summary>
    private const int MostTransforms = 1000;

    private readonly SvgPathText _path = new();

    /// <summary>Segments that the file may still have: all of its elements share the limit, so that many can't do what one may not.</summary>
    private int _left = limits.Segments;

    internal SvgReading Read(string kind, string name, string value) =>
        name switch
        {
            "d" => kind == "path" ? Path(value) : default,
            "points" => kind is "polygon" or "polyline" ? Points(value) : default,
            "transform" => Transform(value),
            "viewBox" => Box(value),
            "preserveAspectRatio" => Aspect(value),
            "x" or "y" or "width" or "height" => Length(kind, name, value),
            "rx" or "ry" => kind is "rect" or "ellipse" ? Length(kind, name, value) : default,
            "cx" or "cy" or "r" => kind is "circle" or "ellipse"
                ? Length(kind, name, value)
                : default,
            "x1" or "y1" or "x2" or "y2" => kind == "line" ? Length(kind, name, value) : default,
            _ => default,
        };

    private SvgReading Path(string value)
    {
        var data = new SvgPathData(value, new(_path), _left);
        var isWhole = data.Read();
        var text = _path.Take();
        if (data.IsTooMuch)
            return new(null, IsTooMuch: true);
        _left -= data.Count;
        return isWhole ? new(text) : new(text, "rest of path data that can't be read");
    }

    private SvgReading Points(string value)
    {
        var text = new StringBuilder();
        var numbers = new SvgScanner(value);
        while (numbers.TryNumber(out var x) && numbers.TryNumber(out var y))
        {
            if (--_left < 0)
                return new(null, IsTooMuch: true);
            text.Number(x).Number(y);
        }
        return numbers.IsAtEnd
            ? new(text.ToString())
            : new(text.ToString(), "rest of points that can't be read");
    }

    private static SvgReading Transform(string value)
    {
        if (value.AsSpan().Trim() is "none" or "")
            return default;
        var text = new StringBuilder();
        var list = new SvgScanner(value);
        for (var count = 0; !list.IsAtEnd; count++)
        {
            list.SkipComma();
            if (count == MostTransforms || !TryTransform(ref list, text))
                return new(
                    null,
                    "it is no list of transforms",
                    IsFatal: true,
                    "matrix(a b c d e f), translate(x y), scale(x y), rotate(degrees x y), skewX or skewY (degrees), in any number"
                );
        }
        return new(text.ToString());
    }

    private static bool TryTransform(ref SvgScanner list, StringBuilder text)
    {
        var kind = list.Word().ToString();
        if (list.Next != '(')
            return false;
        list.Skip();
        Span<double> numbers = stackalloc double[6];
        var count = 0;
        while (count < numbers.Length && list.Next != ')' && list.TryNumber(out var number))
            numbers[count++] = number;
        if (list.Next != ')')
            return false;
        list.Skip();
        var isRight = (kind, count) switch
        {
            ("matrix", 6) => true,
            ("translate" or "scale", 1 or 2) => true,
            ("rotate", 1 or 3) => true,
            ("skewX" or "skewY", 1) => true,
            _ => false,
        };
        // One number is both scales, but no second move.
        if (count == 1 && kind is "scale" or "translate")
        {
            numbers[1] = kind == "scale" ? numbers[0] : 0;
            count = 2;
        }
        text.Append(kind).Append('(');
        foreach (var number in numbers[..count])
            text.Number(number);
        text.Append(')');
        return isRight;
    }

    private static SvgReading Box(string value)
    {
        var text = new StringBuilder();
        var numbers = new SvgScanner(value);
        var last = 0.0;
        for (var i = 0; i < 4; i++)
        {
            if (!numbers.TryNumber(out last) || (i == 2 && last < 0))
                return Wrong();
            text.Number(last);
        }
        return numbers.IsAtEnd && last >= 0 ? new(text.ToString().TrimStart()) : Wrong();

        static SvgReading Wrong() =>
            new(
                null,
                "it is not left, top, width and height",
                IsFatal: true,
                "four numbers, such as viewBox=\"0 0 210 297\""
            );
    }

    private static SvgReading Aspect(string value)
    {
        var words = value.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        words.Remove("defer");
        var isRight =
            words is [var align, .. var rest]
            && (align == "none" || IsAlign(align))
            && rest is [] or ["meet"] or ["slice"];
        return isRight
            ? new(string.Join(' ', words))
            : new(null, "preserveAspectRatio that can't be read");

        static bool IsAlign(string align) =>
            align.Length == 8
            && align[..4] is "xMin" or "xMid" or "xMax"
            && align[4..] is "YMin" or "YMid" or "YMax";
    }

    private static SvgReading Length(string kind, string name, string value)
    {
        var text = value.AsSpan().Trim();
        if (text is "auto")
            return default;
        var number = new SvgScanner(text);
        var isNumber = number.TryNumber(out var length);
        var unit =
            isNumber && number.Next == '%' ? "%" : number.Word().ToString().ToLowerInvariant();
        if (unit == "%")
            number.Skip();
        var isLength =
            isNumber
            && number.IsAtEnd
            && unit is "" or "px" or "mm" or "cm" or "in" or "pt" or "pc" or "em" or "ex" or "%";
        if (isLength)
            return new(SvgNumbers.Number(length) + unit);
        return new(
            null,
            kind == "svg" ? "it is no length" : $"{kind} whose {name} is no length",
            IsFatal: kind == "svg",
            "a number with px, mm, cm, in, pt or pc, such as 210mm"
        );
    }
}
