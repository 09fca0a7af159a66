namespace PatternGen;

/// <summary>One thing that is done to a pattern: as it was done, when it is written; how to do it, when it is read.</summary>
internal sealed record RecipeStep(ChangedOrigin? Done, Func<Pattern, Pattern> Do)
{
    private RecipeStep(ChangedOrigin done)
        : this(done, pattern => pattern) { }

    /// <summary>Takes a pattern apart: what was drawn first, or is described elsewhere, and what was then done to it.</summary>
    internal static (Pattern Drawn, IReadOnlyList<RecipeStep> Steps) Apart(
        Pattern pattern,
        RecipeWriting writing
    )
    {
        var done = new List<ChangedOrigin>();
        var drawn = pattern;
        while (drawn is DrawnPattern { Origin: ChangedOrigin change })
        {
            done.Add(change);
            drawn = change.Before;
            if (writing.IsDescribedApart(drawn))
                break;
        }
        done.Reverse();
        return (drawn, [.. Together(done).Select(change => new RecipeStep(change))]);
    }

    /// <summary>Patterns put in one after the other become one step, so that thousands stay readable, and low as a tree.</summary>
    private static IEnumerable<ChangedOrigin> Together(List<ChangedOrigin> done)
    {
        for (var i = 0; i < done.Count; )
        {
            if (done[i] is not WithOrigin first)
            {
                yield return done[i++];
                continue;
            }
            var others = new List<Pattern>();
            while (i < done.Count && done[i] is WithOrigin next)
            {
                others.AddRange(next.Others);
                i++;
            }
            yield return new WithOrigin(first.Before, others);
        }
    }
}
