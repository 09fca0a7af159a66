using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Says why a band can't be fitted as asked, and the nearest that works.</summary>
internal sealed class FitTrouble(
    double length,
    Fitting fitting,
    PitchQuestion question,
    int parts,
    Func<double, Point> place
)
{
    /// <summary>Figures offered as remedies are rounded to this part of a millimetre, towards what works.</summary>
    private const double Steps = 1e4;

    /// <summary>Figures nearer than this share to a whole step are that step: so far the arithmetic may be off.</summary>
    private const double Noise = 1e-15;

    /// <summary>No knife carves less, and no pitch is told in a thousandth of a millimetre.</summary>
    private const double ShortestCarved = 1e-3;

    private Point BandStart => place(fitting.LeftMargin);

    /// <summary>Length taken by margins and centre motif.</summary>
    private double Taken => fitting.LeftMargin + fitting.RightMargin + fitting.CentreWidth;

    internal void RefuseContradictions()
    {
        if (fitting.Parity != RepeatParity.Any && fitting.Centre is not null)
            throw new PatternException(
                "A centre motif stands on the centre line, so neither a repeat nor a gap can.",
                remedies:
                [
                    "a centre motif without an odd or even number of repeats",
                    "no centre motif",
                ]
            );
        if (fitting.Parity != RepeatParity.Any && question.Extra > 0)
            throw new PatternException(
                "A band whose staggered rows are shifted has neither a repeat nor a gap on its centre line.",
                remedies:
                [
                    "staggered rows that end in half gaps or half chips",
                    "any number of repeats",
                ]
            );
        if (fitting.Ends != EndRule.TurnedAtMiddle)
            return;
        if (fitting.Parity == RepeatParity.Odd)
            throw new PatternException(
                "A band turned round at the middle has an even number of repeats, so no repeat stands on the centre line.",
                remedies:
                [
                    "a gap on the centre line",
                    "mirrored ends, if the band has an upright mirror",
                ]
            );
        if (question.Extra > 0)
            throw new PatternException(
                "A band whose staggered rows are shifted ends half a pitch on, so it can't be turned round at its middle.",
                remedies:
                [
                    "staggered rows that end in half gaps",
                    "staggered rows that end in half chips",
                ]
            );
    }

    internal void RefuseNoRoom()
    {
        var taken = fitting.Centre is null
            ? "The end margins"
            : "The end margins and the centre motif";
        if (!(question.Length >= ShortestCarved))
            throw new PatternException(
                $"{taken} take {Text(Taken)} mm, which leaves nothing of the {Text(length)} mm to carve.",
                BandStart,
                [$"less than {Text(length)} mm for them together"]
            );
        if (question.Length / question.Min <= PitchQuestion.MaxRepeats)
            return;
        // Without limits of its own a pitch may come out a third shorter than asked.
        var asked = fitting.PitchLimits is null ? question.Nominal / question.Min : 1;
        var least = Math.Ceiling(question.Length / PitchQuestion.MaxRepeats * asked * 1e6) / 1e6;
        throw new PatternException(
            $"{Text(question.Length)} mm at a pitch of {question.Min:0.######e0} mm would take over {PitchQuestion.MaxRepeats} repeats.",
            BandStart,
            [$"a pitch of at least {Text(least)} mm"]
        );
    }

    internal PatternException NoChips() =>
        new(
            "So few repeats of staggered rows leave no chip between their ends.",
            BandStart,
            ["a shorter pitch", "staggered rows that end in half chips", "rows in step"]
        );

    internal void RefuseUnmatchedEnds(bool mirrored, bool turned, bool isShifted)
    {
        string[] unshifted = isShifted
            ? ["staggered rows that end in half gaps or half chips"]
            : [];
        if (fitting.Ends == EndRule.Mirrored && !mirrored)
        {
            string[] halfTurn = turned ? ["ends alike by a half turn (HalfTurnEnds)"] : [];
            throw new PatternException(
                isShifted
                    ? "A band whose staggered rows are shifted has ends that are no mirror images."
                    : "This band has no upright mirror, so its ends can't be mirror images.",
                BandStart,
                isShifted
                    ? [.. unshifted, .. halfTurn]
                    : ["the band turned round at the middle (TurnedAtMiddle)", .. halfTurn]
            );
        }
        if (fitting.Ends == EndRule.HalfTurn && !turned)
            throw new PatternException(
                "A half turn does not take this band into itself, so its ends can't match by one.",
                BandStart,
                mirrored
                    ? ["mirrored ends (MirroredEnds)"]
                    : [.. unshifted, "the band turned round at the middle (TurnedAtMiddle)"]
            );
    }

    /// <summary>The pitch on the grid that is nearest to the nominal one within the limits.</summary>
    internal double PitchOnGrid(double step)
    {
        var first = Math.Max(1, Math.Ceiling(question.Min / step * (1 - 1e-12)));
        var last = Math.Floor(question.Max / step * (1 + 1e-12));
        if (first > last)
            throw new PatternException(
                $"No multiple of {Text(step)} mm lies between the pitches {Text(question.Min)} and {Text(question.Max)} mm.",
                BandStart,
                [
                    last >= 1
                        ? $"limits that include {Text(last * step)} or {Text(first * step)} mm"
                        : $"limits that include {Text(first * step)} mm",
                    question.Max > question.Min
                        ? $"a step of at most {Down(question.Max - question.Min)} mm"
                        : $"a step that divides {Text(question.Max)} mm",
                ]
            );
        return Math.Clamp(Math.Round(question.Nominal / step), first, last) * step;
    }

    internal PatternException NoRepeat(double pitch) =>
        new(
            $"Not one repeat of {Text(pitch)} mm fits into {Text(question.Length)} mm.",
            BandStart,
            [
                $"a length of at least {Up(SeenLength((question.UpToParity(1) + question.Extra) * pitch))} mm",
                $"a pitch of at most {Down(question.PitchFor(question.UpToParity(1)))} mm",
            ]
        );

    internal PatternException NoPitch()
    {
        var aim = Math.Clamp(question.Nominal, question.Min, question.Max);
        var ideal = (int)(question.Length / aim - question.Extra);
        var fewer = Math.Max(question.UpToParity(1), question.DownToParity(ideal));
        var more = question.UpToParity(fewer + 1);
        return new(
            $"No {Kind(question)}number of repeats fills {Text(question.Length)} mm at a pitch between {Text(question.Min)} and {Text(question.Max)} mm.",
            BandStart,
            [.. Lengths(fewer, more), .. Pitches(fewer, more)]
        );
    }

    private IEnumerable<string> Lengths(int fewer, int more)
    {
        var shorter = SeenLength((fewer + question.Extra) * question.Max);
        var longer = SeenLength((more + question.Extra) * question.Min);
        if (shorter < length)
            yield return $"a length of {Down(shorter)} mm ({Repeats(fewer)})";
        else
            longer = SeenLength((fewer + question.Extra) * question.Min);
        if (longer > length)
            yield return $"a length of {Up(longer)} mm ({Repeats(shorter < length ? more : fewer)})";
    }

    private IEnumerable<string> Pitches(int fewer, int more) =>
        ((int[])[fewer, more]).Select(count => PitchFor(fitting, question, count));

    /// <summary>Says which pitch a number of repeats takes.</summary>
    internal static string PitchFor(Fitting fitting, PitchQuestion question, int repeats)
    {
        var pitch = question.PitchFor(repeats);
        var rounded = pitch > question.Max ? Up(pitch) : Down(pitch);
        return fitting.PitchLimits is null
            ? $"a pitch of {rounded} mm asked for ({Repeats(repeats)})"
            : $"limits that include {rounded} mm ({Repeats(repeats)})";
    }

    private double SeenLength(double partLength) => parts * partLength + Taken;

    /// <summary>The numbers of repeats that a question is about, as a word before "number".</summary>
    internal static string Kind(PitchQuestion question) =>
        question.Parity switch
        {
            RepeatParity.Odd => "odd ",
            RepeatParity.Even => "even ",
            _ => "",
        };

    private static string Repeats(int count) => count == 1 ? "1 repeat" : $"{count} repeats";

    /// <summary>A figure that is not too small, as messages print it.</summary>
    internal static string Up(double value) =>
        Text(Math.Ceiling(value * Steps * (1 - Noise)) / Steps);

    /// <summary>A figure that is not too large, as messages print it.</summary>
    internal static string Down(double value) =>
        Text(Math.Floor(value * Steps * (1 + Noise)) / Steps);

    private static string Text(double value) => Guard.Text(value);
}
