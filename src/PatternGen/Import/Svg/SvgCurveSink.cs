using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Brings the pieces of paths to where they lie in the drawing, in millimetres, as lines, arcs and free curves.</summary>
internal sealed class SvgCurveSink(ImportedCurves curves) : ISvgPathSink
{
    /// <summary>
    /// Axes of an ellipse that differ by no more than this share of them are a circle's: matrices are written with six
    /// digits or so. Half of what they differ by is told as lost accuracy.
    /// </summary>
    private const double Round = 1e-6;

    private readonly SvgRunBuilder _run = new(curves);
    private SvgFrame _frame;
    private Point _local;
    private double _reach;

    /// <summary>How far what was drawn may lie off the file, in mm.</summary>
    internal double Accuracy => _run.Accuracy;

    /// <summary>Starts an element.</summary>
    /// <param name="frame">Where its coordinates lie.</param>
    /// <param name="where">Where it is in the file.</param>
    internal void Begin(SvgFrame frame, string where)
    {
        _frame = frame;
        _run.Where = where;
    }

    /// <summary>Ends the element: what is open stays so.</summary>
    internal void End() => Finish(isClosed: false);

    public void MoveTo(Point point)
    {
        Finish(isClosed: false);
        _run.Start(Placed(point));
    }

    public void LineTo(Point point) => _run.LineTo(Placed(point));

    public void CubicTo(Point control1, Point control2, Point point) =>
        _run.CubicTo(Placed(control1), Placed(control2), Placed(point));

    // The cubic curve that is the same has its control points two thirds of the way to the quadratic one's.
    public void QuadraticTo(Point control, Point point) =>
        CubicTo(_local.Towards(control, 2.0 / 3), point.Towards(control, 2.0 / 3), point);

    public void ArcTo(in SvgArc arc, Point point)
    {
        _reach = Math.Max(_reach, Math.Max(arc.RadiusX, arc.RadiusY));
        var end = Placed(point);
        var shape = _frame.Map * Affine.Turn(arc.Turn) * Affine.Scale(arc.RadiusX, arc.RadiusY);
        var (larger, smaller) = shape.Sizes;
        if (larger - smaller > Round * larger)
            _run.EllipseTo(SvgEllipseArc.Under(shape, _run.At, end, arc.IsSweeping), end);
        else
            _run.ArcTo(
                (larger + smaller) / 2,
                arc.IsSweeping == _frame.Map.Determinant > 0,
                end,
                (larger - smaller) / 2
            );
    }

    public void Close() => Finish(isClosed: true);

    private void Finish(bool isClosed)
    {
        _run.Finish(isClosed, _frame.Rounding(_reach));
        _reach = 0;
    }

    private Point Placed(Point point)
    {
        _local = point;
        _reach = Math.Max(_reach, Math.Max(Math.Abs(point.X), Math.Abs(point.Y)));
        var placed = _frame.Map.Apply(point);
        // Written so that a place that is no number is refused too.
        return Math.Abs(placed.X) <= Guard.MaxSize && Math.Abs(placed.Y) <= Guard.MaxSize
            ? placed
            : throw new ImportException(
                $"{placed} mm lies beyond a kilometre.",
                _run.Where,
                ["a drawing nearer to its origin", "another unit (ImportSettings.WithUnit)"]
            );
    }
}
