using System.Globalization;
using System.Text;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a report: the wood and the chips, rings and numbers at what was found, and the findings in words.</summary>
internal sealed class ReportSheetWriter
{
    private const int Decimals = 4;

    /// <summary>Room in mm round the piece, for the numbers beside it.</summary>
    private const double Margin = 12;
    private const double TitleHeight = 4;
    private const double TextHeight = 2.6;
    private const double NumberHeight = 2.4;

    /// <summary>Lowest width of the text under a small piece.</summary>
    private const double TextWidth = 150;

    /// <summary>Widest text: longer lines are hard to follow.</summary>
    private const double MostTextWidth = 240;

    /// <summary>Where the words of a finding start, right of its number.</summary>
    private const double Indent = 8;

    private readonly InspectionReport _report;
    private readonly Wording _words;
    private readonly Extents _reach;
    private readonly FindingBadges _badges;
    private readonly List<Label> _text = [];
    private readonly List<(int Finding, Point Place)> _listed = [];
    private readonly double _textWidth;
    private readonly double _left;
    private double _pen;

    internal ReportSheetWriter(ReportSheet sheet)
    {
        (_report, _words) = (sheet.Report, sheet.Wording);
        _reach =
            DrawingSurvey.Of(_report.Pattern, LayerSet.Drawn)
            ?? throw new PatternException(
                "The pattern is empty: there is nothing to draw.",
                remedies: ["add chips before drawing a report"]
            );
        _badges = new(_report.Findings, _reach.Centre);
        _textWidth = Math.Clamp(_reach.Width, TextWidth, MostTextWidth);
        _left = _reach.Centre.X - Math.Max(_reach.Width, TextWidth) / 2;
        _pen = _reach.Min.Y - Margin;
        SetText();
    }

    internal void Write(OutputBuffer output)
    {
        var width = Math.Max(_reach.Width, TextWidth) + 2 * Margin;
        var top = _reach.Max.Y + Margin;
        var file = new SvgFile(
            output,
            new(_left - Margin, top, width, Math.Ceiling(top - _pen + Margin)),
            Decimals
        );
        file.Start(
            _words.ReportTitle(_report.Pattern.TitleWithSize(_words)),
            _report.Findings.Count == 0 ? _report.ToString() : _words.ReportMarks
        );
        file.Background(StepColours.Paper);
        WritePattern(file);
        WriteRings(file);
        WriteBadges(file);
        WriteText(file);
        file.Finish();
    }

    private void WritePattern(SvgFile file)
    {
        var layers = new SvgLayers(_report.Pattern, file, SaveOptions.Default.WithWording(_words));
        layers.StockArea(new("#fbf3e2", "#c9b48d", 0.3));
        layers.Runs(Layer.LayoutLines, SvgStyle.Line("#cfc4b2", 0.15));
        layers.Runs(Layer.LineCuts, SvgStyle.Line("#b5aa9a", 0.3));
        layers.Chips(new("#efdcb5", "#6b5a44", 0.2));
    }

    /// <summary>Severities differ in colour and in the line, so that a plain printer shows them too.</summary>
    private static (string Colour, double Width) Look(FindingSeverity severity) =>
        severity switch
        {
            FindingSeverity.Error => ("#a3241c", 0.6),
            FindingSeverity.Warning => ("#b86a00", 0.4),
            _ => ("#3f6184", 0.25),
        };

    private void WriteRings(SvgFile file)
    {
        foreach (var severity in _report.Findings.GroupBy(finding => finding.Severity))
        {
            var (colour, width) = Look(severity.Key);
            file.StartGroup(
                $"places-{CodeName(severity.Key)}",
                _words.Severity(severity.Key),
                SvgStyle.Line(colour, width)
            );
            foreach (var place in severity.SelectMany(finding => finding.Places))
                file.Paths.Closed(
                    new Circle(place.Place, FindingBadges.RingRadius).ToContour().Span
                );
            file.EndGroup();
        }
    }

    private void WriteBadges(SvgFile file)
    {
        file.StartGroup("numbers", null, SvgStyle.Line(StepColours.Ink, 0.25));
        for (var i = 0; i < _report.Findings.Count; i++)
        {
            var (place, badge) = _badges.Badges[i];
            var away = (badge - place).Unit();
            file.Paths.Open(
                new Chain(
                    new Vertex(place + away * FindingBadges.RingRadius),
                    new Vertex(badge)
                ).Span
            );
            WriteBadge(file, i, badge);
        }
        foreach (var (finding, place) in _listed)
            WriteBadge(file, finding, place);
        file.EndGroup();
    }

    private void WriteBadge(SvgFile file, int finding, Point middle)
    {
        var (colour, _) = Look(_report.Findings[finding].Severity);
        file.Paths.Closed(
            new Circle(middle, FindingBadges.BadgeRadius).ToContour().Span,
            Encoding.ASCII.GetBytes($" fill=\"#fffdf9\" stroke=\"{colour}\"")
        );
        var number = (finding + 1).ToString(CultureInfo.InvariantCulture);
        // Three figures still fit.
        var height = NumberHeight * Math.Min(1, 2.0 / number.Length);
        var start = middle + new Vector(-Lettering.Width(number, height) / 2, -height / 2);
        file.Text(new Label(number, start, height), StepColours.PenWidth * height);
    }

    private void WriteText(SvgFile file)
    {
        file.StartGroup("text", null, SvgStyle.Line(StepColours.Ink, 0.25));
        foreach (var line in _text)
            file.Text(line, StepColours.PenWidth * line.Height);
        file.EndGroup();
    }

    private void SetText()
    {
        AddLines(_words.ReportTitle(_report.Pattern.TitleWithSize(_words)), TitleHeight, 0);
        AddLines(_report.Summary, TextHeight, 0);
        for (var i = 0; i < _report.Findings.Count; i++)
        {
            _pen -= TextHeight;
            _listed.Add((i, new(_left + FindingBadges.BadgeRadius, _pen - TextHeight / 2)));
            AddLines(_report.Findings[i].Message, TextHeight, Indent);
        }
        if (_report.Suggestions.Count == 0)
            return;
        _pen -= 2 * TextHeight;
        AddLines(_words.SuggestionsTitle, TextHeight, 0);
        foreach (var suggestion in _report.Suggestions)
            AddLines(suggestion.Text, TextHeight, Indent);
    }

    private void AddLines(string text, double height, double indent)
    {
        foreach (var line in TextWrap.Lines(text, height, _textWidth - indent))
        {
            _text.Add(new(line, new(_left + indent, _pen - height), height));
            _pen -= 1.8 * height;
        }
    }

    private static string CodeName(FindingSeverity severity) =>
        severity switch
        {
            FindingSeverity.Error => "error",
            FindingSeverity.Warning => "warning",
            _ => "note",
        };
}
