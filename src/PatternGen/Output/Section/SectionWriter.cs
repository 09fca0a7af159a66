using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a section: wood, profile, depths, thickness, and below what it is.</summary>
/// <remarks>Its frame has the start of the section on the left at 0, and the surface at the height 0.</remarks>
internal sealed class SectionWriter
{
    private const double Margin = 7;
    private const int Decimals = 4;
    private const double TitleHeight = 3.4;
    private const double TextHeight = 2.3;
    private const double Gap = 5;

    /// <summary>Distance of the thickness's line from the wood, and half the length of its ticks.</summary>
    private const double Aside = 4;
    private const double Tick = 0.8;

    /// <summary>Least width of the words below, so that a short section does not make a column of them.</summary>
    private const double LeastText = 90;

    private readonly SectionDrawing _section;
    private readonly DepthDimensions _depths;
    private readonly List<Label> _texts = [];
    private readonly List<Chain> _thickness = [];
    private readonly List<Contour> _wood = [];
    private readonly CheckBar _bar;
    private readonly Label _barText;
    private Extents _box;

    internal SectionWriter(SectionDrawing section)
    {
        _section = section;
        Bottom = -section.Stock.Thickness * section.Exaggeration;
        foreach (var (start, end) in section.Wood)
            _wood.Add(WoodBetween(start, end));
        _depths = new(section);
        _box = _depths.Box.Including(new Point(0, Bottom)).Including(new Point(section.Length, 0));
        AddThickness();
        var pen = AddTexts();
        var length = BarLength();
        _bar = CheckBar.Level(pen, length);
        _barText = new(
            Words.Millimetres(length),
            new(pen.X, _bar.Box.Min.Y - 1.7 * TextHeight),
            TextHeight
        );
        _box = _box.Including(_bar.Box).Including(_barText.Box());
    }

    private Wording Words => _section.Wording;

    private double Bottom { get; }

    internal void Write(OutputBuffer output)
    {
        var sheet = SvgSheet.Around(_box.Grown(Margin), step: 0.1);
        var file = new SvgFile(output, sheet, Decimals);
        file.Start(_texts[0].Text, string.Join("; ", Facts()));
        file.Background(SectionColours.Paper);
        DrawWood(file);
        file.StartGroup("thickness", Words.Thickness, SvgStyle.Line(SectionColours.Measure, 0.1));
        file.Strokes(Words.Thickness, _thickness);
        file.EndGroup();
        _depths.Draw(file, Words);
        file.StartGroup("caption", null, SvgStyle.Line(SectionColours.Ink, 0.2));
        foreach (var text in _texts)
            file.Text(text, 0.1 * text.Height);
        file.Strokes(_barText.Text, _bar.Strokes);
        file.Text(_barText, 0.1 * TextHeight);
        file.EndGroup();
        file.Finish();
    }

    private void DrawWood(SvgFile file)
    {
        var style = new SvgStyle(SectionColours.Wood, SectionColours.Edge, 0.2);
        file.Clip("wood", DrawPieces);
        file.StartGroup(
            "stock",
            Words.LayerTitle(Layer.Stock),
            style with
            {
                Stroke = SvgStyle.None,
            }
        );
        DrawPieces(file.Paths);
        file.EndGroup();
        var grain = SvgStyle.Line(SectionColours.Grain, 0.12) with { StrokeOpacity = 0.55 };
        file.StartGroup("grain", null, grain, within: "wood");
        var room = new Extents(new(0, Bottom), new(_section.Length, 0));
        foreach (var line in SectionGrain.Lines(room, _section.Line.Direction, _section.Grain))
            file.Paths.Open(line.Span);
        file.EndGroup();
        file.StartGroup("surface", null, SvgStyle.Line(SectionColours.Surface, 0.08));
        foreach (var (start, end) in _section.Wood)
            file.Paths.Open(Chain.Line(new(start, 0), new(end, 0)).Span);
        file.EndGroup();
        file.StartGroup("profile", Words.Profile, style with { Fill = SvgStyle.None });
        DrawPieces(file.Paths);
        file.EndGroup();

        void DrawPieces(SvgPathWriter paths)
        {
            foreach (var piece in _wood)
                paths.TryClosed(piece.Span, default);
        }
    }

    /// <summary>A piece of wood from its lower left corner round: below, and back along the profile.</summary>
    private Contour WoodBetween(double start, double end)
    {
        var corners = new List<Point> { new(start, Bottom), new(end, Bottom) };
        var profile = _section.Profile;
        Add(new(end, SectionProfile.DepthAt(profile, end)));
        for (var i = profile.Count - 1; i >= 0; i--)
            if (profile[i].Along > start && profile[i].Along < end)
                Add(profile[i]);
        Add(new(start, SectionProfile.DepthAt(profile, start)));
        return Contour.Polygon(corners);

        // A cut through the board ends where the wood does.
        void Add(SectionPlace place)
        {
            var corner = new Point(
                place.Along,
                -Math.Min(place.Depth, _section.Stock.Thickness) * _section.Exaggeration
            );
            if (corners[^1] != corner && corners[0] != corner)
                corners.Add(corner);
        }
    }

    private void AddThickness()
    {
        var x = _box.Min.X - Aside;
        _thickness.Add(Chain.Line(new(x, 0), new(x, Bottom)));
        foreach (var y in (double[])[0, Bottom])
            _thickness.Add(Chain.Line(new(x - Tick, y), new(x + Tick, y)));
        var text = Words.Millimetres(_section.Stock.Thickness);
        var width = Lettering.Width(text, TextHeight);
        // Upright beside its line, in the middle: where the wood is thinner than the words are long they reach beyond it.
        var label = new Label(
            text,
            new(x - Tick - 0.3 * TextHeight, (Bottom - width) / 2),
            TextHeight,
            Angle.FromDegrees(90)
        );
        _texts.Add(label);
        _box = _box.Including(label.Box()).Including(_thickness[0].Extents);
    }

    /// <summary>Sets the words below and returns where the next would stand.</summary>
    private Point AddTexts()
    {
        var width = Math.Max(LeastText, _section.Length);
        var pen = new Point(0, _box.Min.Y - Gap);
        var lines = Facts().ToArray();
        for (var i = 0; i < lines.Length; i++)
        {
            var height = i == 0 ? TitleHeight : TextHeight;
            foreach (var line in TextWrap.Lines(lines[i], height, width))
            {
                var label = new Label(line, pen - new Vector(0, height), height);
                _texts.Insert(_texts.Count - 1, label);
                _box = _box.Including(label.Box());
                pen -= new Vector(0, 1.9 * height);
            }
        }
        return pen - new Vector(0, 0.5 * Gap);
    }

    private IEnumerable<string> Facts()
    {
        yield return Words.Section(_section.Pattern.Title(Words));
        yield return Words.SectionLine(
            _section.From.X,
            _section.From.Y,
            _section.To.X,
            _section.To.Y,
            _section.Exaggeration
        );
        var deepest = _section.Cuts.Max(cut => cut.Depth);
        var left = Math.Max(0, _section.Stock.Thickness - deepest);
        yield return Words.SectionDepth(
            _section.Stock.Species,
            _section.Stock.Thickness,
            deepest,
            left
        );
    }

    /// <summary>The longest round length that the section holds, and 10 mm at least.</summary>
    private double BarLength()
    {
        double[] lengths = [100, 50, 20];
        foreach (var length in lengths)
            if (length <= _section.Length)
                return length;
        return 10;
    }
}
