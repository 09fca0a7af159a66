namespace PatternGen.Geometry;

public sealed partial class FreeCurve
{
    /// <summary>Highest degree of a B-spline.</summary>
    private const int MostDegree = 25;

    /// <summary>Pieces of a spline that end farther than this from the next, in mm, do not meet: the finest accuracy there is.</summary>
    private const double LeastGap = 1e-6;

    /// <summary>Returns the quadratic Bézier curve, a piece of a parabola.</summary>
    /// <param name="start">Where it starts, towards the control point.</param>
    /// <param name="control">Where the tangents of both ends meet. (0, 0), (0.5, 0), (1, 1) is y = x².</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentException">All three points are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point lies beyond 2 km.</exception>
    public static FreeCurve Bezier(Point start, Point control, Point end) =>
        new([new BezierPiece(Usable([start, control, end], nameof(end)))]);

    /// <summary>Returns the cubic Bézier curve.</summary>
    /// <param name="start">Where it starts, towards the first control point.</param>
    /// <param name="leaving">First control point: a third of the derivative away from the start.</param>
    /// <param name="arriving">Second control point, from which the curve comes to its end.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentException">All four points are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point lies beyond 2 km.</exception>
    public static FreeCurve Bezier(Point start, Point leaving, Point arriving, Point end) =>
        new([new BezierPiece(Usable([start, leaving, arriving, end], nameof(end)))]);

    /// <inheritdoc cref="BezierPath(IEnumerable{Point})"/>
    public static FreeCurve BezierPath(params Point[] points) =>
        BezierPath((IEnumerable<Point>)points);

    /// <summary>Returns a path of cubic Bézier curves, each starting where the one before ends.</summary>
    /// <param name="points">The start, then two control points and an end for each curve: 4, 7, 10, … points.</param>
    /// <exception cref="ArgumentException">The number of points is not one more than a multiple of three, or all are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point lies beyond 2 km.</exception>
    public static FreeCurve BezierPath(IEnumerable<Point> points)
    {
        var all = Usable([.. Guard.NotNull(points)], nameof(points));
        if (all.Length % 3 != 1)
            throw new ArgumentException(
                $"A path of cubic Béziers has 4, 7, 10, … points, two control points and an end for each after the start, but {all.Length} were given.",
                nameof(points)
            );
        var pieces = Enumerable
            .Range(0, all.Length / 3)
            .Select(i => all[(3 * i)..(3 * i + 4)])
            // A piece that stands still has no direction, and is passed.
            .Where(controls => controls.Any(control => control != controls[0]))
            .Select(controls => new BezierPiece(controls));
        return new([.. pieces]);
    }

    /// <summary>Returns a B-spline, with weights a NURBS.</summary>
    /// <param name="degree">Degree, from 1 to 25; 3 for the usual cubic ones.</param>
    /// <param name="knots">The knots, none below the one before: as many as control points, and one more than the degree. Degree 2 and knots 0, 0, 0, 1, 1, 1 with three points make a quadratic Bézier.</param>
    /// <param name="controls">The control points.</param>
    /// <param name="weights">One weight above 0 for each control point; all 1 if left out.</param>
    /// <exception cref="ArgumentException">The numbers of knots, points or weights do not fit, knots go back, nothing is left between them, or a knot that comes more often than the degree leaves a gap.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The degree, a knot, a point or a weight is out of range.</exception>
    public static FreeCurve BSpline(
        int degree,
        IEnumerable<double> knots,
        IEnumerable<Point> controls,
        IEnumerable<double>? weights = null
    )
    {
        Guard.Within(degree, 1, MostDegree);
        var points = Usable([.. Guard.NotNull(controls)], nameof(controls));
        var steps = Guard.NotNull(knots).ToArray();
        if (points.Length <= degree || steps.Length != points.Length + degree + 1)
            throw new ArgumentException(
                $"A spline of degree {degree} has at least {degree + 1} control points and {degree + 1} more knots than points, but {points.Length} points and {steps.Length} knots were given.",
                nameof(knots)
            );
        for (var i = 0; i < steps.Length; i++)
        {
            Guard.Within(steps[i], -1e12, 1e12, nameof(knots));
            if (i > 0 && steps[i] < steps[i - 1])
                throw new ArgumentException(
                    $"Knots never go back, but knot {i} is {Guard.Text(steps[i])} after {Guard.Text(steps[i - 1])}.",
                    nameof(knots)
                );
        }
        var heavy = weights?.ToArray();
        if (heavy is not null && heavy.Length != points.Length)
            throw new ArgumentException(
                $"Each control point has one weight, but there are {points.Length} points and {heavy.Length} weights.",
                nameof(weights)
            );
        foreach (var weight in heavy ?? [])
            Guard.Within(weight, 1e-6, 1e6, nameof(weights));
        var pieces = BSplinePieces.Of(degree, steps, points, heavy);
        if (pieces.Length == 0)
            throw new ArgumentException(
                $"The curve runs from knot {degree} to knot {points.Length}, but both are {Guard.Text(steps[degree])}.",
                nameof(knots)
            );
        RefuseGaps(pieces);
        return new(pieces);
    }

    /// <summary>Refuses a spline in several parts, as a knot given more often than the degree makes it.</summary>
    private static void RefuseGaps(CurvePiece[] pieces)
    {
        for (var i = 1; i < pieces.Length; i++)
        {
            var (end, start) = (pieces[i - 1].At(1).Point, pieces[i].At(0).Point);
            if (end.DistanceTo(start) > LeastGap)
                throw new ArgumentException(
                    $"The curve has a gap from {end} to {start}: a knot there comes more often than the degree, which parts a curve in two.",
                    "knots"
                );
        }
    }

    /// <summary>Points that a curve can have: within the limits, and not all the same.</summary>
    private static Point[] Usable(Point[] points, string name)
    {
        foreach (var point in points)
            Guard.Place(point, name);
        return points.Any(point => point != points[0])
            ? points
            : throw new ArgumentException(
                points.Length > 0
                    ? $"A curve needs at least two different points, but all {points.Length} are {points[0]}."
                    : "A curve needs at least two different points, but there are none.",
                name
            );
    }
}
