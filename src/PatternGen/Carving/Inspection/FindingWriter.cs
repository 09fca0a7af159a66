namespace PatternGen;

/// <summary>Makes a finding of what was found alike: with places, remedies and words.</summary>
internal sealed class FindingWriter(InspectionJob job, Wording words)
{
    /// <summary>How far down it is said what stands round tips that meet, in mm.</summary>
    private const double Below = 1;

    internal static FindingSeverity SeverityOf(FindingKind kind) =>
        kind switch
        {
            FindingKind.OffStock
            or FindingKind.ChipsOverlap
            or FindingKind.TooDeepForStock
            or FindingKind.BeyondReach
            or FindingKind.WiderThanBit => FindingSeverity.Error,
            FindingKind.WallsFlattened => FindingSeverity.Note,
            _ => FindingSeverity.Warning,
        };

    internal Finding Write(Occurrence[] alike)
    {
        var first = alike[0];
        var severity = SeverityOf(first.Kind);
        FindingPlace[] places = [.. alike.Select(PlaceOf)];
        Remedy[] remedies =
        [
            .. new RemedyFinder(job, alike)
                .Find()
                .Select(found => new Remedy(
                    found.Kind,
                    found.Value,
                    found.Direction,
                    words.RemedyFor(found.Kind, found.Value, found.Detail, found.Direction)
                )),
        ];
        var message = words.Finding(
            severity,
            words.FindingChips(places[0].Chip, places[0].Other, places.Length - 1),
            words.Found(first.Kind, first.Value, first.Limit, DetailOf(first)),
            first.Place,
            [.. remedies.Select(remedy => remedy.Text)]
        );
        return new(first.Kind, severity, first.Value, first.Limit, places, remedies, message);
    }

    private FindingPlace PlaceOf(Occurrence found)
    {
        var chips = job.Layout.Chips;
        return new(
            chips[found.Chip].Id,
            found.Other < 0 ? null : chips[found.Other].Id,
            found.Place,
            found.All is { } all ? [.. all.Select(number => chips[number].Id).Order()] : null
        );
    }

    /// <summary>
    /// A wall at angle w stands back h / tan(w) at depth h; a tip of angle t then ends that much / sin(t/2) from where it
    /// ends at the surface.
    /// </summary>
    private double DetailOf(Occurrence found)
    {
        if (found.Kind != FindingKind.TipsMeeting)
            return 0;
        var back = Below / Math.Tan(job.Cutter.WallAngleFor(0).Radians);
        return 2 * back / Math.Sin(double.DegreesToRadians(Math.Max(1, found.Detail)) / 2);
    }
}
