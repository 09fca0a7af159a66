using System.Text;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The scale of depth colours, below the picture.</summary>
internal sealed class DepthLegend
{
    private const double Gap = 6;
    private const double Longest = 90;
    private const double Shortest = 40;
    private const double BarHeight = 4;
    private const double TextHeight = 2.4;
    private const double Tick = 1;
    private const string Ink = "#2b2620";

    private readonly DepthScale _scale;
    private readonly Wording _wording;
    private readonly Point _corner;
    private readonly double _length;
    private readonly List<Label> _labels = [];
    private readonly List<Chain> _ticks = [];

    /// <param name="scale">The bands.</param>
    /// <param name="piece">What the scale is set below.</param>
    /// <param name="wording">Its words.</param>
    internal DepthLegend(DepthScale scale, Extents piece, Wording wording)
    {
        (_scale, _wording) = (scale, wording);
        _length = Math.Clamp(piece.Width, Shortest, Longest);
        var top = piece.Min.Y - Gap - TextHeight;
        _labels.Add(new(wording.DepthInMillimetres, new(piece.Min.X, top), TextHeight));
        _corner = new(piece.Min.X, top - 0.7 * TextHeight - BarHeight);
        AddNumbers();
        Box = _labels
            .Select(label => label.Box())
            .Aggregate(piece, (box, label) => box.Including(label))
            .Including(_corner + new Vector(_length, 0));
    }

    /// <summary>The room taken up, the picture included.</summary>
    internal Extents Box { get; }

    internal void Draw(SvgFile file)
    {
        var title = _wording.DepthScale(_scale.Deepest);
        file.StartGroup("depth-scale", title, SvgStyle.Line(Ink, 0.15));
        for (var band = 0; band < _scale.BandCount; band++)
        {
            var low = new Point(X(_scale.StartOf(band)), _corner.Y);
            var high = new Point(X(_scale.EndOf(band)), _corner.Y + BarHeight);
            var fill = Encoding.ASCII.GetBytes($" fill=\"{_scale.ColourOf(band)}\"");
            file.Paths.Closed(Contour.Rectangle(low, high).Span, fill);
        }
        file.Strokes(title, _ticks);
        foreach (var label in _labels)
            file.Text(label, 0.1 * label.Height);
        file.EndGroup();
    }

    /// <summary>The ends first; of the others those that stand clear of their neighbours.</summary>
    private void AddNumbers()
    {
        var end = AddNumber(_scale.Deepest);
        var last = AddNumber(0).Max.X;
        for (var band = 1; band < _scale.BandCount; band++)
        {
            var number = NumberAt(_scale.StartOf(band));
            var box = number.Box();
            _ticks.Add(TickAt(_scale.StartOf(band)));
            if (box.Min.X < last + TextHeight / 2 || box.Max.X > end.Min.X - TextHeight / 2)
                continue;
            _labels.Add(number);
            last = box.Max.X;
        }
    }

    private Extents AddNumber(double depth)
    {
        var number = NumberAt(depth);
        _labels.Add(number);
        _ticks.Add(TickAt(depth));
        return number.Box();
    }

    private Label NumberAt(double depth)
    {
        var text = _wording.Number(depth, 2);
        var width = Lettering.Width(text, TextHeight);
        return new(
            text,
            new(X(depth) - width / 2, _corner.Y - Tick - 1.5 * TextHeight),
            TextHeight
        );
    }

    private Chain TickAt(double depth) =>
        Chain.Line(new(X(depth), _corner.Y), new(X(depth), _corner.Y - Tick));

    private double X(double depth) => _corner.X + _length * depth / _scale.Deepest;
}
