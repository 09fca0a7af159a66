namespace PatternGen;

/// <content>What is drawn many times in a round, told once for all.</content>
internal sealed partial class StepSentence
{
    /// <summary>So few arcs are told one by one.</summary>
    private const int FewArcs = 2;

    /// <summary>A point as near as this share of the setting looks as if the pencil met it.</summary>
    private const double LooksMet = 0.005;

    /// <summary>Bulge from which an arc is too near a half circle, 1, to see which way is short.</summary>
    private const double NearlyHalf = 0.9;

    private string Arcs() =>
        step.Needles.Count == 1 ? PointWords.Ways(step.From, step.To) : RoundOfArcs() ?? EachArc();

    private string EachArc() =>
        PointWords.InTurn(
            step.Needles.Select(
                (needle, i) =>
                    $"round {needle.Label} from {step.From[i].Label} to {step.To[i].Label}"
            )
        );

    /// <summary>
    /// Without naming the ends of each arc: they are the points of the round that the pencil meets. Null where that would
    /// not tell which arcs are meant.
    /// </summary>
    private string? RoundOfArcs()
    {
        var hub = Hub();
        MarkedPoint[] ends = [.. step.From.Concat(step.To).Where(point => point != hub)];
        var met = hub is null ? 2 : 1;
        if (step.Needles.Count <= FewArcs || !step.Needles.All(MeetsOnlyItsEnds))
            return null;
        var round = PointWords.List(InOrder(ends));
        if (step.Through is { } through)
            return $"through {through.Label}, from one of {round} to another";
        if (!step.Drawn.All(arc => Math.Abs(arc.Curve.Segment.Bulge) < NearlyHalf))
            return null;
        return hub is null
            ? $"the short way between the two of {round} that it meets"
            : $"from {hub.Label} to the one of {round} that it meets";

        bool MeetsOnlyItsEnds(MarkedPoint needle) =>
            ends.Distinct().Count(end => LooksMetFrom(needle, end)) == met;
    }

    /// <summary>The point where every arc starts or ends.</summary>
    private MarkedPoint? Hub() =>
        ((MarkedPoint[])[step.From[0], step.To[0]]).FirstOrDefault(point =>
            step.From.Zip(step.To).All(way => way.First == point || way.Second == point)
        );

    private bool LooksMetFrom(MarkedPoint needle, MarkedPoint point)
    {
        var setting = step.Setting!.Value;
        var distance = needle.Point.DistanceTo(point.Point);
        return Math.Abs(distance - setting) <= LooksMet * setting;
    }

    private string GoOver() =>
        $"Starting at {PointWords.EachOf([.. InOrder(step.From)])}, go over the faint {Sort(step.Curves)} as far as {Limits()}";

    private string Limits()
    {
        if (step.OtherCurves is [var only])
            return NameOf(only);
        var strong = step.OtherCurves.All(curve => curve.Line == PencilLine.Drawn) ? "strong " : "";
        return step.OtherCurves.All(IsArc)
            ? $"they first meet the {strong}{Sort(step.OtherCurves)} about {PointWords.List(InOrder(step.OtherCurves.Select(arc => arc.Needle!)))}"
            : $"they first meet {PointWords.InTurn(step.OtherCurves.Select(NameOf).Distinct())}";
    }

    private static string Sort(IReadOnlyList<DrawnCurve> curves)
    {
        var sort =
            curves.All(IsArc) ? "arc"
            : curves.All(curve => curve.Needle is null) ? "line"
            : "curve";
        return curves.Distinct().Count() == 1 ? sort : $"{sort}s";
    }

    private static bool IsArc(DrawnCurve curve) =>
        curve.Needle is not null && !curve.Curve.IsCircle;

    /// <summary>By label, numbers before letters.</summary>
    private static IEnumerable<MarkedPoint> InOrder(IEnumerable<MarkedPoint> points) =>
        points
            .OrderBy(point => char.IsAsciiLetter(point.Label[0]))
            .ThenBy(point => point.Label.Length)
            .ThenBy(point => point.Label, StringComparer.Ordinal);
}
