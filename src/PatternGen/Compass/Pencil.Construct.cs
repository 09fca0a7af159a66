using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>Arcs cross well from this share of the distance of their needles; with less they would nearly run along each other.</summary>
    private const double LeastOfDistance = 0.6;

    /// <summary>Up to this share; with more, too, and far away.</summary>
    private const double MostOfDistance = 1.5;

    /// <summary>
    /// Halves the way between two points: arcs from both cross on both sides, and the line through the crossings is square
    /// to the way and halves it. If the compass is set too narrow or wide for that, the distance of the points is taken
    /// into it first, in a step of its own.
    /// </summary>
    /// <param name="from">One point.</param>
    /// <param name="to">The other.</param>
    /// <param name="line">Whether the line through the crossings belongs to the figure; by default it is a guide line.</param>
    /// <returns>The line, and the middle between the points.</returns>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    public MarkedLine Bisect(MarkedPoint from, MarkedPoint to, PencilLine line = PencilLine.Guide)
    {
        Guard.Defined(line);
        var setting = SetForCrossing(from, to);
        var middle = Drawing.Marks.Lettered(from.Point.Towards(to.Point, 0.5));
        var (left, right) = Crossings(from, to, setting);
        var across = new DrawnCurve(new Segment(left, right), line)
        {
            From = from,
            To = to,
            IsAcross = true,
        };
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Bisect)
            {
                Setting = setting,
                From = [from],
                To = [to],
                Marked = [middle],
                Drawn = [across, .. Ticks(from, to, left, right)],
                OutsideOf = Drawing.EdgeInside([from, to]),
            }
        );
        return new(across, middle);
    }

    /// <summary>
    /// Halves an arc of a circle: arcs from both its ends cross on both sides, and the straightedge on the crossings
    /// marks the middle of the arc, which gets the next number. The setting is as for <see cref="Bisect"/>. A second
    /// walk of six from the middle of the first arc gives twelve: common practice.
    /// </summary>
    /// <param name="circle">A whole circle.</param>
    /// <param name="from">A point on it.</param>
    /// <param name="to">Another point on it; the arc runs counter-clockwise.</param>
    /// <exception cref="ArgumentException">The circle or a point is of another drawing, or a point not on the circle.</exception>
    public MarkedPoint BisectArc(DrawnCurve circle, MarkedPoint from, MarkedPoint to)
    {
        Drawing.WholeCircle(circle);
        ThrowIfOffCircle(circle, from);
        ThrowIfOffCircle(circle, to);
        Drawing.Distance(from, to);
        return BisectArc(circle, from, to, Drawing.Marks.Reserve(1));
    }

    /// <summary>
    /// Draws a line square to another through a point. The compass needs a setting; if the point is off the line, one
    /// that reaches across it. It is opened on the way, and keeps the wider setting.
    /// </summary>
    /// <param name="to">A straight line.</param>
    /// <param name="through">The point.</param>
    /// <param name="line">Whether the new line belongs to the figure; by default it does.</param>
    /// <returns>The new line, and where it stands on the other: the point itself if it lies there (Euclid I.11), else its foot (I.12).</returns>
    /// <exception cref="ArgumentException">The line or point is of another drawing, or the curve is not straight.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">The setting does not reach across the line.</exception>
    public MarkedLine Perpendicular(
        DrawnCurve to,
        MarkedPoint through,
        PencilLine line = PencilLine.Drawn
    )
    {
        Guard.Defined(line);
        var setting = Drawing.PresentSetting();
        var square = new SquareLine(
            Drawing.StraightLine(to),
            through,
            Drawing.Of(through),
            setting,
            Drawing.Tolerance
        );
        var foot = square.IsOnLine ? through : Drawing.Marks.Lettered(square.Foot);
        var drawn = new DrawnCurve(square.Line, line)
        {
            From = through,
            To = square.IsOnLine ? null : foot,
            IsAcross = square.IsOnLine,
        };
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Perpendicular)
            {
                Setting = setting,
                Needles = [through],
                Curves = [to],
                Marked = [foot],
                Drawn = [drawn, .. square.Ticks()],
                OutsideOf = Drawing.EdgeInside([through]),
            }
        );
        Drawing.Setting = square.Opened;
        return new(drawn, foot);
    }

    /// <summary>Divides the way between two points into equal parts, stepping it off with the dividers.</summary>
    /// <param name="from">One point.</param>
    /// <param name="to">The other.</param>
    /// <param name="parts">Number of parts, 2 to 360.</param>
    /// <returns>The points between, in order. The compass keeps the length of a part as its setting.</returns>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of parts is out of range.</exception>
    public IReadOnlyList<MarkedPoint> DivideLine(MarkedPoint from, MarkedPoint to, int parts)
    {
        var setting = Drawing.Distance(from, to) / Guard.Within(parts, 2, CircleDivision.MostParts);
        MarkedPoint[] marked =
        [
            .. Enumerable
                .Range(1, parts - 1)
                .Select(i =>
                    Drawing.Marks.Lettered(from.Point.Towards(to.Point, (double)i / parts))
                ),
        ];
        Drawing.Setting = setting;
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.DivideLine)
            {
                Setting = setting,
                From = [from],
                To = [to],
                Count = parts,
                Marked = marked,
            }
        );
        return marked;
    }

    /// <summary>Halves an arc, marking the middle with a number already given out, or else a letter.</summary>
    internal MarkedPoint BisectArc(DrawnCurve circle, MarkedPoint from, MarkedPoint to, int? number)
    {
        var round = circle.Curve.Circle;
        var setting = SetForCrossing(from, to);
        var (left, right) = Crossings(from, to, setting);
        // The counter-clockwise arc lies right of its chord.
        var middle = round.Centre + (right - left).Unit() * round.Radius;
        var marked = number is { } known
            ? Drawing.Marks.Numbered(known, middle)
            : Drawing.Marks.Lettered(middle);
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.BisectArc)
            {
                Setting = setting,
                From = [from],
                To = [to],
                Curves = [circle],
                Marked = [marked],
                Drawn = [.. Ticks(from, to, left, right)],
                OutsideOf = Drawing.EdgeInside([from, to]),
            }
        );
        return marked;
    }

    /// <summary>The setting for arcs from two points that cross on both sides.</summary>
    private double SetForCrossing(MarkedPoint from, MarkedPoint to)
    {
        var distance = Drawing.Distance(from, to);
        if (
            Drawing.Setting is not { } present
            || present < LeastOfDistance * distance
            || present > MostOfDistance * distance
        )
            SetRadius(from, to);
        return Drawing.PresentSetting();
    }

    private (Point Left, Point Right) Crossings(MarkedPoint from, MarkedPoint to, double setting) =>
        (
            CrossingOf(from, to, setting, LineSide.Left),
            CrossingOf(from, to, setting, LineSide.Right)
        );

    private static IEnumerable<DrawnCurve> Ticks(
        MarkedPoint from,
        MarkedPoint to,
        Point left,
        Point right
    ) =>
        [
            Tick(from.Point, left),
            Tick(to.Point, left),
            Tick(from.Point, right),
            Tick(to.Point, right),
        ];
}
