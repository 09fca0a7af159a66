using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>Marks where arcs from two points cross, with the compass as it is set: where the needle stands to draw an arc through both.</summary>
    /// <param name="from">One point.</param>
    /// <param name="to">The other.</param>
    /// <param name="side">On which side of the way from the one to the other.</param>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">The setting is too small for the arcs to cross.</exception>
    public MarkedPoint CrossArcs(MarkedPoint from, MarkedPoint to, LineSide side) =>
        RecordCrossArcs([from], [to], side, places => [Drawing.Marks.Lettered(places[0])])[0];

    /// <summary>Marks where arcs from each pair of points cross, in one step; the crossings get numbers.</summary>
    /// <inheritdoc cref="CrossArcs(MarkedPoint, MarkedPoint, LineSide)"/>
    public IReadOnlyList<MarkedPoint> CrossArcs(
        IEnumerable<MarkedPoint> from,
        IEnumerable<MarkedPoint> to,
        LineSide side
    )
    {
        var (starts, ends) = Lists.SideBySide(from, to);
        return RecordCrossArcs(starts, ends, side, Drawing.Marks.NextNumbered);
    }

    private MarkedPoint[] RecordCrossArcs(
        MarkedPoint[] from,
        MarkedPoint[] to,
        LineSide side,
        Func<Point[], MarkedPoint[]> mark
    )
    {
        var setting = Drawing.PresentSetting();
        Guard.Defined(side);
        // All are found before the first is marked, so that an error leaves no mark without a step.
        Point[] places = [.. from.Zip(to, (a, b) => CrossingOf(a, b, setting, side))];
        var marked = mark(places);
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.CrossArcs)
            {
                Setting = setting,
                From = from,
                To = to,
                Side = side,
                Marked = marked,
                Drawn =
                [
                    .. places.SelectMany(
                        (at, i) => (DrawnCurve[])[Tick(from[i].Point, at), Tick(to[i].Point, at)]
                    ),
                ],
                OutsideOf = Drawing.EdgeInside([.. from, .. to]),
            }
        );
        return marked;
    }

    /// <summary>Where arcs with one setting from two points cross.</summary>
    private Point CrossingOf(MarkedPoint from, MarkedPoint to, double setting, LineSide side)
    {
        var distance = Drawing.Distance(from, to);
        var half = distance / 2;
        if (setting <= half + Drawing.Tolerance.Merge)
            throw new PatternException(
                $"A compass set to {Guard.Text(setting)} mm draws no arcs from {from.Label} and {to.Label} that cross, {Guard.Text(distance)} mm apart.",
                from.Point.Towards(to.Point, 0.5),
                [$"a setting of more than {Guard.Text(half)} mm"]
            );
        var rise = Math.Sqrt((setting - half) * (setting + half));
        var left = (to.Point - from.Point).Left / distance;
        return from.Point.Towards(to.Point, 0.5) + left * (side == LineSide.Left ? rise : -rise);
    }
}
