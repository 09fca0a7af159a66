using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>Marks where two curves cross.</summary>
    /// <param name="one">A curve.</param>
    /// <param name="other">Another curve.</param>
    /// <param name="choice">Which crossing is meant; not needed where there is only one.</param>
    /// <exception cref="ArgumentException">A curve is of another drawing.</exception>
    /// <exception cref="PatternException">They do not cross, they run along each other, or the choice does not tell which crossing is meant.</exception>
    public MarkedPoint Cross(DrawnCurve one, DrawnCurve other, CrossingChoice? choice = null)
    {
        var at = CrossingOf(one, other, choice);
        return RecordCross([one], [other], choice, [_drawing.Marks.Lettered(at)])[0];
    }

    /// <summary>Marks where each curve crosses the one beside it in the other list, in one step; the points get numbers.</summary>
    /// <inheritdoc cref="Cross(DrawnCurve, DrawnCurve, CrossingChoice?)"/>
    /// <param name="ones">Curves.</param>
    /// <param name="others">As many other curves; a single one serves all.</param>
    /// <param name="choice">Which crossing is meant, each time.</param>
    public IReadOnlyList<MarkedPoint> Cross(
        IEnumerable<DrawnCurve> ones,
        IEnumerable<DrawnCurve> others,
        CrossingChoice? choice = null
    )
    {
        var (first, second) = Lists.SideBySide(ones, others);
        Point[] places = [.. first.Zip(second, (one, other) => CrossingOf(one, other, choice))];
        var number = _drawing.Marks.Reserve(places.Length);
        return RecordCross(
            first,
            second,
            choice,
            [.. places.Select((at, i) => _drawing.Marks.Numbered(number + i, at))]
        );
    }

    /// <summary>Marks where the compass, as it is set, cuts a curve.</summary>
    /// <param name="needle">Where the needle stands.</param>
    /// <param name="curve">The curve that the pencil meets.</param>
    /// <param name="choice">Which crossing is meant; not needed where there is only one.</param>
    /// <exception cref="ArgumentException">The point or curve is of another drawing.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">The pencil does not meet the curve, or the choice does not tell where.</exception>
    public MarkedPoint Cut(MarkedPoint needle, DrawnCurve curve, CrossingChoice? choice = null)
    {
        var setting = _drawing.PresentSetting();
        var swept = new Circle(_drawing.Of(needle), setting);
        var places = CurveCrossings.Between(_drawing.Of(curve), swept, _drawing.Tolerance);
        if (places.Count == 0)
            throw OutOfReach(needle, curve.Curve, setting);
        var at = Chosen(places, choice);
        var marked = _drawing.Marks.Lettered(at);
        _drawing.Add(
            new(_drawing.NextNumber, StepKind.Cut)
            {
                Setting = setting,
                Needles = [needle],
                Curves = [curve],
                Choice = choice,
                Marked = [marked],
                Drawn = [Tick(needle.Point, at)],
                OutsideOf = _drawing.EdgeInside([needle]),
            }
        );
        return marked;
    }

    /// <summary>Transfers a length: takes the distance of two points into the compass and cuts a curve with it.</summary>
    /// <param name="from">Start of the length.</param>
    /// <param name="to">End of the length.</param>
    /// <param name="needle">Where the length is to start now.</param>
    /// <param name="along">The line (or other curve) on which it is to end.</param>
    /// <param name="choice">To which side; not needed where the compass cuts the line only once.</param>
    /// <inheritdoc cref="Cut"/>
    public MarkedPoint Transfer(
        MarkedPoint from,
        MarkedPoint to,
        MarkedPoint needle,
        DrawnCurve along,
        CrossingChoice? choice = null
    )
    {
        SetRadius(from, to);
        return Cut(needle, along, choice);
    }

    /// <summary>Marks where arcs from two points cross, with the compass as it is set: where the needle stands to draw an arc through both.</summary>
    /// <param name="from">One point.</param>
    /// <param name="to">The other.</param>
    /// <param name="side">On which side of the way from the one to the other.</param>
    /// <exception cref="ArgumentException">A point is of another drawing, or both are the same.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">The setting is too small for the arcs to cross.</exception>
    public MarkedPoint CrossArcs(MarkedPoint from, MarkedPoint to, LineSide side) =>
        RecordCrossArcs([from], [to], side, _drawing.Marks.Lettered)[0];

    /// <summary>Marks where arcs from each pair of points cross, in one step; the crossings get numbers.</summary>
    /// <inheritdoc cref="CrossArcs(MarkedPoint, MarkedPoint, LineSide)"/>
    public IReadOnlyList<MarkedPoint> CrossArcs(
        IEnumerable<MarkedPoint> from,
        IEnumerable<MarkedPoint> to,
        LineSide side
    )
    {
        var (starts, ends) = Lists.SideBySide(from, to);
        var number = _drawing.Marks.Reserve(starts.Length);
        return RecordCrossArcs(starts, ends, side, at => _drawing.Marks.Numbered(number++, at));
    }

    private MarkedPoint[] RecordCross(
        DrawnCurve[] ones,
        DrawnCurve[] others,
        CrossingChoice? choice,
        MarkedPoint[] marked
    )
    {
        _drawing.Add(
            new(_drawing.NextNumber, StepKind.Cross)
            {
                Curves = ones,
                OtherCurves = others,
                Choice = choice,
                Marked = marked,
            }
        );
        return marked;
    }

    private MarkedPoint[] RecordCrossArcs(
        MarkedPoint[] from,
        MarkedPoint[] to,
        LineSide side,
        Func<Point, MarkedPoint> mark
    )
    {
        var setting = _drawing.PresentSetting();
        Guard.Defined(side);
        // All are found before the first is marked, so that an error leaves no mark without a step.
        Point[] places = [.. from.Zip(to, (a, b) => CrossingOf(a, b, setting, side))];
        MarkedPoint[] marked = [.. places.Select(mark)];
        _drawing.Add(
            new(_drawing.NextNumber, StepKind.CrossArcs)
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
                OutsideOf = _drawing.EdgeInside([.. from, .. to]),
            }
        );
        return marked;
    }

    private Point CrossingOf(DrawnCurve one, DrawnCurve other, CrossingChoice? choice)
    {
        var (curve, second) = (_drawing.Of(one), _drawing.Of(other));
        var places = CurveCrossings.Between(curve, second, _drawing.Tolerance);
        if (places.Count == 0)
            throw new PatternException(
                "The two curves do not cross.",
                curve.Extents.Centre,
                ["a line extended until it crosses", "a larger setting for one of them"]
            );
        return Chosen(places, choice);
    }

    private Point Chosen(IReadOnlyList<Point> places, CrossingChoice? choice)
    {
        if (choice is not null)
        {
            _drawing.Of(choice.From);
            if (choice.To is not null)
                _drawing.Distance(choice.From, choice.To);
        }
        var fitting = choice?.Fitting(places, _drawing.Tolerance) ?? places;
        if (fitting.Count == 1)
            return fitting[0];
        var where = string.Join(" and ", places);
        throw new PatternException(
            choice is null
                ? $"The curves cross at {where} mm, and it is not said which crossing is meant."
                : $"The curves cross at {where} mm, and {fitting.Count} of these are what the choice asks for.",
            places[0],
            [
                "the crossing nearest to a point, or farthest from it",
                "the one left or right of a way",
            ]
        );
    }

    /// <summary>Where arcs with one setting from two points cross.</summary>
    private Point CrossingOf(MarkedPoint from, MarkedPoint to, double setting, LineSide side)
    {
        var distance = _drawing.Distance(from, to);
        var half = distance / 2;
        if (setting <= half + _drawing.Tolerance.Merge)
            throw new PatternException(
                $"A compass set to {Guard.Text(setting)} mm draws no arcs from {from.Label} and {to.Label} that cross, {Guard.Text(distance)} mm apart.",
                from.Point.Towards(to.Point, 0.5),
                [$"a setting of more than {Guard.Text(half)} mm"]
            );
        var rise = Math.Sqrt((setting - half) * (setting + half));
        var left = (to.Point - from.Point).Left / distance;
        return from.Point.Towards(to.Point, 0.5) + left * (side == LineSide.Left ? rise : -rise);
    }

    private PatternException OutOfReach(MarkedPoint needle, Curve curve, double setting)
    {
        var (nearest, farthest) = CurveCrossings.Reach(curve, needle.Point, _drawing.Tolerance);
        return new(
            $"From {needle.Label}, a compass set to {Guard.Text(setting)} mm does not meet the curve, which lies {Guard.Text(nearest)} to {Guard.Text(farthest)} mm away.",
            needle.Point,
            [$"a setting between {Guard.Text(nearest)} and {Guard.Text(farthest)} mm"]
        );
    }

    /// <summary>The short arc that finds a place: ten degrees to each side, enough to see where it crosses.</summary>
    internal static DrawnCurve Tick(Point needle, Point at)
    {
        const double halfDegrees = 10;
        var toPlace = at - needle;
        return new(
            Segment.Arc(
                needle,
                toPlace.Length,
                toPlace.Direction - Angle.FromDegrees(halfDegrees),
                Angle.FromDegrees(2 * halfDegrees)
            ),
            PencilLine.Guide
        );
    }
}
