using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Sets lines of text below each other, as wide as a column, and writes them.</summary>
/// <param name="corner">Its upper left corner.</param>
/// <param name="width">Its width in mm.</param>
internal sealed class TextColumn(Point corner, double width)
{
    /// <summary>From line to line, in heights of the capitals.</summary>
    private const double Spacing = 1.8;

    private readonly List<Label> _lines = [];

    /// <summary>Where the next line would begin: its upper edge.</summary>
    internal double Pen { get; private set; } = corner.Y;

    /// <param name="text">The text, set in as many lines as it needs.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    /// <param name="indent">How far from the left edge of the column, in mm.</param>
    internal void Add(string text, double height, double indent = 0)
    {
        foreach (var line in TextWrap.Lines(text, height, width - indent))
        {
            _lines.Add(new(line, new(corner.X + indent, Pen - height), height));
            Pen -= Spacing * height;
        }
    }

    /// <summary>Leaves room before the next line.</summary>
    internal void Skip(double height) => Pen -= height;

    /// <summary>Writes the lines as a group.</summary>
    internal void Write(SvgFile file, string id)
    {
        file.StartGroup(id, null, SvgStyle.Line(StepColours.Ink, 0.25));
        foreach (var line in _lines)
            file.Text(line, StepColours.PenWidth * line.Height);
        file.EndGroup();
    }
}
