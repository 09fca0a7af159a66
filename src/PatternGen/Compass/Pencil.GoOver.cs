using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>Goes over a faint arc or line, from one of its ends to where it first meets one of other curves; the rest stays faint.</summary>
    /// <param name="curve">A faint arc or line.</param>
    /// <param name="from">The end to begin from.</param>
    /// <param name="until">Curves that it may meet; what it meets where it begins does not count.</param>
    /// <returns>The part that is now a line of the figure.</returns>
    /// <exception cref="ArgumentException">A curve or the point is of another drawing, the curve is not faint or has no end there.</exception>
    /// <exception cref="PatternException">It meets none of the other curves, or runs along one of them.</exception>
    public DrawnCurve GoOver(DrawnCurve curve, MarkedPoint from, params DrawnCurve[] until) =>
        GoOver([Guard.NotNull(curve)], [Guard.NotNull(from)], until)[0];

    /// <summary>Goes over faint arcs and lines, each from the end beside it in the other list, in one step.</summary>
    /// <inheritdoc cref="GoOver(DrawnCurve, MarkedPoint, DrawnCurve[])"/>
    /// <param name="curves">Faint arcs and lines; one that is gone over from both ends stands here twice.</param>
    /// <param name="from">The end to begin from, of each; a single point serves all.</param>
    /// <param name="until">Curves that they may meet, all of them for each; what one meets where it begins does not count.</param>
    public IReadOnlyList<DrawnCurve> GoOver(
        IEnumerable<DrawnCurve> curves,
        IEnumerable<MarkedPoint> from,
        IEnumerable<DrawnCurve> until
    )
    {
        var faint = Lists.Each(curves);
        var starts = Lists.Each(from, faint.Length);
        var limits = Lists.Each(until);
        DrawnCurve[] parts = [.. faint.Zip(starts, (curve, start) => UpTo(curve, start, limits))];
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.GoOver)
            {
                From = starts,
                Curves = faint,
                OtherCurves = limits,
                Drawn = parts,
            }
        );
        return parts;
    }

    private DrawnCurve UpTo(DrawnCurve curve, MarkedPoint from, DrawnCurve[] limits)
    {
        var whole = Faint(curve);
        var isForward = Drawing.Tolerance.Same(whole.Start, Drawing.Of(from));
        if (!isForward && !Drawing.Tolerance.Same(whole.End, from.Point))
            throw new ArgumentException(
                $"The curve runs from {whole.Start} to {whole.End} and has no end at {from}.",
                nameof(from)
            );
        var way = isForward ? whole : whole.Reversed();
        var met = limits
            .SelectMany(limit => CurveCrossings.Between(way, Drawing.Of(limit), Drawing.Tolerance))
            .Where(place => !Drawing.Tolerance.Same(place, way.Start))
            .ToArray();
        if (met.Length == 0)
            throw new PatternException(
                $"The faint curve from {from.Label} meets none of the curves that it is gone over as far as.",
                way.End,
                ["other curves to stop at", "a longer curve", "the curve drawn whole"]
            );
        var end = met.MinBy(way.LengthAt);
        var part = new Segment(way.Start, end, way.PartBulge(way.LengthAt(end) / way.Length));
        return new(isForward ? part : part.Reversed(), PencilLine.Drawn)
        {
            Needle = curve.Needle,
            From = isForward ? from : null,
            To = isForward ? null : from,
        };
    }

    private Segment Faint(DrawnCurve curve)
    {
        var known = Drawing.Of(curve);
        if (known.IsCircle)
            throw new ArgumentException(
                "A whole circle has no end to go over it from; draw it again, or an arc of it.",
                nameof(curve)
            );
        return curve.Line == PencilLine.Guide
            ? known.Segment
            : throw new ArgumentException(
                "The curve belongs to the figure already; only a faint one can be gone over.",
                nameof(curve)
            );
    }
}
