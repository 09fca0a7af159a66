using System.Text;

namespace PatternGen;

/// <summary>Writes a plan as Markdown: what it is, what to mind, and a table with a line for each chip, or in passes for each row.</summary>
internal sealed class MarkdownSchedule
{
    private readonly CarvingPlan _plan;
    private readonly Wording _words;
    private readonly CarvingRate? _rate;
    private readonly OutputBuffer _output;

    private MarkdownSchedule(CarvingSchedule schedule, OutputBuffer output)
    {
        (_plan, _words, _rate) = (schedule.Plan, schedule.Wording, schedule.Rate);
        _output = output;
    }

    internal static void Write(CarvingSchedule schedule, OutputBuffer output) =>
        new MarkdownSchedule(schedule, output).Write();

    private void Write()
    {
        var title = _words.ScheduleTitle(_plan.Pattern.TitleWithSize(_words));
        Line($"# {Escaped(title)}");
        List([.. Summary()]);
        Section(_words.CautionsTitle, _words.KnifeCautions);
        Section(_words.HowToReadTitle, _words.HowToRead(_plan.Hand));
        Line();
        Line($"## {Escaped(_words.StepsTitle)}");
        Line();
        if (_plan.Steps.Count == 0)
            Line(Escaped(_words.NothingToCarve));
        else if (_plan.Order == CarvingOrder.ByChip)
            WriteChips();
        else
            WritePasses();
    }

    private IEnumerable<string> Summary()
    {
        var totals = _plan.Totals;
        foreach (var fact in PlanFacts.Of(_plan, _words))
            yield return fact;
        yield return _words.ChipsBySize(
            totals.Chips,
            totals.ChipsOf(ChipSize.Small),
            totals.ChipsOf(ChipSize.Medium),
            totals.ChipsOf(ChipSize.Large)
        );
        yield return _words.CutTotals(
            totals.Strokes,
            totals.LightStrokes,
            totals.Length,
            totals.Volume,
            totals.Deepest
        );
        if (totals.LineCuts > 0)
            yield return _words.LineCutTotals(
                totals.LineCuts,
                totals.LineCutLength,
                totals.LineCutVolume
            );
        yield return _words.BoardTurns(_plan.BoardTurns, _plan.BoardTurnsSaved);
        if (_rate is not null)
            yield return _words.CarvingTime(_plan.MinutesAt(_rate));
    }

    private void WriteChips()
    {
        Heads(_words.ChipColumns);
        foreach (var step in _plan.Steps)
        {
            var chip = step.Strokes[0].Chip;
            Row(
                _words.Number(chip.Number, 0),
                chip.Chip.Id.ToString(),
                _words.CubicMillimetres(chip.Solid.Volume),
                _words.Millimetres(chip.Width),
                _words.Millimetres(chip.Solid.Depth),
                _words.Degrees(PlanFacts.KnifeAngle(chip).Degrees),
                string.Join("; ", Cuts(step)),
                _words.Reason(step.Reason)
            );
        }
    }

    /// <summary>The cuts of a chip, each with how the board lies where that changes.</summary>
    private IEnumerable<string> Cuts(PlanStep step)
    {
        CarvingStroke? before = null;
        foreach (var cut in step.Strokes)
        {
            var name = Name(cut);
            if (cut.BoardTurn != before?.BoardTurn)
                name = $"{_words.BoardLies(cut.BoardTurn)}: {name}";
            if (cut.Pressure == Pressure.Light)
                name = $"{name} ({_words.Light})";
            if (cut.Reason == PlanReason.WithTheGrain)
                name = $"{name} ({_words.GrainName(cut.Grain)})";
            before = cut;
            yield return name;
        }
    }

    private void WritePasses()
    {
        Heads(_words.PassColumns);
        foreach (var step in _plan.Steps)
        {
            var cut = step.Strokes[0];
            var lies = _words.BoardLies(step.BoardTurn);
            var reason = _words.Reason(cut.Reason);
            if (step.Reason != PlanReason.SameTurn)
                reason = $"{_words.Reason(step.Reason)}; {reason}";
            Row(
                _words.Number(step.Number, 0),
                step.TurnsBoard ? _words.TurnBoard(lies) : lies,
                ChipList.OfNumbers(step.Chips),
                ChipList.OfIds(step.Chips),
                _words.Number(step.Strokes.Count, 0),
                Name(cut),
                _words.Millimetres(cut.Depth),
                _words.Degrees(cut.BladeAngle.Degrees),
                _words.CutManner(cut.Pressure, cut.Grain),
                reason
            );
        }
    }

    private string Name(CarvingStroke cut) =>
        _words.CutName(cut.Kind, cut.Facing, cut.Side, cut.Hole);

    private void Section(string title, IReadOnlyList<string> items)
    {
        Line();
        Line($"## {Escaped(title)}");
        List(items);
    }

    private void List(IReadOnlyList<string> items)
    {
        Line();
        foreach (var item in items)
            Line($"- {Escaped(item)}");
    }

    private void Heads(IReadOnlyList<string> columns)
    {
        Row([.. columns]);
        Line($"|{string.Concat(columns.Select(_ => " --- |"))}");
    }

    private void Row(params string[] cells) =>
        Line($"| {string.Join(" | ", cells.Select(Escaped))} |");

    private void Line(string text = "") => _output.Write(Encoding.UTF8.GetBytes(text + "\n"));

    /// <summary>What a name might hold that would make a heading, a cell or a tag of it.</summary>
    private static string Escaped(string text)
    {
        OutputText.Checked(text);
        if (text.AsSpan().IndexOfAny(@"\|*_`<>[]#") < 0)
            return text;
        var escaped = new StringBuilder();
        foreach (var letter in text)
        {
            if (@"\|*_`<>[]#".Contains(letter, StringComparison.Ordinal))
                escaped.Append('\\');
            escaped.Append(letter);
        }
        return escaped.ToString();
    }
}
