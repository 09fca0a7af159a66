using System.Text;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes path data so plainly that every reader takes it alike: absolute, each command with its letter, flags apart.</summary>
internal sealed class SvgPathText : ISvgPathSink
{
    private readonly StringBuilder _text = new();

    /// <summary>Returns what was drawn since the last time.</summary>
    internal string Take()
    {
        var text = _text.ToString();
        _text.Clear();
        return text;
    }

    public void MoveTo(Point point) => Write('M', point);

    public void LineTo(Point point) => Write('L', point);

    public void CubicTo(Point control1, Point control2, Point point)
    {
        Write('C', control1);
        Write(control2);
        Write(point);
    }

    public void QuadraticTo(Point control, Point point)
    {
        Write('Q', control);
        Write(point);
    }

    public void ArcTo(in SvgArc arc, Point point)
    {
        _text.Append('A').Number(arc.RadiusX).Number(arc.RadiusY).Number(arc.Turn);
        _text.Append(arc.IsLarge ? " 1" : " 0").Append(arc.IsSweeping ? " 1" : " 0");
        Write(point);
    }

    public void Close() => _text.Append('Z');

    private void Write(char command, Point point)
    {
        _text.Append(command);
        Write(point);
    }

    private void Write(Point point) => _text.Number(point.X).Number(point.Y);
}
