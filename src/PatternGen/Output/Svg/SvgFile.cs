using System.Text;
using System.Xml;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The structure of an SVG: root, groups and titles. Elements inside the groups are written straight to the buffer,
/// in turn with the structure.
/// </summary>
internal sealed class SvgFile
{
    // Never disposed: that would write on after an error. Finish passes on all that there is.
    private readonly XmlWriter _xml;
    private readonly int _decimals;

    /// <param name="output">Where the file goes.</param>
    /// <param name="sheet">What it shows.</param>
    /// <param name="decimals">Decimals of a coordinate.</param>
    internal SvgFile(OutputBuffer output, SvgSheet sheet, int decimals)
    {
        Paths = new(output, sheet, decimals);
        Copies = new(output, sheet, decimals);
        Sheet = sheet;
        _decimals = decimals;
        _xml = XmlWriter.Create(
            new BufferStream(output),
            new()
            {
                Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
                NewLineChars = "\n",
            }
        );
    }

    internal SvgSheet Sheet { get; }

    /// <summary>Writes elements into the group that is open.</summary>
    internal SvgPathWriter Paths { get; }

    /// <summary>Writes shapes and references to them into the group that is open.</summary>
    internal SvgCopyWriter Copies { get; }

    /// <summary>Opens the root: millimetres, true size also in print, told to readers by title and description.</summary>
    internal void Start(string title, string description)
    {
        var (width, height) = (Number(Sheet.Width), Number(Sheet.Height));
        _xml.WriteStartDocument();
        NewLine();
        _xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        _xml.WriteAttributeString("width", width + "mm");
        _xml.WriteAttributeString("height", height + "mm");
        _xml.WriteAttributeString("viewBox", $"0 0 {width} {height}");
        _xml.WriteAttributeString("role", "img");
        Element("title", title);
        Element("desc", description);
        // Browsers print an SVG at true size only if it says itself what page it wants.
        Element("style", $"@page{{size:{width}mm {height}mm;margin:0}}");
        NewLine();
    }

    /// <summary>Closes the root.</summary>
    internal void Finish()
    {
        _xml.WriteEndElement();
        NewLine();
        _xml.WriteEndDocument();
        _xml.Flush();
    }

    /// <summary>Fills the whole sheet.</summary>
    internal void Background(string colour)
    {
        _xml.WriteStartElement("rect");
        _xml.WriteAttributeString("width", Number(Sheet.Width));
        _xml.WriteAttributeString("height", Number(Sheet.Height));
        _xml.WriteAttributeString("fill", colour);
        _xml.WriteEndElement();
        NewLine();
    }

    /// <summary>Opens a group.</summary>
    /// <param name="id">Its name in the file, used once.</param>
    /// <param name="title">What it is, for readers; null if it only adorns.</param>
    /// <param name="style">How it looks.</param>
    /// <param name="within">The clip that it is seen in, if in one.</param>
    internal void StartGroup(string id, string? title, SvgStyle style, string? within = null)
    {
        _xml.WriteStartElement("g");
        _xml.WriteAttributeString("id", id);
        if (within is not null)
            _xml.WriteAttributeString("clip-path", $"url(#{within})");
        Style(style);
        if (title is not null)
            Element("title", title);
        NewLine();
        _xml.Flush();
    }

    /// <summary>Defines an area that groups can be seen in.</summary>
    /// <param name="id">Its name in the file, used once.</param>
    /// <param name="draw">Draws the area, as shapes of its own.</param>
    internal void Clip(string id, Action<SvgPathWriter> draw)
    {
        _xml.WriteStartElement("clipPath");
        _xml.WriteAttributeString("id", id);
        NewLine();
        _xml.Flush();
        draw(Paths);
        EndGroup();
    }

    internal void EndGroup()
    {
        _xml.WriteEndElement();
        NewLine();
    }

    /// <summary>Writes a line of text as strokes, of the group's width or a width of their own in mm.</summary>
    internal void Text(Label text, double? width = null) =>
        Strokes(text.Text, text.Strokes(), width);

    /// <summary>Writes strokes as one path, which readers are told the meaning of.</summary>
    internal void Strokes(string meaning, IEnumerable<Chain> strokes, double? width = null)
    {
        _xml.WriteStartElement("path");
        _xml.WriteAttributeString("aria-label", OutputText.Checked(meaning));
        if (width is { } own)
            _xml.WriteAttributeString("stroke-width", Number(own));
        _xml.WriteStartAttribute("d");
        _xml.Flush();
        foreach (var stroke in strokes)
            Paths.AddOpen(stroke.Span);
        _xml.WriteEndAttribute();
        _xml.WriteEndElement();
        NewLine();
        _xml.Flush();
    }

    private void Style(SvgStyle style)
    {
        _xml.WriteAttributeString("fill", style.Fill);
        if (style.FillOpacity < 1)
            _xml.WriteAttributeString("fill-opacity", Number(style.FillOpacity));
        if (style.StrokeOpacity < 1)
            _xml.WriteAttributeString("stroke-opacity", Number(style.StrokeOpacity));
        _xml.WriteAttributeString("stroke", style.Stroke);
        if (style.Stroke == SvgStyle.None)
            return;
        _xml.WriteAttributeString("stroke-width", Number(style.Width));
        _xml.WriteAttributeString("stroke-linecap", style.Cap);
        _xml.WriteAttributeString("stroke-linejoin", "round");
    }

    private void Element(string name, string text)
    {
        NewLine();
        _xml.WriteElementString(name, OutputText.Checked(text));
    }

    private void NewLine() => _xml.WriteWhitespace("\n");

    private string Number(double value)
    {
        Span<byte> digits = stackalloc byte[FixedPoint.MaxLength];
        return Encoding.ASCII.GetString(digits[..FixedPoint.Write(digits, value, _decimals)]);
    }
}
