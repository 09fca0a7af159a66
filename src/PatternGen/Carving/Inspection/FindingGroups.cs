namespace PatternGen;

/// <summary>Puts together what was found alike at chips that look the same, in a fixed order: what matters most first.</summary>
internal static class FindingGroups
{
    internal static IEnumerable<Occurrence[]> Of(InspectionJob job)
    {
        var chips = job.Layout.Chips;
        var groups = job
            .Found.GroupBy(found =>
            {
                var likeness = LikenessOf(found.Chip);
                var other = found.Other < 0 ? default : LikenessOf(found.Other);
                return (
                    found.Kind,
                    Math.Round(found.Limit, 6),
                    likeness.CompareTo(other) < 0 ? (likeness, other) : (other, likeness)
                );
            })
            .SelectMany(group => Alike(group, found => found.Value))
            // Places with one value may ask for different remedies, as in a corner of the wood and along its edge.
            .SelectMany(group => Alike(group, found => found.Detail))
            .Select(group => (Occurrence[])[.. group.OrderBy(IdOf).ThenBy(OtherOf)])
            .ToList();
        return groups
            .OrderByDescending(group => FindingWriter.SeverityOf(group[0].Kind))
            .ThenBy(group => group[0].Kind)
            .ThenBy(group => IdOf(group[0]))
            .ThenBy(group => OtherOf(group[0]))
            .ThenBy(group => group[0].Value)
            .ThenBy(group => group[0].Limit);

        // Chips drawn one by one may be as equal as repeats are: by sides, area and length they look so.
        (int Sides, double Area, double Length) LikenessOf(int number)
        {
            var shape = job.Layout.ShapeOf(chips[number]);
            var scale = chips[number].Placement.Scale;
            return (
                shape.Sides.Count,
                Math.Round(shape.Area * scale * scale, 4),
                Math.Round(shape.Length * scale, 4)
            );
        }

        ChipId IdOf(Occurrence found) => chips[found.Chip].Id;

        ChipId OtherOf(Occurrence found) => found.Other < 0 ? default : chips[found.Other].Id;
    }

    /// <summary>Runs of values that arithmetic alone tells apart.</summary>
    private static IEnumerable<List<Occurrence>> Alike(
        IEnumerable<Occurrence> found,
        Func<Occurrence, double> value
    )
    {
        List<Occurrence> run = [];
        foreach (var next in found.OrderBy(value))
        {
            if (run.Count > 0 && value(next) - value(run[^1]) > InspectionJob.Slack)
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
