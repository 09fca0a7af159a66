using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Fits a band to a closed line, where the last repeat meets the first.</summary>
internal static class ClosedFit
{
    /// <summary>Fewer repeats would have to span half a turn each, and meet twice.</summary>
    private const int LeastRepeats = 3;

    /// <summary>Fits whole repeats.</summary>
    /// <param name="length">Length of the line in mm, where lengths are measured.</param>
    /// <param name="band">The band.</param>
    /// <param name="fitting">How it is to be fitted.</param>
    /// <exception cref="PatternException">The fitting speaks of ends, or no number of repeats is within the limits.</exception>
    internal static BandPlan Solve(double length, TriangleBand band, Fitting fitting)
    {
        RefuseEnds(fitting);
        var question = fitting.Ask(length, band, fitting.Parity, extra: 0);
        var repeats = question.Nearest();
        if (repeats is not >= LeastRepeats)
            throw NoPitch(fitting, question);
        return Plan(repeats.Value, length, question.Nominal);
    }

    /// <summary>Returns the plan for a number of repeats.</summary>
    internal static BandPlan Plan(int repeats, double length, double asked) =>
        new(
            new(1, repeats, length / repeats, asked, 0, 0, EndMatch.Alike, 0, isClosed: true),
            [new(0, length, 2 * repeats, IsClosed: true)],
            HasExtraHalf: false
        );

    private static void RefuseEnds(Fitting fitting)
    {
        var asked =
            fitting.LeftMargin > 0 || fitting.RightMargin > 0 ? "margins"
            : fitting.Centre is not null ? "a centre motif to lie between"
            : fitting.Ends != EndRule.AsTheyCome ? "a mirror or a half turn to match"
            : fitting.PitchStep is not null ? "what a pitch on a grid leaves over"
            : null;
        if (asked is not null)
            throw new PatternException(
                $"A band that runs all round has no ends for {asked}.",
                remedies: ["a fitting without", "a band along a part of the line only"]
            );
    }

    private static PatternException NoPitch(Fitting fitting, PitchQuestion question)
    {
        var aim = Math.Clamp(question.Nominal, question.Min, question.Max);
        var fewer = question.UpToParity(
            Math.Max(LeastRepeats, question.DownToParity((int)(question.Length / aim)))
        );
        var more = question.UpToParity(fewer + 1);
        return new(
            $"No {FitTrouble.Kind(question)}number of at least {LeastRepeats} repeats fills {Guard.Text(question.Length)} mm all round at a pitch between {Guard.Text(question.Min)} and {Guard.Text(question.Max)} mm.",
            remedies:
            [
                FitTrouble.PitchFor(fitting, question, fewer),
                FitTrouble.PitchFor(fitting, question, more),
            ]
        );
    }
}
