using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// What a printed sheet says: below the piece the caption and a check bar, beside it a second bar, upright.
/// </summary>
internal sealed class PaperFoot
{
    private const double Gap = 8;
    private const double TitleHeight = 3.5;
    private const double TextHeight = 2.5;

    /// <summary>From one base line to the next, as a share of the text's height.</summary>
    private const double LinePitch = 2;

    /// <summary>Width of the pen, as a share of the text's height: easy to read, and open counters.</summary>
    private const double PenWidth = 0.09;

    private const string Ink = "#1d1a17";

    private readonly List<Label> _caption = [];
    private readonly List<Label> _barText = [];
    private readonly List<CheckBar> _bars = [];
    private readonly Wording _wording;
    private readonly double _width;
    private Point _pen;

    /// <param name="caption">Lines of text, the first one the title.</param>
    /// <param name="piece">All of the pattern that is seen.</param>
    /// <param name="wording">The words at the bar.</param>
    internal PaperFoot(IReadOnlyList<string> caption, Extents piece, Wording wording)
    {
        _wording = wording;
        _width = Math.Max(piece.Width, CheckBar.Length);
        Box = piece;
        _pen = new(piece.Min.X, piece.Min.Y - Gap);
        for (var i = 0; i < caption.Count; i++)
            AddText(_caption, caption[i], i == 0 ? TitleHeight : TextHeight);
        _pen += new Vector(0, -Gap / 2);
        AddBar(CheckBar.Level(_pen));
        _pen = new(_pen.X, Box.Min.Y - 0.7 * TextHeight);
        AddText(_barText, wording.CheckBar(CheckBar.Length), TextHeight);
        // Printers stretch paper one way more than the other, so both ways are measured. Beside a low piece the upright
        // bar hangs down beside the caption.
        var foot = Math.Min(piece.Min.Y, piece.Max.Y - CheckBar.Length);
        AddUprightBar(new(piece.Min.X + _width + Gap, foot));
    }

    /// <summary>The room taken up, the piece included.</summary>
    internal Extents Box { get; private set; }

    internal void Draw(SvgFile file)
    {
        file.StartGroup("caption", _wording.LayerTitle(Layer.Note), SvgStyle.Line(Ink, 0.25));
        foreach (var line in _caption)
            file.Text(line, PenWidth * line.Height);
        file.EndGroup();
        var bar = _wording.Millimetres(CheckBar.Length);
        file.StartGroup("check-bar", bar, SvgStyle.Line(Ink, 0.2));
        foreach (var line in _barText)
            file.Text(line, PenWidth * line.Height);
        foreach (var strokes in _bars.Select(line => line.Strokes))
            file.Strokes(bar, strokes);
        file.EndGroup();
    }

    /// <summary>Sets text below what is there, in as many lines as it needs.</summary>
    private void AddText(List<Label> lines, string text, double height)
    {
        foreach (var line in TextWrap.Lines(text, height, _width))
        {
            var label = new Label(line, _pen + new Vector(0, -height), height);
            lines.Add(label);
            Box = Box.Including(label.Box());
            _pen += new Vector(0, -height * LinePitch);
        }
    }

    private void AddUprightBar(Point start)
    {
        AddBar(CheckBar.Upright(start));
        var text = _wording.Millimetres(CheckBar.Length);
        var half = (CheckBar.Length - Lettering.Width(text, TextHeight)) / 2;
        var at = new Point(Box.Max.X + 1.5 * TextHeight, start.Y + half);
        var label = new Label(text, at, TextHeight, Angle.FromDegrees(90));
        _barText.Add(label);
        Box = Box.Including(label.Box());
    }

    private void AddBar(CheckBar bar)
    {
        _bars.Add(bar);
        Box = Box.Including(bar.Box);
    }
}
