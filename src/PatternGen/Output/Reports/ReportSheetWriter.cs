using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a report: the wood and the chips, rings and numbers at what was found, and the findings in words.</summary>
internal sealed class ReportSheetWriter
{
    private const int Decimals = 4;

    /// <summary>Room in mm round the piece and its numbers.</summary>
    private const double Margin = 8;
    private const double TitleHeight = 4;
    private const double TextHeight = 2.6;

    /// <summary>Lowest width of the text under a small piece.</summary>
    private const double TextWidth = 150;

    /// <summary>Widest text: longer lines are hard to follow.</summary>
    private const double MostTextWidth = 240;

    /// <summary>Where the words of a finding start, right of its number.</summary>
    private const double Indent = 8;

    private readonly InspectionReport _report;
    private readonly Wording _words;
    private readonly FindingBadges _badges;
    private readonly List<Point> _listed = [];
    private readonly Extents _box;
    private readonly TextColumn _text;

    internal ReportSheetWriter(ReportSheet sheet)
    {
        (_report, _words) = (sheet.Report, sheet.Wording);
        var reach =
            DrawingSurvey.Of(_report.Pattern, LayerSet.Drawn)
            ?? throw new PatternException(
                "The pattern is empty: there is nothing to draw.",
                remedies: ["add chips before drawing a report"]
            );
        _badges = new(_report.Findings, reach.Centre);
        var drawn = _badges.Including(reach);
        var width = Math.Clamp(drawn.Width, TextWidth, MostTextWidth);
        var left = Math.Min(drawn.Min.X, drawn.Centre.X - width / 2);
        _text = new(new(left, drawn.Min.Y - Margin), width);
        SetText(left);
        var right = Math.Max(drawn.Max.X, drawn.Centre.X + width / 2);
        _box = new Extents(new(left, _text.Pen), new(right, drawn.Max.Y)).Grown(Margin);
    }

    internal void Write(OutputBuffer output)
    {
        var file = new SvgFile(output, SvgSheet.Around(_box, step: 0.1), Decimals);
        file.Start(Title, _report.Findings.Count == 0 ? _report.Summary : _words.ReportMarks);
        file.Background(StepColours.Paper);
        PalePattern.Draw(file, _report.Pattern, _words);
        var marks = new ReportMarks(file, _report.Findings, _badges, _words);
        marks.DrawRings();
        marks.DrawNumbers(_listed);
        _text.Write(file, "text");
        file.Finish();
    }

    private string Title => _words.ReportTitle(_report.Pattern.TitleWithSize(_words));

    private void SetText(double left)
    {
        _text.Add(Title, TitleHeight);
        _text.Add(_report.Summary, TextHeight);
        if (_report.Pattern.Root.Layers.HasFlag(LayerSet.LineCuts))
            _text.Add(_words.LineCutsNotInspected, TextHeight);
        foreach (var finding in _report.Findings)
        {
            _text.Skip(TextHeight);
            _listed.Add(new(left + FindingBadges.BadgeRadius, _text.Pen - TextHeight / 2));
            _text.Add(finding.Message, TextHeight, Indent);
        }
        if (_report.Suggestions.Count == 0)
            return;
        _text.Skip(2 * TextHeight);
        _text.Add(_words.SuggestionsTitle, TextHeight);
        foreach (var suggestion in _report.Suggestions)
            _text.Add(suggestion.Text, TextHeight, Indent);
    }
}
