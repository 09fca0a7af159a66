using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Follows path commands: works out relative places, shorthands and where subpaths start, and draws them into a sink.</summary>
internal sealed class SvgPen(ISvgPathSink sink)
{
    private Point _start;
    private Point? _cubicControl;
    private Point? _quadraticControl;
    private bool _isOpen;

    internal Point Current { get; private set; }

    internal void MoveTo(Point point)
    {
        _start = point;
        _isOpen = false;
        At(point);
    }

    internal void LineTo(Point point)
    {
        Begin();
        sink.LineTo(point);
        At(point);
    }

    // Without a first control point it is the mirror image of the last one.
    internal void CubicTo(Point? control1, Point control2, Point point)
    {
        Begin();
        sink.CubicTo(control1 ?? Mirrored(_cubicControl), control2, point);
        At(point);
        _cubicControl = control2;
    }

    // Without a control point it is the mirror image of the last one.
    internal void QuadraticTo(Point? control, Point point)
    {
        Begin();
        var used = control ?? Mirrored(_quadraticControl);
        sink.QuadraticTo(used, point);
        At(point);
        _quadraticControl = used;
    }

    internal void ArcTo(SvgArc arc, Point point)
    {
        Begin();
        SvgArcSplitter.Draw(Current, arc, point, sink);
        At(point);
    }

    internal void Close()
    {
        if (_isOpen)
            sink.Close();
        _isOpen = false;
        At(_start);
    }

    // What follows a closed subpath without a move starts where that one started.
    private void Begin()
    {
        if (!_isOpen)
            sink.MoveTo(Current);
        _isOpen = true;
    }

    private Point Mirrored(Point? control) =>
        control is { } point ? Current + (Current - point) : Current;

    private void At(Point point)
    {
        Current = point;
        _cubicControl = _quadraticControl = null;
    }
}
