namespace PatternGen;

/// <summary>Puts together what was found alike at chips of the same shapes, in a fixed order: what matters most first.</summary>
internal static class FindingGroups
{
    internal static IEnumerable<Occurrence[]> Of(InspectionJob job)
    {
        var chips = job.Layout.Chips;
        var groups = job
            .Found.GroupBy(found =>
            {
                var shape = chips[found.Chip].Shape;
                var other = found.Other < 0 ? -1 : chips[found.Other].Shape;
                return (
                    found.Kind,
                    Math.Min(shape, other),
                    Math.Max(shape, other),
                    Math.Round(found.Limit, 6)
                );
            })
            .SelectMany(Alike)
            .Select(group => (Occurrence[])[.. group.OrderBy(IdOf).ThenBy(OtherOf)])
            .ToList();
        return groups
            .OrderByDescending(group => FindingWriter.SeverityOf(group[0].Kind))
            .ThenBy(group => group[0].Kind)
            .ThenBy(group => IdOf(group[0]))
            .ThenBy(group => OtherOf(group[0]))
            .ThenBy(group => group[0].Value)
            .ThenBy(group => group[0].Limit);

        ChipId IdOf(Occurrence found) => chips[found.Chip].Id;

        ChipId OtherOf(Occurrence found) => found.Other < 0 ? default : chips[found.Other].Id;
    }

    /// <summary>Runs of values that arithmetic alone tells apart.</summary>
    private static IEnumerable<List<Occurrence>> Alike(IEnumerable<Occurrence> found)
    {
        List<Occurrence> run = [];
        foreach (var next in found.OrderBy(one => one.Value))
        {
            if (run.Count > 0 && next.Value - run[^1].Value > InspectionJob.Slack)
            {
                yield return run;
                run = [];
            }
            run.Add(next);
        }
        if (run.Count > 0)
            yield return run;
    }
}
