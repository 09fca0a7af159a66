using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Says why repeats can't be fitted to a path as asked, and the nearest that works.</summary>
internal sealed class PathTrouble(SegmentRun path, PathSettings settings, bool isLoop, int group)
{
    /// <summary>More than any piece of wood holds; each takes memory of its own.</summary>
    private const int MaxRepeats = 1_000_000;

    internal void RefuseContradictions(Func<PathCorner, double> room)
    {
        if (path.IsClosed && (settings.FirstMargin > 0 || settings.LastMargin > 0))
            throw new PatternException(
                "A closed path has no ends, so it has no end margins either.",
                remedies: ["no end margins", "room at the corners (CornerGaps)", "an open path"]
            );
        if (isLoop && settings.OnEnds)
            throw new PatternException(
                "This path is closed and does not stop at a corner, so there are no ends for repeats to stand on.",
                remedies:
                [
                    "a place for the first repeat (StartingAt)",
                    "repeats that stop at the corners (CornerGaps)",
                ]
            );
        if (!isLoop && settings.Start is not null)
            throw new PatternException(
                path.IsClosed
                    ? "Repeats that stop at the corners have no place to start at of their own."
                    : "An open path starts at its end, so repeats have no other place to start at.",
                remedies: path.IsClosed
                    ? ["repeats turned at the corners (TurnedAtCorners)"]
                    : ["margins at the ends (EndMargins)", "a closed path"]
            );
        if (group % 2 == 0 && settings.Parity == RepeatParity.Odd)
            throw new PatternException(
                $"What alternates closes without a seam only if the number of repeats is a multiple of {group}, which is never odd.",
                remedies: ["an even number of repeats", "any number of repeats"]
            );
        if (
            !path.IsClosed
            && new[] { settings.Heading, settings.CornerHeading }.Any(heading =>
                heading.Kind is HeadingKind.Inwards or HeadingKind.Outwards
            )
        )
            throw new PatternException(
                "An open path has no inside to face or to turn away from.",
                remedies:
                [
                    "Heading.Across, to the left of the path",
                    "Heading.Across.Turned(180), to its right",
                    "a closed path",
                ]
            );
        if (!isLoop && settings is { OnEnds: true, StopsAtCorners: true })
            foreach (var corner in PathCorner.Of(path, settings.LeastCorner))
                if (room(corner) == 0)
                    throw new PatternException(
                        "With repeats on the ends of each stretch and no room at the corner, two would stand on one place.",
                        corner.Point,
                        [
                            "some room at the corners",
                            "repeats half a spacing in",
                            "repeats turned at the corners (TurnedAtCorners)",
                        ]
                    );
    }

    internal void RefuseTooMany()
    {
        var least = settings.IsExact ? settings.Spacing : settings.Min;
        if (path.Length / least > MaxRepeats)
            throw new PatternException(
                $"{Text(path.Length)} mm at a spacing of {least:0.######e0} mm would take over {MaxRepeats} repeats.",
                remedies:
                [
                    $"a spacing of at least {FitTrouble.Up(path.Length / MaxRepeats * settings.Spacing / least)} mm",
                ]
            );
    }

    /// <param name="longest">Length of the longest stretch.</param>
    /// <param name="least">The fewest repeats allowed on it.</param>
    /// <param name="extra">What comes on top of them.</param>
    /// <param name="stretches">Number of stretches.</param>
    internal PatternException NoRoom(double longest, int least, int extra, int stretches)
    {
        var what = stretches == 1 ? "The path has" : "The longest stretch between corners has";
        var min = settings.IsExact ? settings.Spacing : settings.Min;
        var places = least == 1 ? "one repeat" : $"{least} repeats";
        List<string> remedies = [];
        if (longest > 0)
        {
            var spacing = longest / (least + extra);
            remedies.Add(
                settings.Limits is null || settings.IsExact
                    ? $"a spacing of at most {FitTrouble.Down(spacing * settings.Spacing / min)} mm"
                    : $"limits that include {FitTrouble.Down(spacing)} mm"
            );
        }
        if (!path.IsClosed || stretches > 1)
            remedies.Add("less room at ends and corners");
        remedies.Add(
            $"a path that is {FitTrouble.Up((least + extra) * min - longest)} mm longer there"
        );
        var asked =
            min < settings.Spacing ? $", where {Text(settings.Spacing)} mm is asked for" : "";
        return new(
            $"{what} room for {Text(Math.Max(0, longest))} mm of repeats, but {places} at a spacing of {Text(min)} mm or more{asked}, need {Text((least + extra) * min)} mm.",
            path.PointAt(0),
            remedies
        );
    }

    internal PatternException NoSpacing(PitchQuestion question, double from)
    {
        var aim = Math.Clamp(question.Nominal, question.Min, question.Max);
        var ideal = (int)(question.Length / aim - question.Extra);
        var fewer = Math.Max(
            question.UpToParity(1 - (int)question.Extra),
            question.DownToParity(ideal)
        );
        return new(
            $"No {Kind()}number of repeats divides {Text(question.Length)} mm into spacings between {Text(settings.Min)} and {Text(settings.Max)} mm.",
            path.PointAt(from),
            [
                .. new[] { fewer, question.UpToParity(fewer + 1) }.Select(count =>
                    Limits(question, count)
                ),
            ]
        );
    }

    internal PatternException LoopDoesNotClose(PitchQuestion question, int groups) =>
        new(
            $"{Text(path.Length)} mm is no whole number of spacings of {Text(settings.Spacing)} mm, so a closed path would have a seam.",
            path.PointAt(0),
            [
                $"a fitted spacing: {Text(question.PitchFor(groups) / group)} mm for {groups * group} repeats",
                $"a path of {Text(groups * group * settings.Spacing)} mm",
            ]
        );

    internal PatternException CornersTooNear(double from, double room) =>
        new(
            $"The motifs at two corners need {Text(-room)} mm more between them than there are.",
            path.PointAt(from),
            [
                $"{FitTrouble.Up(-room / 2)} mm less room for each corner motif",
                "a smaller offset to the inside",
                "corners that count only if they are sharper (CornersFrom)",
            ]
        );

    private string Limits(PitchQuestion question, int count)
    {
        var spacing = question.PitchFor(count) / group;
        var rounded = spacing > settings.Max ? FitTrouble.Up(spacing) : FitTrouble.Down(spacing);
        var repeats = count * group == 1 ? "1 repeat" : $"{count * group} repeats";
        return settings.Limits is null
            ? $"a spacing of {rounded} mm asked for ({repeats})"
            : $"limits that include {rounded} mm ({repeats})";
    }

    private string Kind() =>
        settings.Parity switch
        {
            _ when group > 1 => $"multiple of {group} as a ",
            RepeatParity.Odd => "odd ",
            RepeatParity.Even => "even ",
            _ => "",
        };

    private static string Text(double value) => Guard.Text(value);
}
