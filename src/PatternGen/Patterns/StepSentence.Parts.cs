namespace PatternGen;

internal sealed partial class StepSentence
{
    private static readonly double[] Readings = [0.1, 0.25];

    private string Marked => PointWords.List(step.Marked);

    private string Start => step.From[0].Label;

    private string End => step.To[0].Label;

    private string CurveName => NameOf(step.Curves[0]);

    /// <summary>A setting is read from a rule: a hundredth of a millimetre tells more than it shows.</summary>
    private string Setting => words.Millimetres(step.Setting!.Value);

    private bool IsFaint => step.Drawn[0].Line == PencilLine.Guide;

    private string Faint => IsFaint ? "faint " : "";

    private string WithPoint =>
        step.Needles.Count == 1
            ? $"With the point on {step.Needles[0].Label}"
            : $"With the point on each of {PointWords.List(step.Needles)} in turn";

    private string ArcsFromBoth =>
        $"With the compass at {Setting}, draw short arcs from {Start} and from {End} that cross on both sides";

    private string Crossings() =>
        PointWords.InTurn(
            step.Curves.Zip(
                step.OtherCurves,
                (one, other) => $"{NameOf(one)} crosses {NameOf(other)}"
            )
        );

    private string Chosen() =>
        step.Choice switch
        {
            null => "",
            { Rule: CrossingRule.Nearest } choice => $", nearest to {choice.From.Label}",
            { Rule: CrossingRule.Farthest } choice => $", farthest from {choice.From.Label}",
            { Rule: CrossingRule.Left } choice =>
                $", left of the way from {choice.From.Label} to {choice.To!.Label}",
            var choice => $", right of the way from {choice.From.Label} to {choice.To!.Label}",
        };

    /// <summary>That the last step comes back; and where it ends instead, if the setting is read from a rule.</summary>
    private string Closing()
    {
        if (!step.Closes)
            return "";
        var last = $"; the {PointWords.Ordinal(step.Count)} step";
        return step.Division is { } division
            ? $"{last} should come back to {Start}, and ends {string.Join(", ", Readings.Select(reading => Miss(division, reading)).Distinct())}{Cure(division)}"
            : $"{last} comes back to {Start}";
    }

    /// <summary>The larger circle to step on, where the coarsest reading misses by too much.</summary>
    private string Cure(CircleDivision division)
    {
        var reading = Readings[^1];
        if (
            division.SteppedRadius > division.Radius
            || division.FactorFor(reading, CircleDivision.UsualLimit) is not ({ } factor and > 1)
        )
            return "";
        var larger = division.OnLargerCircle(factor);
        var miss = words.Millimetres(Math.Abs(larger.ClosingError(reading)));
        return $"; stepped on a circle {words.Number(factor, 0)} times as large at {words.Millimetres(larger.Setting(reading))} and brought in along the radii, it misses by {miss}";
    }

    private string Miss(CircleDivision division, double reading)
    {
        if (!division.CanRead(reading))
            return $"cannot be read to {words.Number(reading, 2)} mm";
        // On the circle that is walked, which may be a larger one than is divided.
        var error = division.ClosingError(reading) * division.SteppedRadius / division.Radius;
        var miss = words.Number(Math.Abs(error), 2);
        var side = error < 0 ? "short of" : "past";
        var where = miss == "0" ? "on it" : $"{miss} mm {side} it";
        return $"{where} at {words.Millimetres(division.Setting(reading))}";
    }

    private string NameOf(DrawnCurve drawn)
    {
        var curve = drawn.Curve;
        if (curve.IsCircle)
            return $"the {words.Millimetres(curve.Circle.Radius)} circle about {drawn.Needle!.Label}";
        if (drawn.Needle is { } needle)
            return $"the arc about {needle.Label} {Ends(drawn)}";
        return drawn switch
        {
            { IsAcross: true, To: null } => $"the line square at {drawn.From!.Label}",
            { IsAcross: true } => $"the line that halves {drawn.From!.Label} to {drawn.To!.Label}",
            _ => $"the line {Ends(drawn)}",
        };
    }

    /// <summary>What was gone over has a point at one end only.</summary>
    private static string Ends(DrawnCurve drawn) =>
        drawn is { From: { } from, To: { } to }
            ? $"from {from.Label} to {to.Label}"
            : $"at {(drawn.From ?? drawn.To)!.Label}";

    private string OutsideWork() =>
        step.OutsideOf is { } edge
            ? $"; where the point stands outside {NameOf(edge)}, lay scrap wood of the same thickness beside the piece for it"
            : "";
}
