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

    private string Arcs()
    {
        var draw = IsFaint ? "draw a faint arc" : "draw an arc";
        if (step.Needles.Count == 1)
            return $"{WithPoint}, {draw} {PointWords.Ways(step.From, step.To)}";
        return RoundOfArcs() is { } round
            ? $"With the point on each of {PointWords.List(InOrder(step.Needles))} in turn, {draw} {round}"
            : $"{WithPoint}, {draw} {EachArc()}";
    }

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
        if (step.Needles.Count <= FewArcs || !step.Needles.All(MeetsOnlyItsEnds))
            return null;
        var round = PointWords.List(InOrder(ends));
        if (step.Through is { } through)
            return $"through {through.Label}, from one of {round} to another";
        if (!step.Drawn.All(arc => Math.Abs(arc.Curve.Segment.Bulge) < NearlyHalf))
            return null;
        return hub is null
            ? $"the short way between the two of {round} that it meets"
            : $"from {hub.Label} to whichever of {round} it meets";

        bool MeetsOnlyItsEnds(MarkedPoint needle) =>
            ends.Distinct().Count(end => LooksMetFrom(needle, end))
            == (hub is null ? 2 : step.Needles.Count(other => other == needle));
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
        var they = step.Curves.Distinct().Count() == 1 ? "it first meets" : "they first meet";
        var strong = step.OtherCurves.All(curve => curve.Line == PencilLine.Drawn) ? "strong " : "";
        return step.OtherCurves.All(IsArc)
            ? $"{they} the {strong}{Sort(step.OtherCurves)} about {PointWords.List(InOrder(step.OtherCurves.Select(arc => arc.Needle!)))}"
            : $"{they} {PointWords.InTurn(step.OtherCurves.Select(NameOf).Distinct(), "or")}";
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
