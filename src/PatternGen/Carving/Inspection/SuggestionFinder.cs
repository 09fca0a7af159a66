namespace PatternGen;

/// <summary>Looks for changes of a whole pattern that clear findings. Each is inspected before it is suggested.</summary>
internal sealed class SuggestionFinder(InspectionJob job, Pattern pattern, Wording words)
{
    /// <summary>A border gets at most so many times as many repeats.</summary>
    private const int MostRepeats = 3;

    internal IEnumerable<Suggestion> Find()
    {
        if (job.Found.Exists(IsTooDeep))
        {
            if (LargestScale() is { } scale)
                yield return Say(SuggestionKind.SmallerScale, scale);
            if (pattern is RailBorder border && LargestPitch(border) is { } pitch)
                yield return Say(SuggestionKind.SmallerPitch, pitch);
        }
        if (SmallestSpread() is { } spread)
            yield return Say(SuggestionKind.LargerGaps, spread);
    }

    private Suggestion Say(SuggestionKind kind, double value) =>
        new(kind, value, words.Suggestion(kind, value));

    private static bool IsTooDeep(Occurrence found) =>
        found.Kind
            is FindingKind.TooDeepForStock
                or FindingKind.BeyondReach
                or FindingKind.WiderThanBit
                or FindingKind.OverComfortableDepth;

    /// <summary>What shrinks the deepest chip enough shrinks all others enough.</summary>
    private double? LargestScale()
    {
        var scale = job
            .Found.Where(IsTooDeep)
            .Select(found =>
                new RemedyFinder(job, [found])
                    .Find()
                    .Where(remedy => remedy.Kind == RemedyKind.Shrink)
                    .Select(remedy => remedy.Value)
                    .FirstOrDefault()
            )
            .Min();
        return scale > 0 && IsBetter(job.Layout.Scaled(scale), IsTooDeep) ? scale : null;
    }

    /// <summary>By halving: with more repeats, chips get narrower.</summary>
    private double? LargestPitch(RailBorder border)
    {
        try
        {
            var repeats = border.Fit.Repeats;
            var (few, many) = (repeats, MostRepeats * repeats);
            if (IsTooDeepWith(many))
                return null;
            while (many - few > 1)
            {
                var middle = (few + many) / 2;
                (few, many) = IsTooDeepWith(middle) ? (middle, many) : (few, middle);
            }
            var fitted = Fitted(many);
            var isBetter = IsBetter(ChipLayout.Of(fitted, job.Stock), IsTooDeep);
            return isBetter ? fitted.Fit.Pitch : null;
        }
        catch (PatternException)
        {
            // The border says what pitches it takes, and these are none of them.
            return null;
        }

        RailBorder Fitted(int count) =>
            border.Fitted(fit => fit.Pitch(border.Fit.Pitch * border.Fit.Repeats / count));

        bool IsTooDeepWith(int count)
        {
            var tried = job.For(ChipLayout.Of(Fitted(count), job.Stock));
            new ShapeCheck(tried).Run();
            return tried.Found.Exists(IsTooDeep);
        }
    }

    /// <summary>What widens each thin ridge enough, if the chips stand in one direction or all are spread.</summary>
    private double? SmallestSpread()
    {
        var spread = 1.0;
        foreach (var found in job.Found)
        {
            if (found.Kind != FindingKind.RidgeTooThin || found.Other < 0)
                continue;
            var (one, other) = (job.Layout.Chips[found.Chip], job.Layout.Chips[found.Other]);
            var apart = found.Direction.Dot(other.Extents.Centre - one.Extents.Centre);
            if (apart <= 0)
                return null;
            spread = Math.Max(spread, 1 + (found.Limit - found.Value) / apart);
        }
        if (spread == 1)
            return null;
        spread = Math.Ceiling(spread * 1000 - InspectionJob.Slack) / 1000;
        return IsBetter(job.Layout.Spread(spread), found => found.Kind == FindingKind.RidgeTooThin)
            ? spread
            : null;
    }

    /// <summary>Whether a changed pattern has none of the findings in question, and no more of the others than before.</summary>
    private bool IsBetter(ChipLayout changed, Predicate<Occurrence> inQuestion)
    {
        var tried = job.For(changed);
        tried.Run();
        if (tried.Found.Exists(inQuestion))
            return false;
        var before = job.Found.ToLookup(found => found.Kind);
        return tried
            .Found.GroupBy(found => found.Kind)
            .All(group => group.Count() <= before[group.Key].Count());
    }
}
