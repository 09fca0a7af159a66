using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a <see cref="CompassDrawing"/> step by step: compass, straightedge and pencil in one hand.</summary>
/// <remarks>
/// <see cref="CompassDrawing.Of"/> lends it to a lambda; afterwards every method throws an
/// <see cref="InvalidOperationException"/>. Points and curves that it returns serve in later steps of the same drawing,
/// and those of another drawing are refused. The compass keeps its setting until a method changes it. Not safe to share
/// between threads.
/// </remarks>
public sealed partial class Pencil
{
    private readonly DrawingRecord _drawing = new();

    internal Pencil() { }

    /// <summary>What was drawn.</summary>
    internal DrawingRecord Drawing => _drawing;

    /// <summary>Marks a point to begin from.</summary>
    /// <param name="x">Distance to the right of the origin, in mm.</param>
    /// <param name="y">Distance above the origin, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public MarkedPoint Mark(double x, double y) => Mark(new Point(x, y));

    /// <summary>Marks a point to begin from.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public MarkedPoint Mark(Point at)
    {
        _drawing.ThrowIfLaidDown();
        var point = _drawing.Marks.Lettered(Guard.Place(at));
        _drawing.Add(
            new(_drawing.NextNumber, StepKind.Mark)
            {
                From = _drawing.Datum is null ? [] : [_drawing.Datum],
                Marked = [point],
            }
        );
        _drawing.Datum ??= point;
        return point;
    }

    /// <summary>Marks a point to begin from on a circle, with the next number.</summary>
    /// <param name="circle">A whole circle that was drawn.</param>
    /// <param name="direction">Direction from its centre; 90 degrees is the top.</param>
    /// <exception cref="ArgumentException">The curve is no whole circle, or of another drawing.</exception>
    public MarkedPoint MarkOn(DrawnCurve circle, Angle direction)
    {
        var round = _drawing.WholeCircle(circle);
        var at = round.Centre.Polar(round.Radius, direction);
        var point = _drawing.Marks.Numbered(_drawing.Marks.Reserve(1), at);
        _drawing.Add(
            new(_drawing.NextNumber, StepKind.MarkOnCircle)
            {
                Curves = [circle],
                Direction = direction,
                Marked = [point],
            }
        );
        return point;
    }

    /// <summary>Sets the compass. A setting that it has already takes no step.</summary>
    /// <param name="millimetres">Distance of needle and pencil.</param>
    /// <exception cref="ArgumentOutOfRangeException">The setting is not positive.</exception>
    public void SetRadius(double millimetres)
    {
        _drawing.ThrowIfLaidDown();
        SetDividers(Guard.Positive(millimetres), null);
    }

    /// <summary>Sets the compass to the distance of two points, which is taken off the drawing, not measured.</summary>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    public void SetRadius(MarkedPoint from, MarkedPoint to)
    {
        var setting = _drawing.Distance(from, to);
        if (_drawing.IsSetTo(setting))
            return;
        _drawing.Setting = setting;
        _drawing.Add(
            new(_drawing.NextNumber, StepKind.SetRadius)
            {
                Setting = setting,
                From = [from],
                To = [to],
            }
        );
    }

    /// <summary>
    /// Names the circle that is the edge of the work, so that the steps tell where the needle stands beside it and needs
    /// scrap wood of the same thickness.
    /// </summary>
    /// <exception cref="ArgumentException">The curve is no whole circle, or of another drawing.</exception>
    public void WorkWithin(DrawnCurve circle)
    {
        _drawing.WholeCircle(circle);
        _drawing.Edge = circle;
    }

    /// <summary>Remembers a point inside a petal.</summary>
    internal void MarkPetal(Point inside) => _drawing.PetalMarks.Add(inside);

    /// <summary>Remembers a point inside a part that always stays ground.</summary>
    internal void MarkPlain(Point inside) => _drawing.PlainMarks.Add(inside);

    /// <summary>Sets the dividers for a division of a circle, or the compass for anything.</summary>
    internal void SetDividers(double setting, CircleDivision? division)
    {
        if (_drawing.IsSetTo(setting))
            return;
        _drawing.Setting = setting;
        _drawing.Add(
            new(_drawing.NextNumber, StepKind.SetRadius) { Setting = setting, Division = division }
        );
    }
}
