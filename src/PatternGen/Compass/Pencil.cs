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
    private readonly PointMarks _marks = new();
    private readonly HashSet<DrawnCurve> _curves = [];
    private readonly List<CompassStep> _steps = [];
    private readonly List<Point> _petalMarks = [];
    private readonly List<Point> _plainMarks = [];
    private double? _setting;
    private DrawnCurve? _edge;
    private bool _isLaidDown;

    internal Pencil() { }

    internal IReadOnlyList<CompassStep> Steps => _steps;

    internal IReadOnlyList<Point> PetalMarks => _petalMarks;

    internal IReadOnlyList<Point> PlainMarks => _plainMarks;

    private Tolerance Tolerance => _marks.Tolerance;

    /// <summary>Marks a point to begin from.</summary>
    /// <param name="x">Distance to the right of the origin, in mm.</param>
    /// <param name="y">Distance above the origin, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public MarkedPoint Mark(double x, double y) => Mark(new Point(x, y));

    /// <summary>Marks a point to begin from.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public MarkedPoint Mark(Point at)
    {
        ThrowIfLaidDown();
        var point = _marks.Lettered(Guard.Place(at));
        Record(new(NextNumber, StepKind.Mark) { Marked = [point] });
        return point;
    }

    /// <summary>Marks a point to begin from on a circle, with the next number.</summary>
    /// <param name="circle">A whole circle that was drawn.</param>
    /// <param name="direction">Direction from its centre; 90 degrees is the top.</param>
    /// <exception cref="ArgumentException">The curve is no whole circle, or of another drawing.</exception>
    public MarkedPoint MarkOn(DrawnCurve circle, Angle direction)
    {
        var round = WholeCircle(circle);
        var at = round.Centre.Polar(round.Radius, direction);
        var point = _marks.Numbered(_marks.Reserve(1), at);
        Record(
            new(NextNumber, StepKind.MarkOnCircle)
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
        ThrowIfLaidDown();
        SetDividers(Guard.Positive(millimetres), null);
    }

    /// <summary>Sets the compass to the distance of two points, which is taken off the drawing, not measured.</summary>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    public void SetRadius(MarkedPoint from, MarkedPoint to)
    {
        var setting = Distance(from, to);
        if (IsSetTo(setting))
            return;
        _setting = setting;
        Record(
            new(NextNumber, StepKind.SetRadius)
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
        WholeCircle(circle);
        _edge = circle;
    }

    /// <summary>Remembers a point inside a petal.</summary>
    internal void MarkPetal(Point inside) => _petalMarks.Add(inside);

    /// <summary>Remembers a point inside a part that always stays ground.</summary>
    internal void MarkPlain(Point inside) => _plainMarks.Add(inside);

    /// <summary>Ends the drawing.</summary>
    internal void LayDown() => _isLaidDown = true;

    /// <summary>Sets the dividers for a division of a circle, or the compass for anything.</summary>
    internal void SetDividers(double setting, CircleDivision? division)
    {
        if (IsSetTo(setting))
            return;
        _setting = setting;
        Record(new(NextNumber, StepKind.SetRadius) { Setting = setting, Division = division });
    }

    private int NextNumber => _steps.Count + 1;

    private void Record(CompassStep step)
    {
        _steps.Add(step);
        foreach (var curve in step.Drawn)
        {
            _curves.Add(curve);
            _marks.Reach(curve.Curve.Extents);
        }
    }

    private bool IsSetTo(double setting) =>
        _setting is { } present && Math.Abs(present - setting) <= Tolerance.Merge;

    private double Setting()
    {
        ThrowIfLaidDown();
        return _setting
            ?? throw new InvalidOperationException(
                "The compass has no setting yet; call SetRadius first."
            );
    }

    private double Distance(MarkedPoint from, MarkedPoint to)
    {
        var distance = Of(from).DistanceTo(Of(to));
        return distance > Tolerance.Merge
            ? distance
            : throw new ArgumentException(
                $"Two different points are needed, but {from.Label} and {to.Label} both lie at {from.Point}.",
                nameof(to)
            );
    }

    /// <summary>Where a point of this drawing lies.</summary>
    private Point Of(MarkedPoint point)
    {
        ThrowIfLaidDown();
        return _marks.Has(Guard.NotNull(point))
            ? point.Point
            : throw new ArgumentException(
                $"The point {point} was marked in another drawing; each drawing marks its own.",
                nameof(point)
            );
    }

    /// <summary>A curve of this drawing.</summary>
    private Curve Of(DrawnCurve curve)
    {
        ThrowIfLaidDown();
        return _curves.Contains(Guard.NotNull(curve))
            ? curve.Curve
            : throw new ArgumentException(
                "The curve was drawn in another drawing; each drawing draws its own.",
                nameof(curve)
            );
    }

    private Circle WholeCircle(DrawnCurve circle)
    {
        var curve = Of(circle);
        return curve.IsCircle
            ? curve.Circle
            : throw new ArgumentException(
                $"A whole circle is needed, but the curve is the segment {curve.Segment}.",
                nameof(circle)
            );
    }

    /// <summary>The edge of the work, if one of the points lies outside it.</summary>
    private DrawnCurve? EdgeInside(IEnumerable<MarkedPoint> needles)
    {
        if (_edge is null)
            return null;
        var circle = _edge.Curve.Circle;
        var within = circle.Radius + Tolerance.Merge;
        return needles.Any(point => circle.Centre.DistanceTo(point.Point) > within) ? _edge : null;
    }

    private void ThrowIfLaidDown()
    {
        if (_isLaidDown)
            throw new InvalidOperationException(
                "The drawing is finished; a pencil draws only inside the lambda of CompassDrawing.Of."
            );
    }
}
