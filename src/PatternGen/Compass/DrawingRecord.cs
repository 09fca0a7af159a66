using System.Runtime.CompilerServices;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A drawing while it is made: what is on it, how the compass is set, and whether it is finished.</summary>
internal sealed class DrawingRecord
{
    private readonly HashSet<DrawnCurve> _curves = [];
    private readonly List<CompassStep> _steps = [];
    private bool _isLaidDown;

    internal PointMarks Marks { get; } = new();

    internal IReadOnlyList<CompassStep> Steps => _steps;

    internal List<Point> PetalMarks { get; } = [];

    internal List<Point> PlainMarks { get; } = [];

    /// <summary>The first point marked, from which others are measured.</summary>
    internal MarkedPoint? Datum { get; set; }

    /// <summary>How the compass is set; null before it is.</summary>
    internal double? Setting { get; set; }

    /// <summary>The circle that is the edge of the work, if it was named.</summary>
    internal DrawnCurve? Edge { get; set; }

    internal Tolerance Tolerance => Marks.Tolerance;

    /// <summary>The number of the next step.</summary>
    internal int NextNumber => _steps.Count + 1;

    /// <summary>Ends the drawing: whatever is asked of it now throws.</summary>
    internal void LayDown() => _isLaidDown = true;

    /// <summary>Takes a step and the curves that it draws into the drawing.</summary>
    internal void Add(CompassStep step)
    {
        _steps.Add(step);
        foreach (var curve in step.Drawn)
        {
            _curves.Add(curve);
            Marks.Reach(curve.Curve.Extents);
        }
    }

    internal bool IsSetTo(double setting) =>
        Setting is { } present && Math.Abs(present - setting) <= Tolerance.Merge;

    /// <summary>The setting that a step needs.</summary>
    internal double PresentSetting()
    {
        ThrowIfLaidDown();
        return Setting
            ?? throw new InvalidOperationException(
                "The compass has no setting yet; call SetRadius first."
            );
    }

    /// <summary>How far two different points of this drawing are apart.</summary>
    internal double Distance(
        MarkedPoint from,
        MarkedPoint to,
        [CallerArgumentExpression(nameof(from))] string fromName = "",
        [CallerArgumentExpression(nameof(to))] string toName = ""
    )
    {
        var distance = Of(from, fromName).DistanceTo(Of(to, toName));
        return distance > Tolerance.Merge
            ? distance
            : throw new ArgumentException(
                $"Two different points are needed, but {from.Label} and {to.Label} both lie at {from.Point}.",
                toName
            );
    }

    /// <summary>Where a point of this drawing lies.</summary>
    internal Point Of(MarkedPoint point, [CallerArgumentExpression(nameof(point))] string name = "")
    {
        ThrowIfLaidDown();
        return Marks.Has(Guard.NotNull(point, name))
            ? point.Point
            : throw new ArgumentException(
                $"The point {point} was marked in another drawing; each drawing marks its own.",
                name
            );
    }

    /// <summary>A curve of this drawing.</summary>
    internal Curve Of(DrawnCurve curve, [CallerArgumentExpression(nameof(curve))] string name = "")
    {
        ThrowIfLaidDown();
        return _curves.Contains(Guard.NotNull(curve, name))
            ? curve.Curve
            : throw new ArgumentException(
                "The curve was drawn in another drawing; each drawing draws its own.",
                name
            );
    }

    internal Circle WholeCircle(
        DrawnCurve circle,
        [CallerArgumentExpression(nameof(circle))] string name = ""
    )
    {
        var curve = Of(circle, name);
        return curve.IsCircle
            ? curve.Circle
            : throw new ArgumentException(
                $"A whole circle is needed, but the curve is the segment {curve.Segment}.",
                name
            );
    }

    internal Segment StraightLine(
        DrawnCurve line,
        [CallerArgumentExpression(nameof(line))] string name = ""
    )
    {
        var curve = Of(line, name);
        return !curve.IsCircle && curve.Segment.IsLine
            ? curve.Segment
            : throw new ArgumentException(
                "A straight line is needed, but the curve is round.",
                name
            );
    }

    /// <summary>The edge of the work, if one of the points lies outside it.</summary>
    internal DrawnCurve? EdgeInside(IEnumerable<MarkedPoint> needles)
    {
        if (Edge is null)
            return null;
        var circle = Edge.Curve.Circle;
        var within = circle.Radius + Tolerance.Merge;
        return needles.Any(point => circle.Centre.DistanceTo(point.Point) > within) ? Edge : null;
    }

    internal void ThrowIfLaidDown()
    {
        if (_isLaidDown)
            throw new InvalidOperationException(
                "The drawing is finished; a pencil draws only inside the lambda of CompassDrawing.Of."
            );
    }
}
