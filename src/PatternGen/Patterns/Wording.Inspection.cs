using PatternGen.Geometry;

namespace PatternGen;

public partial class Wording
{
    /// <summary>A finding as one or two sentences: <c>Warning: chip 1.1: 5.64 mm deep, over the comfortable 4 mm. Shrink it to 70.9 %, or hold the knife at 56.7°.</c></summary>
    /// <param name="severity">How much it matters.</param>
    /// <param name="chips">Which chips, in words.</param>
    /// <param name="what">What was found, in words.</param>
    /// <param name="place">Where, at the first chip.</param>
    /// <param name="remedies">What would clear it, in words.</param>
    public virtual string Finding(
        FindingSeverity severity,
        string chips,
        string what,
        Point place,
        IReadOnlyList<string> remedies
    )
    {
        var found = $"{Severity(severity)}: {chips}, at {Place(place)}: {what}.";
        return remedies.Count == 0
            ? found
            : $"{found} {FirstLarge(string.Join(", or ", remedies))}.";
    }

    /// <summary>How much a finding matters, in a word.</summary>
    public virtual string Severity(FindingSeverity severity) =>
        severity switch
        {
            FindingSeverity.Error => "Error",
            FindingSeverity.Warning => "Warning",
            _ => "Note",
        };

    /// <summary>A place on the wood: <c>(12.5, 3)</c>.</summary>
    public virtual string Place(Point place) => $"({Number(place.X, 1)}, {Number(place.Y, 1)})";

    /// <summary>Which chips a finding is about: <c>chip 1.1 and 89 more like it</c>.</summary>
    /// <param name="chip">The first chip.</param>
    /// <param name="other">The second one, of a finding between two.</param>
    /// <param name="more">How many more places there are like this.</param>
    public virtual string FindingChips(ChipId chip, ChipId? other, int more)
    {
        if (other is { } second)
            return $"chips {chip} and {second}"
                + (more == 0 ? "" : $" and {more} more {(more == 1 ? "pair" : "pairs")} like them");
        return $"chip {chip}" + (more == 0 ? "" : $" and {more} more like it");
    }

    /// <summary>What was found: <c>5.64 mm deep, over the comfortable 4 mm</c>.</summary>
    /// <param name="kind">What.</param>
    /// <param name="value">What was measured, as <see cref="FindingKind"/> says.</param>
    /// <param name="limit">What it is held against.</param>
    /// <param name="detail">Of tips that meet: the diameter in mm of the wood that stands round them 1 mm below the surface; else 0.</param>
    public virtual string Found(FindingKind kind, double value, double limit, double detail) =>
        kind switch
        {
            FindingKind.OffStock => $"{Millimetres(value)} beyond the edge of the wood",
            FindingKind.ChipsOverlap => $"they overlap by {Millimetres(value)}",
            FindingKind.TooDeepForStock => value > 0
                ? $"leaves a floor of {Millimetres(value)}, less than {Millimetres(limit)}"
                : $"goes through the wood by {Millimetres(-value)}, and should leave {Millimetres(limit)}",
            FindingKind.BeyondReach =>
                $"{Millimetres(value)} deep, but the blade reaches {Millimetres(limit)}",
            FindingKind.WiderThanBit =>
                $"{Millimetres(value)} wide, but the bit measures {Millimetres(limit)}",
            FindingKind.OverComfortableDepth =>
                $"{Millimetres(value)} deep, over the comfortable {Millimetres(limit)}",
            FindingKind.TooNarrow =>
                $"{Millimetres(value)} wide, narrower than cuts cleanly, {Millimetres(limit)}",
            FindingKind.TipTooSharp => $"a tip of {Degrees(value)}, sharper than {Degrees(limit)}",
            FindingKind.HollowTooTight =>
                $"a hollow curve of radius {Millimetres(value)}, tighter than {Millimetres(limit)}",
            FindingKind.RidgeTooThin =>
                $"a ridge of {Millimetres(value)}, neither sharp nor {Millimetres(limit)} wide",
            FindingKind.ShortGrain =>
                $"ground comes to a point of {Degrees(value)} across the grain, sharper than {Degrees(limit)}, and may break out",
            FindingKind.TipsMeeting =>
                $"{Number(value, 0)} tips meet, more than {Number(limit, 0)}; {Millimetres(detail)} of wood stand round them 1 mm down: scrape there, do not undercut",
            FindingKind.NearEdge =>
                $"{Millimetres(value)} from the edge of the wood, less than {Millimetres(limit)}",
            FindingKind.OffRuledLine => value < 0
                ? $"falls short of its ruled line by {Millimetres(-value)}"
                : $"crosses its ruled line by {Millimetres(value)}",
            _ =>
                $"walls flattened to {Degrees(value)}, where the knife is held at {Degrees(limit)}",
        };

    /// <summary>What would clear a finding: <c>hold the knife at 56.7°</c>.</summary>
    /// <param name="kind">What to do.</param>
    /// <param name="value">The number that goes with it, as <see cref="RemedyKind"/> says.</param>
    /// <param name="detail">Of a chip to be made smaller or larger: its width in mm then, or 0; of one to be split: the number of parts; else 0.</param>
    /// <param name="direction">Where something is to be moved; null where nothing is, and where each place has its own direction.</param>
    public virtual string RemedyFor(
        RemedyKind kind,
        double value,
        double detail,
        Angle? direction
    ) =>
        kind switch
        {
            RemedyKind.Shrink => $"shrink it to {Number(100 * value, 1)} %{Width(detail)}",
            RemedyKind.Enlarge => $"enlarge it to {Number(100 * value, 1)} %{Width(detail)}",
            RemedyKind.HoldKnifeAt => $"hold the knife at {Degrees(value)}",
            RemedyKind.Split => detail <= 2
                ? $"split it by a middle ridge into two parts at most {Millimetres(value)} wide"
                : $"split it by ridges into {Number(detail, 0)} parts at most {Millimetres(value)} wide",
            RemedyKind.ThickerStock => $"take wood {Millimetres(value)} thick",
            RemedyKind.LongerReach => $"take a blade that reaches {Millimetres(value)}",
            RemedyKind.LargerBit => $"take a bit of {Millimetres(value)}",
            RemedyKind.NarrowerBlade =>
                $"take a blade that follows a radius of {Millimetres(value)}",
            RemedyKind.FlatterCurve => $"draw the curve with a radius of {Millimetres(value)}",
            RemedyKind.OpenTip => $"open the tip to {Degrees(value)}",
            RemedyKind.OpenRidge => $"open the point of the ground to {Degrees(value)}",
            RemedyKind.MoveApart =>
                $"move the second one away by {Millimetres(value)}{Towards(direction)}",
            RemedyKind.MoveTogether =>
                $"move the second one up to the first by {Millimetres(value, 4)}{Towards(direction)}",
            RemedyKind.Move => direction is null
                ? $"move each by {Millimetres(value)}, away from its edge or line"
                : $"move it by {Millimetres(value)}{Towards(direction)}",
            RemedyKind.PlainCentre => $"leave a plain centre of {Millimetres(value)}",
            RemedyKind.FewerTips => $"let at most {Number(value, 0)} of them meet",
            _ => $"let the grain run at {Degrees(value)}",
        };

    /// <summary>A change of the whole pattern: <c>draw the whole pattern at 62.1 %: no chip is too deep then</c>.</summary>
    /// <param name="kind">What to change.</param>
    /// <param name="value">The number that goes with it, as <see cref="SuggestionKind"/> says.</param>
    public virtual string Suggestion(SuggestionKind kind, double value) =>
        kind switch
        {
            SuggestionKind.SmallerScale =>
                $"draw the whole pattern at {Number(100 * value, 1)} %: no chip is too deep then",
            SuggestionKind.SmallerPitch =>
                $"fit the border with a pitch of {Millimetres(value, 4)}: no chip is too deep then",
            _ =>
                $"set the chips {Number(100 * value, 1)} % as far apart, at the same size: no ridge is too thin then",
        };

    /// <summary>How many findings there are: <c>1 error, 2 warnings, 1 note</c>.</summary>
    /// <param name="errors">Number of errors.</param>
    /// <param name="warnings">Number of warnings.</param>
    /// <param name="notes">Number of notes.</param>
    public virtual string FindingCount(int errors, int warnings, int notes)
    {
        string[] counts =
        [
            .. new[] { (errors, "error"), (warnings, "warning"), (notes, "note") }
                .Where(count => count.Item1 > 0)
                .Select(count => $"{count.Item1} {count.Item2}{(count.Item1 == 1 ? "" : "s")}"),
        ];
        return counts.Length == 0 ? "nothing found" : string.Join(", ", counts);
    }

    /// <summary>What the drawing of a report is called: <c>Inspection: Rail 742.5 × 36 mm</c>.</summary>
    /// <param name="title">What the pattern is.</param>
    public virtual string ReportTitle(string title) => $"Inspection: {title}";

    /// <summary>What the marks on the drawing of a report mean.</summary>
    public virtual string ReportMarks =>
        "Rings: where something was found. Numbers: which of the findings below.";

    /// <summary>Said of a pattern with line cuts, which an inspection does not look at.</summary>
    public virtual string LineCutsNotInspected => "Line cuts are not inspected.";

    /// <summary>Stands over the suggestions of a report.</summary>
    public virtual string SuggestionsTitle => "For the whole pattern, this would help:";

    /// <summary>An angle: <c>56.7°</c>.</summary>
    public virtual string Degrees(double value) => $"{Number(value, 1)}°";

    /// <summary>A direction on the wood, after a distance: <c> to the right</c>.</summary>
    private string Towards(Angle? direction)
    {
        if (direction is not { } angle)
            return "";
        var degrees = Number(angle.Normalized().Degrees, 1);
        return degrees switch
        {
            "0" or "360" => " to the right",
            "90" => " upwards",
            "180" => " to the left",
            "270" => " downwards",
            _ => $" at {degrees}°",
        };
    }

    private string Width(double width) => width > 0 ? $", {Millimetres(width)} wide" : "";

    private static string FirstLarge(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
