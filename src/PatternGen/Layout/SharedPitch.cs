using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds one pitch for several lengths.</summary>
internal static class SharedPitch
{
    /// <summary>
    /// Returns the pitch that fills every length with whole repeats, nearest to the nominal one. Where none within the
    /// limits does, returns the one with the least sum of two things in mm: what it leaves over at an end of the rail
    /// where it leaves most, and how far it is off the nominal pitch.
    /// </summary>
    /// <param name="questions">What each length asks.</param>
    /// <param name="step">If given, the pitch is a whole number of steps.</param>
    internal static double Find(IReadOnlyList<PitchQuestion> questions, double? step)
    {
        var nominal = questions[0].Nominal;
        var rounding = Tolerance.ForExtent(questions.Max(question => question.Length)).Merge;
        double? best = null;
        var leastCost = double.PositiveInfinity;
        var bestIsExact = false;
        foreach (var pitch in Candidates(questions, step))
        {
            if (WorstLeftOver(questions, pitch) is not { } leftOver)
                continue;
            var isExact = leftOver <= rounding;
            var cost = Math.Abs(pitch - nominal) + (isExact ? 0 : leftOver / 2);
            if (isExact == bestIsExact ? cost >= leastCost : bestIsExact)
                continue;
            (best, leastCost, bestIsExact) = (pitch, cost, isExact);
        }
        return best ?? throw NonePossible(questions);
    }

    /// <summary>
    /// As a pitch grows, what is left over shrinks, faster than the pitch leaves the nominal one, until some length is
    /// exactly full: only those pitches and the nominal one can be best.
    /// </summary>
    private static IEnumerable<double> Candidates(
        IReadOnlyList<PitchQuestion> questions,
        double? step
    )
    {
        var (min, max) = (questions[0].Min, questions[0].Max);
        if (step is { } grid)
        {
            for (
                var k = Math.Max(1, Math.Ceiling(min / grid - 1e-9));
                k * grid <= max * (1 + 1e-12);
                k++
            )
                yield return k * grid;
            yield break;
        }
        yield return Math.Clamp(questions[0].Nominal, min, max);
        foreach (var question in questions.DistinctBy(question => question.Length))
        {
            var (first, last) = question.Counts();
            for (var count = first; count <= last; count = question.UpToParity(count + 1))
                yield return question.PitchFor(count);
        }
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
            $"No pitch between {Guard.Text(questions[0].Min)} and {Guard.Text(questions[0].Max)} mm fits all of the lengths; "
                + $"the shortest has {Guard.Text(shortest)} mm to carve.",
            remedies:
            [
                "wider limits for the pitch",
                "each at its own pitch",
                "shorter end margins or smaller corners",
            ]
        );
    }
}
