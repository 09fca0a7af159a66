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
    internal Pencil() { }

    /// <summary>What is drawn so far.</summary>
    internal DrawingRecord Drawing { get; } = new();

    /// <summary>Marks a point to begin from.</summary>
    /// <param name="x">Distance to the right of the origin, in mm.</param>
    /// <param name="y">Distance above the origin, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public MarkedPoint Mark(double x, double y) => Mark(new Point(x, y));

    /// <summary>Marks a point to begin from.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public MarkedPoint Mark(Point at)
    {
        Drawing.ThrowIfLaidDown();
        var point = Drawing.Marks.Lettered(Guard.Place(at));
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Mark)
            {
                From = Drawing.Datum is null ? [] : [Drawing.Datum],
                Marked = [point],
            }
        );
        Drawing.Datum ??= point;
        return point;
    }

    /// <summary>Marks a point to begin from on a circle, with the next number.</summary>
    /// <param name="circle">A whole circle that was drawn.</param>
    /// <param name="direction">Direction from its centre; 90 degrees is the top.</param>
    /// <exception cref="ArgumentException">The curve is no whole circle, or of another drawing.</exception>
    public MarkedPoint MarkOn(DrawnCurve circle, Angle direction)
    {
        var round = Drawing.WholeCircle(circle);
        var at = round.Centre.Polar(round.Radius, direction);
        var point = Drawing.Marks.Numbered(Drawing.Marks.Reserve(1), at);
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.MarkOnCircle)
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
        Drawing.ThrowIfLaidDown();
        SetDividers(Guard.Positive(millimetres), null);
    }

    /// <summary>Sets the compass to the distance of two points, which is taken off the drawing, not measured.</summary>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    public void SetRadius(MarkedPoint from, MarkedPoint to)
    {
        var setting = Drawing.Distance(from, to);
        if (Drawing.IsSetTo(setting))
            return;
        Drawing.Setting = setting;
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.SetRadius)
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
        Drawing.WholeCircle(circle);
        Drawing.Edge = circle;
    }

    /// <summary>Remembers a point inside a petal.</summary>
    internal void MarkPetal(Point inside) => Drawing.PetalMarks.Add(inside);

    /// <summary>Remembers a point inside a part that always stays ground.</summary>
    internal void MarkPlain(Point inside) => Drawing.PlainMarks.Add(inside);

    /// <summary>Sets the dividers for a division of a circle, or the compass for anything.</summary>
    internal void SetDividers(double setting, CircleDivision? division)
    {
        if (Drawing.IsSetTo(setting))
            return;
        Drawing.Setting = setting;
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.SetRadius) { Setting = setting, Division = division }
        );
    }
}
