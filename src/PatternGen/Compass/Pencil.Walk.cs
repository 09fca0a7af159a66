using System.Runtime.CompilerServices;
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
    /// <returns>The start and the points marked, in order: six for the radius. If the last step comes back to the start, it marks none.</returns>
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
        return [start, .. Walk(walk, new(Drawing.Marks.Reserve(walk.Marks), 1), null)];
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
        Drawing.WholeCircle(circle);
        ThrowIfOffCircle(circle, start);
        var second = Drawing.Marks.Reserve(count - 1);
        return new CircleDivider(this, circle, start, second).Divide(count);
    }

    /// <summary>
    /// Divides a circle by stepping round a larger one about the same centre and bringing the marks in along the radii:
    /// the cure for a closing error, which shrinks as the circle grows. The compass keeps its last setting.
    /// </summary>
    /// <remarks>After Joshua Rose, Modern Machine-Shop Practice.</remarks>
    /// <param name="circle">A whole circle.</param>
    /// <param name="count">Number of parts, 3 to 360; two are the ends of a diameter.</param>
    /// <param name="start">A point on the circle.</param>
    /// <param name="factor">How many times as large the other circle is, 1.1 to 1000; <see cref="CircleDivision.LargerCircle"/> finds it.</param>
    /// <returns>The points, counter-clockwise from the start, and numbered so.</returns>
    /// <exception cref="ArgumentException">The circle or point is of another drawing, or the point is not on the circle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count or factor is out of range.</exception>
    public IReadOnlyList<MarkedPoint> DivideOnLargerCircle(
        DrawnCurve circle,
        int count,
        MarkedPoint start,
        double factor
    )
    {
        Guard.Within(count, 3, CircleDivision.MostParts);
        var radius = Drawing.WholeCircle(circle).Radius;
        ThrowIfOffCircle(circle, start);
        // Nearer to the circle, its own marks would be hard to tell from those brought in.
        Guard.Within(factor, 1.1, 1000);
        var division = CircleDivision.Of(count, radius).OnLargerCircle(factor);
        var inner = new RoundNumbers(Drawing.Marks.Reserve(count - 1), 1);
        var outer = new RoundNumbers(Drawing.Marks.Reserve(count - 1), 1);
        var centre = circle.Needle!;

        SetRadius(division.SteppedRadius);
        var larger = Circle(centre, PencilLine.Guide);
        var first = Extend(centre, start, larger, PencilLine.Guide).Point;
        SetDividers(division.Chord, division);
        var stepped = Walk(larger, first, count, 1, outer, division);
        var radii = RecordExtend(
            Lists.Each([centre], stepped.Count),
            [.. stepped],
            circle,
            PencilLine.Guide,
            places => Drawing.Marks.Numbered(inner, places)
        );
        return [start, .. radii.Select(line => line.Point)];
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
        var places = Enumerable
            .Range(1, walk.Marks)
            .Select(mark => walk.PlaceOf(mark * walk.Every));
        var marked = Drawing.Marks.Numbered(numbers, places);
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Walk)
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
        var setting = Drawing.PresentSetting();
        var diameter = 2 * Drawing.WholeCircle(circle).Radius;
        ThrowIfOffCircle(circle, start);
        if (setting > diameter + Drawing.Tolerance.Merge)
            throw new PatternException(
                $"A compass set to {Guard.Text(setting)} mm cannot step round a circle {Guard.Text(diameter)} mm wide.",
                start.Point,
                [
                    $"a setting of {Guard.Text(diameter / 2)} mm, which steps round in six",
                    $"a setting of less than {Guard.Text(diameter)} mm",
                ]
            );
        return new(circle, start, setting, steps, every, Drawing.Tolerance);
    }

    private void ThrowIfOffCircle(
        DrawnCurve circle,
        MarkedPoint point,
        [CallerArgumentExpression(nameof(point))] string name = ""
    )
    {
        var (centre, radius) = (circle.Curve.Circle.Centre, circle.Curve.Circle.Radius);
        var off = Drawing.Of(point, name).DistanceTo(centre) - radius;
        if (Math.Abs(off) > Drawing.Tolerance.Merge)
            throw new ArgumentException(
                $"The point {point} does not lie on the circle of {Guard.Text(radius)} mm round {centre}; it is {Guard.Text(Math.Abs(off))} mm off.",
                name
            );
    }
}
