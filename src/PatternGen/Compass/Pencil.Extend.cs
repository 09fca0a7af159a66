using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>
    /// Draws a straight line from a point through another, or towards it, to the last place where the straightedge crosses
    /// a curve: from a point of a circle through its centre, a diameter.
    /// </summary>
    /// <param name="from">Where the line starts.</param>
    /// <param name="through">The point that tells its direction.</param>
    /// <param name="to">The curve where it ends.</param>
    /// <param name="line">Whether it belongs to the figure; by default it does.</param>
    /// <returns>The line, and its end.</returns>
    /// <exception cref="ArgumentException">A point or the curve is of another drawing, or both points are the same.</exception>
    /// <exception cref="PatternException">The line would not meet the curve.</exception>
    public MarkedLine Extend(
        MarkedPoint from,
        MarkedPoint through,
        DrawnCurve to,
        PencilLine line = PencilLine.Drawn
    ) => Extend(from, through, to, line, null);

    /// <summary>Draws such a line for each pair of points, in one step; their ends get numbers.</summary>
    /// <inheritdoc cref="Extend(MarkedPoint, MarkedPoint, DrawnCurve, PencilLine)"/>
    public IReadOnlyList<MarkedLine> Extend(
        IEnumerable<MarkedPoint> from,
        IEnumerable<MarkedPoint> through,
        DrawnCurve to,
        PencilLine line = PencilLine.Drawn
    )
    {
        var (starts, directions) = Lists.SideBySide(from, through);
        return RecordExtend(starts, directions, to, line, Drawing.Marks.NextNumbered);
    }

    /// <summary>Draws such a line, marking its end with a number already given out, or else a letter.</summary>
    internal MarkedLine Extend(
        MarkedPoint from,
        MarkedPoint through,
        DrawnCurve to,
        PencilLine line,
        int? number
    ) =>
        RecordExtend(
            [from],
            [through],
            to,
            line,
            places =>
                [
                    number is { } known
                        ? Drawing.Marks.Numbered(known, places[0])
                        : Drawing.Marks.Lettered(places[0]),
                ]
        )[0];

    private MarkedLine[] RecordExtend(
        MarkedPoint[] from,
        MarkedPoint[] through,
        DrawnCurve to,
        PencilLine line,
        Func<Point[], MarkedPoint[]> mark
    )
    {
        Guard.Defined(line);
        // All are found before the first is marked, so that an error leaves no mark without a step.
        Point[] places = [.. from.Zip(through, (a, b) => LastOn(a, b, to))];
        var ends = mark(places);
        MarkedLine[] lines =
        [
            .. ends.Select((end, i) => new MarkedLine(LineBetween(from[i], end, line), end)),
        ];
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Extend)
            {
                From = from,
                To = through,
                Curves = [to],
                Marked = ends,
                Drawn = [.. lines.Select(drawn => drawn.Line)],
            }
        );
        return lines;
    }

    /// <summary>The last place where the straightedge, laid from one point through another, crosses a curve.</summary>
    private Point LastOn(MarkedPoint from, MarkedPoint through, DrawnCurve to)
    {
        Drawing.Distance(from, through);
        var target = Drawing.Of(to);
        var direction = (through.Point - from.Point).Unit();
        var reach = CurveCrossings.Reach(target, from.Point, Drawing.Tolerance).Farthest;
        var ray = new Segment(from.Point, from.Point + direction * (2 * reach));
        var places = CurveCrossings
            .Between(ray, target, Drawing.Tolerance)
            .Where(place => !Drawing.Tolerance.Same(place, from.Point))
            .ToArray();
        return places.Length > 0
            ? places.MaxBy(from.Point.DistanceTo)
            : throw new PatternException(
                $"The straightedge laid from {from.Label} through {through.Label} does not cross the curve.",
                from.Point,
                ["a line through another point", "a curve that the line meets"]
            );
    }
}
