using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Reads path data, by the grammar of SVG 1.1 and 2.</summary>
internal ref struct SvgPathData(ReadOnlySpan<char> data, SvgPen pen, int most)
{
    private SvgScanner _text = new(data);
    private char _command;

    /// <summary>How many commands were read; reading stops at the most that are allowed.</summary>
    internal int Count { get; private set; }

    internal readonly bool IsTooMuch => Count > most;

    /// <summary>Draws all commands. Returns false if what follows the last one drawn is none.</summary>
    internal bool Read()
    {
        while (!_text.IsAtEnd)
        {
            if (++Count > most || !TryCommand())
                return false;
        }
        return true;
    }

    private bool TryCommand()
    {
        if (char.IsAsciiLetter(_text.Next))
        {
            // Path data starts with a move.
            if (Count == 1 && (_text.Next | 0x20) != 'm')
                return false;
            _command = _text.Next;
            _text.Skip();
        }
        else if ((_command | 0x20) is 'z' or 0)
        {
            return false;
        }
        var drawn = TryDraw(_command | 0x20, char.IsAsciiLetterLower(_command));
        // More places after a move are lines.
        if ((_command | 0x20) == 'm')
            _command = _command == 'm' ? 'l' : 'L';
        return drawn;
    }

    private bool TryDraw(int command, bool isRelative)
    {
        var from = isRelative ? pen.Current : Point.Origin;
        return command switch
        {
            'm' => TryMove(from),
            'l' => TryLine(from),
            'h' => TryLevel(from),
            'v' => TryUpright(from),
            'c' => TryCubic(from, isShort: false),
            's' => TryCubic(from, isShort: true),
            'q' => TryQuadratic(from, isShort: false),
            't' => TryQuadratic(from, isShort: true),
            'a' => TryArc(from),
            'z' => Close(),
            _ => false,
        };
    }

    private readonly bool Close()
    {
        pen.Close();
        return true;
    }

    private bool TryMove(Point from)
    {
        if (!TryPoint(from, out var point))
            return false;
        pen.MoveTo(point);
        return true;
    }

    private bool TryLine(Point from)
    {
        if (!TryPoint(from, out var point))
            return false;
        pen.LineTo(point);
        return true;
    }

    private bool TryLevel(Point from)
    {
        if (!_text.TryNumber(out var x))
            return false;
        pen.LineTo(new(from.X + x, pen.Current.Y));
        return true;
    }

    private bool TryUpright(Point from)
    {
        if (!_text.TryNumber(out var y))
            return false;
        pen.LineTo(new(pen.Current.X, from.Y + y));
        return true;
    }

    private bool TryCubic(Point from, bool isShort)
    {
        Point control1 = default;
        if (
            !(isShort || TryPoint(from, out control1))
            || !TryPoint(from, out var control2)
            || !TryPoint(from, out var point)
        )
            return false;
        pen.CubicTo(isShort ? null : control1, control2, point);
        return true;
    }

    private bool TryQuadratic(Point from, bool isShort)
    {
        Point control = default;
        if (!(isShort || TryPoint(from, out control)) || !TryPoint(from, out var point))
            return false;
        pen.QuadraticTo(isShort ? null : control, point);
        return true;
    }

    private bool TryArc(Point from)
    {
        if (
            !_text.TryNumber(out var rx)
            || !_text.TryNumber(out var ry)
            || !_text.TryNumber(out var turn)
            || !_text.TryFlag(out var isLarge)
            || !_text.TryFlag(out var isSweeping)
            || !TryPoint(from, out var point)
        )
            return false;
        pen.ArcTo(new(rx, ry, turn, isLarge, isSweeping), point);
        return true;
    }

    private bool TryPoint(Point from, out Point point)
    {
        point = default;
        if (!_text.TryNumber(out var x) || !_text.TryNumber(out var y))
            return false;
        point = new(from.X + x, from.Y + y);
        return Math.Abs(point.X) <= SvgNumbers.MaxNumber
            && Math.Abs(point.Y) <= SvgNumbers.MaxNumber;
    }
}
