using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>
    /// Steps counter-clockwise round a circle with the compass as it is set, and marks the places. The radius steps
    /// round in six: common practice, and Euclid IV.15.
    /// </summary>
    /// <param name="circle">A whole circle.</param>
    /// <param name="start">A point on it.</param>
    /// <param name="steps">Number of steps, 1 to 360.</param>
    /// <param name="every">Every how many steps a place is marked; 1 by default, each. The radius and 2 make three.</param>
    /// <returns>The points marked, in order. If the last step comes back to the start, it marks none.</returns>
    /// <exception cref="ArgumentException">The circle or point is of another drawing, or the point is not on the circle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of steps is out of range.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">The setting is wider than the circle.</exception>
    public IReadOnlyList<MarkedPoint> Walk(
        DrawnCurve circle,
        MarkedPoint start,
        int steps,
        int every = 1
    )
    {
        Guard.Within(steps, 1, CircleDivision.MostParts);
        Guard.Within(every, 1, steps);
        var walk = Plan(circle, start, steps, every);
        return Walk(walk, new(_marks.Reserve(walk.Marks), 1), null);
    }

    /// <summary>Divides a circle, starting from its top, which takes the first number.</summary>
    /// <inheritdoc cref="DivideCircle(DrawnCurve, int, MarkedPoint)"/>
    public IReadOnlyList<MarkedPoint> DivideCircle(DrawnCurve circle, int count)
    {
        Guard.Within(count, 2, CircleDivision.MostParts);
        return DivideCircle(circle, count, MarkOn(circle, Angle.FromDegrees(90)));
    }

    /// <summary>
    /// Divides a circle into equal parts: exactly, by compass and straightedge, for 2, 3, 4, 5, 6, 8, 10, 12 and 16
    /// parts, and for other numbers by stepping with the chord as the setting. The compass keeps its last setting.
    /// </summary>
    /// <param name="circle">A whole circle.</param>
    /// <param name="count">Number of parts, 2 to 360.</param>
    /// <param name="start">A point on the circle.</param>
    /// <returns>The points, counter-clockwise from the start, and numbered so.</returns>
    /// <exception cref="ArgumentException">The circle or point is of another drawing, or the point is not on the circle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is out of range.</exception>
    public IReadOnlyList<MarkedPoint> DivideCircle(DrawnCurve circle, int count, MarkedPoint start)
    {
        Guard.Within(count, 2, CircleDivision.MostParts);
        WholeCircle(circle);
        ThrowIfOffCircle(circle, start);
        var second = _marks.Reserve(count - 1);
        return new CircleDivider(this, circle, start, second).Divide(count);
    }

    /// <summary>Steps round a circle for a division, with numbers already given out.</summary>
    internal IReadOnlyList<MarkedPoint> Walk(
        DrawnCurve circle,
        MarkedPoint start,
        int steps,
        int every,
        RoundNumbers numbers,
        CircleDivision? division = null
    ) => Walk(Plan(circle, start, steps, every), numbers, division);

    private MarkedPoint[] Walk(RoundWalk walk, RoundNumbers numbers, CircleDivision? division)
    {
        MarkedPoint[] marked =
        [
            .. Enumerable
                .Range(1, walk.Marks)
                .Select(i => _marks.Numbered(numbers.At(i - 1), walk.PlaceOf(i * walk.Every))),
        ];
        Record(
            new(NextNumber, StepKind.Walk)
            {
                Setting = walk.Setting,
                Curves = [walk.Circle],
                From = [walk.Start],
                Count = walk.Steps,
                Every = walk.Every,
                Closes = walk.Closes,
                Division = division,
                Marked = marked,
            }
        );
        return marked;
    }

    private RoundWalk Plan(DrawnCurve circle, MarkedPoint start, int steps, int every)
    {
        var setting = Setting();
        var diameter = 2 * WholeCircle(circle).Radius;
        ThrowIfOffCircle(circle, start);
        if (setting > diameter + Tolerance.Merge)
            throw new PatternException(
                $"A compass set to {Guard.Text(setting)} mm cannot step round a circle {Guard.Text(diameter)} mm wide.",
                start.Point,
                [
                    $"a setting of {Guard.Text(diameter / 2)} mm, which steps round in six",
                    $"a setting of less than {Guard.Text(diameter)} mm",
                ]
            );
        return new(circle, start, setting, steps, every, Tolerance);
    }

    private void ThrowIfOffCircle(DrawnCurve circle, MarkedPoint point)
    {
        var (centre, radius) = (circle.Curve.Circle.Centre, circle.Curve.Circle.Radius);
        var off = Of(point).DistanceTo(centre) - radius;
        if (Math.Abs(off) > Tolerance.Merge)
            throw new ArgumentException(
                $"The point {point} does not lie on the circle of {Guard.Text(radius)} mm round {centre}; it is {Guard.Text(Math.Abs(off))} mm off.",
                nameof(point)
            );
    }
}
