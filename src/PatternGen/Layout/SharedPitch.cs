using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds one pitch for several lengths.</summary>
internal static class SharedPitch
{
    /// <summary>
    /// Returns the pitch that fills every length with whole repeats, nearest to the nominal one; or, where none within
    /// the limits does, the one that leaves the least over at the rail where it leaves most.
    /// </summary>
    internal static double Find(IReadOnlyList<PitchQuestion> questions)
    {
        // As a pitch grows, what is left over shrinks until some length is exactly full: only those pitches can be best.
        var candidates = questions
            .DistinctBy(question => question.Length)
            .SelectMany(FullPitches)
            .Select(pitch => (Pitch: pitch, LeftOver: WorstLeftOver(questions, pitch)))
            .Where(candidate => candidate.LeftOver is not null)
            .ToArray();
        if (candidates.Length == 0)
            throw NonePossible(questions);
        var least = candidates.Min(candidate => candidate.LeftOver)!.Value;
        var nominal = questions[0].Nominal;
        var rounding = Tolerance.ForExtent(questions.Max(question => question.Length)).Merge;
        return candidates
            .Where(candidate => candidate.LeftOver <= least + rounding)
            .MinBy(candidate => Math.Abs(candidate.Pitch - nominal))
            .Pitch;
    }

    /// <summary>The pitches within the limits that fill a length exactly.</summary>
    private static IEnumerable<double> FullPitches(PitchQuestion question)
    {
        var (first, last) = question.Counts();
        for (var count = first; count <= last; count = question.UpToParity(count + 1))
            yield return question.PitchFor(count);
    }

    private static double? WorstLeftOver(IReadOnlyList<PitchQuestion> questions, double pitch)
    {
        double worst = 0;
        foreach (var question in questions)
        {
            var count = question.CountAt(pitch);
            if (count == 0)
                return null;
            worst = Math.Max(worst, question.Length - (count + question.Extra) * pitch);
        }
        return worst;
    }

    private static PatternException NonePossible(IReadOnlyList<PitchQuestion> questions)
    {
        var shortest = questions.Min(question => question.Length);
        return new(
            $"No pitch between {Guard.Text(questions[0].Min)} and {Guard.Text(questions[0].Max)} mm fills one of the rails and fits all of them; "
                + $"the shortest has {Guard.Text(shortest)} mm to carve.",
            remedies:
            [
                "wider limits for the pitch",
                "each rail at its own pitch",
                "other end margins",
            ]
        );
    }
}
