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
        return RecordCross([one], [other], choice, [Drawing.Marks.Lettered(at)])[0];
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
        return RecordCross(first, second, choice, Drawing.Marks.NextNumbered(places));
    }

    private MarkedPoint[] RecordCross(
        DrawnCurve[] ones,
        DrawnCurve[] others,
        CrossingChoice? choice,
        MarkedPoint[] marked
    )
    {
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Cross)
            {
                Curves = ones,
                OtherCurves = others,
                Choice = choice,
                Marked = marked,
            }
        );
        return marked;
    }

    private Point CrossingOf(DrawnCurve one, DrawnCurve other, CrossingChoice? choice)
    {
        var (curve, second) = (Drawing.Of(one), Drawing.Of(other));
        var places = CurveCrossings.Between(curve, second, Drawing.Tolerance);
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
            Drawing.Of(choice.From, nameof(choice));
            if (choice.To is not null)
                Drawing.Distance(choice.From, choice.To, nameof(choice), nameof(choice));
        }
        var fitting = choice?.Fitting(places, Drawing.Tolerance) ?? places;
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
}
