using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a plan: the wood, the chips, an arrow for each cut, and the numbers.</summary>
internal sealed class PlanSheetWriter
{
    private const int Decimals = 4;
    private const double Margin = 8;
    private const double TitleHeight = 4;
    private const double TextHeight = 2.4;

    /// <summary>Lowest width of the text under a small piece.</summary>
    private const double TextWidth = 120;

    /// <summary>Height in mm that numbers are to have: lower ones are hard to read.</summary>
    private const double ReadableHeight = 1.6;

    /// <summary>A piece is enlarged no more than this, or a long rail would fill a wall.</summary>
    private const double MostScale = 4;

    /// <summary>Share of its circle that a number may take, between the arrows.</summary>
    private const double NumberShare = 0.55;
    private const double HighestNumber = 5;

    /// <summary>Dashes of the arrow of a light cut.</summary>
    private const int Dashes = 4;

    private static readonly string[] Tones = ["#7a2410", "#b5532a", "#d99563"];

    private readonly CarvingPlan _plan;
    private readonly Wording _words;
    private readonly double _scale;
    private readonly Pattern _pattern;
    private readonly Extents _reach;
    private readonly Extents _box;
    private readonly TextColumn _text;

    internal PlanSheetWriter(PlanSheet sheet)
    {
        (_plan, _words) = (sheet.Plan, sheet.Wording);
        var heights = _plan.Chips.Select(NumberHeight).DefaultIfEmpty(ReadableHeight);
        _scale = Math.Round(Math.Clamp(ReadableHeight / heights.Min(), 1, MostScale), 1);
        _pattern = _plan.Pattern.Scaled(_scale);
        _reach =
            DrawingSurvey.Of(_pattern, LayerSet.Drawn)
            ?? throw new PatternException(
                "The pattern is empty: there is nothing to draw.",
                remedies: ["add chips before drawing a plan"]
            );
        var width = Math.Max(_reach.Width, TextWidth);
        var left = _reach.Centre.X - width / 2;
        _text = SetText(left, width);
        _box = new Extents(new(left, _text.Pen), new(left + width, _reach.Max.Y)).Grown(Margin);
    }

    private string Title => _words.ScheduleTitle(_plan.Pattern.TitleWithSize(_words));

    internal void Write(OutputBuffer output)
    {
        var file = new SvgFile(output, SvgSheet.Around(_box, step: 0.1), Decimals);
        file.Start(Title, _words.StrokeArrows);
        file.Background(StepColours.Paper);
        PalePattern.Draw(file, _pattern, _words);
        WriteArrows(file);
        WriteNumbers(file);
        _text.Write(file, "text");
        file.Finish();
    }

    private static double NumberHeight(PlannedChip chip) =>
        Math.Min(HighestNumber, ChipNumbers.HeightIn(chip, NumberShare));

    /// <summary>The first cut of each chip, those between, and the last: a tone each.</summary>
    private void WriteArrows(SvgFile file)
    {
        for (var tone = 0; tone < Tones.Length; tone++)
        {
            file.StartGroup($"cuts-{tone + 1}", null, SvgStyle.Line(Tones[tone], 0.25));
            foreach (var chip in _plan.Chips)
                for (var i = 0; i < chip.Strokes.Count; i++)
                    if (ToneOf(i, chip.Strokes.Count) == tone)
                        WriteArrow(file, chip.Strokes[i]);
            file.EndGroup();
        }
    }

    private static int ToneOf(int cut, int count) =>
        cut == 0 ? 0
        : cut == count - 1 ? 2
        : 1;

    private void WriteArrow(SvgFile file, CarvingStroke cut)
    {
        var (shaft, head) = StrokeArrow.Of(cut);
        var enlarged = Transform.Resize(_scale);
        file.Paths.Begin();
        foreach (var piece in cut.Pressure == Pressure.Light ? Dashed(shaft) : [shaft])
            file.Paths.AddOpen(piece.Transformed(enlarged).Span);
        file.Paths.AddOpen(head.Transformed(enlarged).Span);
        file.Paths.End();
    }

    /// <summary>Dashes three times as long as the gaps between them; the last reaches the head.</summary>
    private static IEnumerable<Chain> Dashed(Chain shaft)
    {
        var gap = shaft.Length / (4 * Dashes - 1);
        return Enumerable
            .Range(0, Dashes)
            .Select(i => shaft.Part(4 * i * gap, Math.Min((4 * i + 3) * gap, shaft.Length)));
    }

    private void WriteNumbers(SvgFile file)
    {
        if (_plan.Chips.Count == 0)
            return;
        file.StartGroup("numbers", null, SvgStyle.Line(StepColours.Ink, 0.25));
        var enlarged = Transform.Resize(_scale);
        foreach (var chip in _plan.Chips)
        {
            var number = ChipNumbers.LabelAt(chip, NumberHeight(chip)).Transformed(enlarged);
            file.Text(number, StepColours.PenWidth * number.Height);
        }
        file.EndGroup();
    }

    /// <summary>Title and legend under the piece.</summary>
    private TextColumn SetText(double left, double width)
    {
        var text = new TextColumn(new(left, _reach.Min.Y - Margin), width);
        text.Add(Title, TitleHeight);
        foreach (var fact in PlanFacts.Of(_plan, _words))
            text.Add(fact, TextHeight);
        text.Add(_words.BoardTurns(_plan.BoardTurns, _plan.BoardTurnsSaved), TextHeight);
        text.Add(_words.StrokeArrows, TextHeight);
        if (_scale > 1)
            text.Add(_words.DrawnLarger(_scale), TextHeight);
        return text;
    }
}
