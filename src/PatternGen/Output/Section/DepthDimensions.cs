using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The depths of a section in numbers: a row of them over the wood, each with a line down to where it was measured.</summary>
internal sealed class DepthDimensions
{
    private const double TextHeight = 2.2;

    /// <summary>From the surface up to the knee of a line, and on to the row of numbers.</summary>
    private const double Knee = 1.5;
    private const double Row = 5;

    /// <summary>Between two numbers, as a share of their height.</summary>
    private const double Gap = 0.8;

    /// <summary>Half the length of the tick at either end of a measured depth.</summary>
    private const double Tick = 0.5;

    private readonly List<Label> _numbers = [];
    private readonly List<Chain> _lines = [];

    internal DepthDimensions(SectionDrawing section)
    {
        SectionCut[] cuts = [.. section.Cuts.OrderBy(cut => cut.Along)];
        string[] texts = [.. cuts.Select(cut => section.Wording.Number(cut.Depth, 2))];
        double[] places = [.. cuts.Select(cut => cut.Along)];
        var widths = texts.Select(text => Lettering.Width(text, TextHeight)).ToArray();
        var (middles, isUpright) = Spread(places, widths);
        for (var i = 0; i < cuts.Length; i++)
        {
            AddLine(cuts[i], middles[i], section.Exaggeration);
            _numbers.Add(
                isUpright
                    ? new(
                        texts[i],
                        new(middles[i] + TextHeight / 2, Row + Gap),
                        TextHeight,
                        Angle.FromDegrees(90)
                    )
                    : new(texts[i], new(middles[i] - widths[i] / 2, Row + Gap), TextHeight)
            );
        }
    }

    internal Extents Box =>
        _numbers
            .Select(number => number.Box())
            .Concat(_lines.Select(line => line.Extents))
            .Aggregate((box, other) => box.Including(other));

    internal IReadOnlyList<Label> Numbers => _numbers;

    internal void Draw(SvgFile file, Wording wording)
    {
        var meaning = wording.DepthInMillimetres;
        file.StartGroup("depths", meaning, SvgStyle.Line(SectionColours.Measure, 0.1));
        file.Strokes(meaning, _lines);
        foreach (var number in _numbers)
            file.Text(number, 0.1 * TextHeight);
        file.EndGroup();
    }

    /// <summary>Level, if none has to move farther than it is wide; else upright, where they take less room.</summary>
    private static (double[] Middles, bool IsUpright) Spread(double[] places, double[] widths)
    {
        var gap = Gap * TextHeight;
        var level = LabelSpread.Of(places, [.. widths.Select(width => width + gap)]);
        for (var i = 0; i < places.Length; i++)
            if (Math.Abs(level[i] - places[i]) > widths[i])
                return (LabelSpread.Of(places, [.. widths.Select(_ => TextHeight + gap)]), true);
        return (level, false);
    }

    private void AddLine(SectionCut cut, double middle, double exaggeration)
    {
        var bottom = new Point(cut.Along, -cut.Depth * exaggeration);
        _lines.Add(
            new Chain(
                bottom,
                new Point(cut.Along, Knee),
                new Point(middle, Row - Knee),
                new Point(middle, Row)
            )
        );
        foreach (var end in (Point[])[bottom, new(cut.Along, 0)])
            _lines.Add(Chain.Line(end - new Vector(Tick, 0), end + new Vector(Tick, 0)));
    }
}
