using System.Xml;

namespace PatternGen;

/// <summary>
/// Reads a file of unknown origin once, from front to end, and writes a clean copy for the object model: only elements
/// and attributes that curves need, each value in the plainest form.
/// </summary>
/// <remarks>
/// The object model passes over what it can't read without a word, and may lose its place; it opens what a file refers to;
/// and it rounds. So nothing reaches it that could make it do so, and all limits are checked here, before it sees anything.
/// </remarks>
internal sealed partial class SvgGate
{
    private const string SvgNamespace = "http://www.w3.org/2000/svg";

    private readonly XmlReader _in;
    private readonly XmlWriter _out;
    private readonly ImportedCurves _curves;
    private readonly ImportLimits _limits;
    private readonly SvgUseGraph _uses;
    private readonly SvgStyles _styles = new();
    private readonly SvgValues _values;
    private int _elements;
    private bool _hasShapes;
    private string _where = "";

    private SvgGate(XmlReader input, XmlWriter output, ImportedCurves curves)
    {
        (_in, _out, _curves) = (input, output, curves);
        _limits = curves.Settings.Limits;
        _uses = new(_limits);
        _values = new(_limits);
    }

    /// <summary>Copies what a file may ask for. Returns how many elements that is.</summary>
    /// <exception cref="ImportException">It is no SVG, or beyond the limits.</exception>
    internal static int Copy(Stream from, Stream to, ImportedCurves curves)
    {
        try
        {
            using var input = SvgInput.Open(from, curves.Settings.Limits);
            using var output = XmlWriter.Create(to, new() { CloseOutput = false });
            return new SvgGate(input, output, curves).Copy();
        }
        catch (XmlException error)
        {
            throw SvgInput.NoXml(error);
        }
    }

    private int Copy()
    {
        _in.MoveToContent();
        if (_in.LocalName != "svg" || !IsSvg)
            throw new ImportException(
                $"The file is no SVG: its root is {Shortened(_in.Name)}.",
                Line,
                ["a file whose root is svg, in SVG's namespace or none"]
            );
        var written = 0;
        do
        {
            if (_in.NodeType == XmlNodeType.Element)
                written += Element() ? 1 : 0;
            else if (_in.NodeType == XmlNodeType.EndElement)
                _out.WriteEndElement();
        } while (_in.Read());
        _out.Flush();
        _uses.Check();
        if (_styles.HasMissed)
            _curves.Note(
                ImportNoteKind.Skipped,
                "rule of a style sheet that hides, moves or clips elements"
            );
        return written;
    }

    private bool IsSvg => _in.NamespaceURI is SvgNamespace or "";

    private string Line => ImportedCurves.LineName(((IXmlLineInfo)_in).LineNumber);

    /// <summary>Copies the start of an element, or passes over all of it. Returns whether it was copied.</summary>
    private bool Element()
    {
        _where = Line;
        Count();
        if (_in.Depth >= _limits.Depth)
            throw SvgRefusal.TooDeep(_limits.Depth, _where);
        var kind = IsSvg ? SvgElementKinds.Of(_in.LocalName) : SvgElementKind.Foreign;
        switch (kind)
        {
            case SvgElementKind.Group or SvgElementKind.Shape:
                return Start(_in.LocalName, isShape: kind == SvgElementKind.Shape);
            case SvgElementKind.Definitions:
                return Start("defs", isShape: false);
            case SvgElementKind.Title:
                return Title();
            case SvgElementKind.Style:
                _styles.Add(TextWithin(), isLate: _hasShapes);
                return false;
            case SvgElementKind.Picture:
                return Picture();
            case SvgElementKind.Noted:
                _curves.Note(ImportNoteKind.Skipped, _in.LocalName, _where);
                break;
            case SvgElementKind.Unknown:
                _curves.Note(ImportNoteKind.Skipped, "element unknown to SVG", _where);
                break;
        }
        Pass();
        return false;
    }

    /// <summary>Text and pictures are kept as a mark, for whether they are to be seen depends on where they stand.</summary>
    private bool Picture()
    {
        var name = _in.LocalName;
        Pass();
        _out.WriteStartElement(name, SvgNamespace);
        _out.WriteAttributeString(SvgCopy.Line, _where["line ".Length..]);
        _out.WriteEndElement();
        return true;
    }

    private bool Title()
    {
        var text = TextWithin();
        _out.WriteElementString("title", SvgNamespace, text);
        return true;
    }

    private void Count()
    {
        if (++_elements > _limits.Elements)
            throw SvgRefusal.TooManyElements(_limits.Elements, _where);
    }

    /// <summary>Passes over the element and all that is in it, up to its end.</summary>
    private void Pass() => TextWithin();

    /// <summary>Reads up to the end of the element, and returns the text in it as far as names and styles are long.</summary>
    private string TextWithin()
    {
        if (_in.IsEmptyElement)
            return "";
        var text = new System.Text.StringBuilder();
        var depth = _in.Depth;
        while (_in.Read() && _in.Depth > depth)
        {
            if (_in.NodeType == XmlNodeType.Element)
            {
                Count();
                if (_in.Depth >= _limits.Depth)
                    throw SvgRefusal.TooDeep(_limits.Depth, Line);
            }
            else if (
                _in.NodeType is XmlNodeType.Text or XmlNodeType.CDATA
                && text.Length < SvgValues.MostText
            )
            {
                text.Append(_in.Value);
            }
        }
        return text.ToString();
    }

    private static string Shortened(string name) => name.Length <= 40 ? name : name[..40] + "…";
}
