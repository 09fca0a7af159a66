namespace PatternGen;

/// <summary>The English sentence for a step of a compass drawing.</summary>
internal sealed partial class StepSentence(Wording words, CompassStep step)
{
    internal string Text() => $"{Instruction()}{OutsideWork()}.";

    private string Instruction() =>
        step.Kind switch
        {
            StepKind.Mark => $"Mark {Marked}{Place()}",
            StepKind.MarkOnCircle => $"Mark {Marked} on {CurveName}, {Direction()}",
            StepKind.SetRadius => SetRadius(),
            StepKind.Circle => $"{WithPoint}, draw a {Faint}circle",
            StepKind.Arc => Arcs(),
            StepKind.Walk => Walk(),
            StepKind.Cut => $"{WithPoint}, cut {CurveName}{Chosen()}, and mark {Marked} there",
            StepKind.CrossArcs => CrossArcs(),
            StepKind.Cross => $"Mark {Marked} where {Crossings()}{Chosen()}",
            StepKind.Bisect =>
                $"{ArcsFromBoth}; draw a {Faint}line through both crossings, and mark {Marked} halfway from {Start} to {End}",
            StepKind.BisectArc =>
                $"{ArcsFromBoth}; lay the straightedge on both crossings, and mark {Marked} on {CurveName}, halfway from {Start} to {End}",
            StepKind.Perpendicular => Perpendicular(),
            StepKind.Join =>
                $"{(IsFaint ? "Draw faintly" : "Draw straight")} {PointWords.Ways(step.From, step.To)}",
            StepKind.Extend =>
                $"Draw {(IsFaint ? "faintly" : "straight")} {PointWords.Ways(step.From, step.To, between: "through")}, as far as {CurveName}, and mark {Marked} there",
            StepKind.GoOver => GoOver(),
            _ =>
                $"Set the dividers to {Setting}, step from {Start} to {End} in {PointWords.Number(step.Count)} steps, and mark {Marked} on the way",
        };

    /// <summary>From the point that was marked first; that one lies where the drawing is to be.</summary>
    private string Place()
    {
        if (step.From.Count == 0)
            return ", the point to begin from";
        var way = step.Marked[0].Point - step.From[0].Point;
        var (across, up) = (words.Number(Math.Abs(way.X), 2), words.Number(Math.Abs(way.Y), 2));
        List<string> moves = [];
        if (across != "0")
            moves.Add($"{across} mm to the {(way.X > 0 ? "right" : "left")}");
        if (up != "0" || across == "0")
            moves.Add($"{up} mm {(way.Y < 0 ? "down" : "up")}");
        return $", {string.Join(" and ", moves)} from {Start}";
    }

    private string Direction()
    {
        var degrees = words.Number(step.Direction!.Value.Normalized().Degrees, 2);
        return degrees switch
        {
            "0" or "360" => "at its right",
            "90" => "at its top",
            "180" => "at its left",
            "270" => "at its bottom",
            _ => $"{degrees}° from its right, counter-clockwise",
        };
    }

    private string SetRadius()
    {
        if (step.From.Count > 0)
            return $"Set the compass from {Start} to {End}, {Setting}";
        return step.Division is { } division
            ? $"Set the dividers to {Setting} for {PointWords.Number(division.Count)} equal parts"
            : $"Set the compass to {Setting}";
    }

    private string Walk()
    {
        var places = step.Every == 1 ? "" : $"every {PointWords.Ordinal(step.Every)} place, ";
        var marks = step.Marked.Count == 0 ? "" : $" and mark {places}{Marked}";
        return $"Starting at {Start}, step {PointWords.Times(step.Count)} round {CurveName}{marks}{Closing()}";
    }

    private string CrossArcs()
    {
        var side = step.Side == LineSide.Left ? "left" : "right";
        var ways = PointWords.Ways(step.From, step.To);
        var (each, its) = step.From.Count == 1 ? ("the way", "the") : ("each way,", "each");
        return $"With the compass at {Setting}, draw short arcs from both ends of {each} {ways}, and mark {Marked} where they cross, on the {side} of {its} way";
    }

    private string Perpendicular()
    {
        var needle = step.Needles[0];
        var foot = step.Marked[0] == needle ? "" : $", and mark its foot {Marked}";
        return $"With the point on {needle.Label}, cut {CurveName} on both sides, open the compass to the distance of the cuts, draw arcs from both that cross on both sides, and draw a {Faint}line through {needle.Label} and the crossings{foot}";
    }
}
