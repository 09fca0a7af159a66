using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>Draws a whole circle with the compass as it is set.</summary>
    /// <param name="needle">Where the needle stands.</param>
    /// <param name="line">Whether it belongs to the figure; by default it does.</param>
    /// <exception cref="ArgumentException">The point is of another drawing.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    public DrawnCurve Circle(MarkedPoint needle, PencilLine line = PencilLine.Drawn) =>
        Circles([Guard.NotNull(needle)], line)[0];

    /// <summary>Draws a whole circle round each of the points, in one step.</summary>
    /// <inheritdoc cref="Circle"/>
    public IReadOnlyList<DrawnCurve> Circles(
        IEnumerable<MarkedPoint> needles,
        PencilLine line = PencilLine.Drawn
    )
    {
        var setting = Drawing.PresentSetting();
        var stands = Lists.Each(needles);
        Guard.Defined(line);
        DrawnCurve[] circles =
        [
            .. stands.Select(needle => new DrawnCurve(new Circle(Drawing.Of(needle), setting), line)
            {
                Needle = needle,
            }),
        ];
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Circle)
            {
                Setting = setting,
                Needles = stands,
                Drawn = circles,
                OutsideOf = Drawing.EdgeInside(stands),
            }
        );
        return circles;
    }

    /// <summary>Draws an arc with the compass as it is set, counter-clockwise.</summary>
    /// <param name="needle">Where the needle stands.</param>
    /// <param name="from">Where the arc starts, as far from the needle as the compass is set.</param>
    /// <param name="to">Where it ends, as far from the needle.</param>
    /// <param name="line">Whether it belongs to the figure; by default it does.</param>
    /// <exception cref="ArgumentException">A point is of another drawing, or the arc ends where it starts.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">With this setting the pencil does not meet an end.</exception>
    public DrawnCurve Arc(
        MarkedPoint needle,
        MarkedPoint from,
        MarkedPoint to,
        PencilLine line = PencilLine.Drawn
    ) => Arcs([Guard.NotNull(needle)], [Guard.NotNull(from)], [Guard.NotNull(to)], line)[0];

    /// <summary>Draws an arc round each of the points, from and to the points beside it in the other lists, in one step.</summary>
    /// <inheritdoc cref="Arc"/>
    /// <param name="needles">Where the needle stands in turn.</param>
    /// <param name="from">Where each arc starts; a single point serves all.</param>
    /// <param name="to">Where each arc ends; a single point serves all.</param>
    /// <param name="line">Whether they belong to the figure; by default they do.</param>
    public IReadOnlyList<DrawnCurve> Arcs(
        IEnumerable<MarkedPoint> needles,
        IEnumerable<MarkedPoint> from,
        IEnumerable<MarkedPoint> to,
        PencilLine line = PencilLine.Drawn
    )
    {
        var setting = Drawing.PresentSetting();
        var stands = Lists.Each(needles);
        var starts = Lists.Each(from, stands.Length);
        var ends = Lists.Each(to, stands.Length);
        Guard.Defined(line);
        var arcs = new DrawnCurve[stands.Length];
        for (var i = 0; i < arcs.Length; i++)
            arcs[i] = ArcRound(stands[i], starts[i], ends[i], setting, line);
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Arc)
            {
                Setting = setting,
                Needles = stands,
                From = starts,
                To = ends,
                Through = Drawing.Marks.Within([.. arcs.Select(arc => arc.Curve.Segment)]),
                Drawn = arcs,
                OutsideOf = Drawing.EdgeInside(stands),
            }
        );
        return arcs;
    }

    /// <summary>
    /// Draws an arc of less than a half circle from one point to another, counter-clockwise, with the compass as it is
    /// set: first arcs from both ends cross where the needle will stand, then the needle draws.
    /// </summary>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">The setting is too small for the points.</exception>
    public DrawnCurve ArcThrough(
        MarkedPoint from,
        MarkedPoint to,
        PencilLine line = PencilLine.Drawn
    ) => ArcsThrough([Guard.NotNull(from)], [Guard.NotNull(to)], line)[0];

    /// <summary>Draws an arc between each pair of points, in two steps for all.</summary>
    /// <inheritdoc cref="ArcThrough"/>
    public IReadOnlyList<DrawnCurve> ArcsThrough(
        IEnumerable<MarkedPoint> from,
        IEnumerable<MarkedPoint> to,
        PencilLine line = PencilLine.Drawn
    )
    {
        var (starts, ends) = Lists.SideBySide(from, to);
        return Arcs(CrossArcs(starts, ends, LineSide.Left), starts, ends, line);
    }

    /// <summary>Draws a straight line between two points.</summary>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    public DrawnCurve Join(MarkedPoint from, MarkedPoint to, PencilLine line = PencilLine.Drawn) =>
        Join([Guard.NotNull(from)], [Guard.NotNull(to)], line)[0];

    /// <summary>Draws a straight line between each pair of points, in one step.</summary>
    /// <param name="from">Where each line starts; a single point serves all.</param>
    /// <param name="to">Where each line ends; a single point serves all.</param>
    /// <param name="line">Whether they belong to the figure; by default they do.</param>
    /// <exception cref="ArgumentException">A point is of another drawing, or both of a pair are the same.</exception>
    public IReadOnlyList<DrawnCurve> Join(
        IEnumerable<MarkedPoint> from,
        IEnumerable<MarkedPoint> to,
        PencilLine line = PencilLine.Drawn
    )
    {
        var (starts, ends) = Lists.SideBySide(from, to);
        Guard.Defined(line);
        var lines = new DrawnCurve[starts.Length];
        for (var i = 0; i < lines.Length; i++)
            lines[i] = LineBetween(starts[i], ends[i], line);
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Join)
            {
                From = starts,
                To = ends,
                Drawn = lines,
            }
        );
        return lines;
    }

    /// <summary>Draws the polygon or star that joins every so many points of a round, in one step.</summary>
    /// <param name="round">Points in their order round a circle, as <see cref="DivideCircle(DrawnCurve, int, MarkedPoint)"/> returns them.</param>
    /// <param name="every">1 for a polygon, 2 or more for a star; less than the number of points.</param>
    /// <param name="line">Whether the lines belong to the figure; by default they do.</param>
    /// <exception cref="ArgumentOutOfRangeException">Every so many points of so few is no line.</exception>
    public IReadOnlyList<DrawnCurve> JoinRound(
        IReadOnlyList<MarkedPoint> round,
        int every = 1,
        PencilLine line = PencilLine.Drawn
    )
    {
        var points = Lists.Each(round);
        Guard.Within(every, 1, Math.Max(1, points.Length - 1));
        return Join(points, points.Select((_, i) => points[(i + every) % points.Length]), line);
    }

    private DrawnCurve ArcRound(
        MarkedPoint needle,
        MarkedPoint from,
        MarkedPoint to,
        double setting,
        PencilLine line
    )
    {
        ThrowIfOutOfReach(needle, from, setting);
        ThrowIfOutOfReach(needle, to, setting);
        Drawing.Distance(from, to);
        var sweep = AngleBetween(from.Point - needle.Point, to.Point - needle.Point);
        return new(new Segment(from.Point, to.Point, Math.Tan(sweep / 4)), line)
        {
            Needle = needle,
            From = from,
            To = to,
        };
    }

    private DrawnCurve LineBetween(MarkedPoint from, MarkedPoint to, PencilLine line)
    {
        Drawing.Distance(from, to);
        return new(new Segment(from.Point, to.Point), line) { From = from, To = to };
    }

    private void ThrowIfOutOfReach(MarkedPoint needle, MarkedPoint point, double setting)
    {
        var distance = Drawing.Distance(needle, point);
        if (Math.Abs(distance - setting) > Drawing.Tolerance.Merge)
            throw new PatternException(
                $"From {needle.Label}, a compass set to {Guard.Text(setting)} mm does not meet {point.Label}, {Guard.Text(distance)} mm away.",
                point.Point,
                [$"a setting of {Guard.Text(distance)} mm"]
            );
    }

    /// <summary>Counter-clockwise turn from one vector to another, more than 0 and at most a whole turn, in radians.</summary>
    private static double AngleBetween(Vector from, Vector to)
    {
        var turn = Math.Atan2(from.Cross(to), from.Dot(to));
        return turn > 0 ? turn : turn + Math.Tau;
    }
}
