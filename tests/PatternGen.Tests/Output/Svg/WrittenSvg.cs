using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace PatternGen.Tests.Output.Svg;

/// <summary>What the writer wrote, read back as plain XML.</summary>
internal sealed class WrittenSvg
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private WrittenSvg(byte[] bytes)
    {
        Bytes = bytes;
        Text = Encoding.UTF8.GetString(bytes);
        Root = XDocument.Parse(Text).Root!;
    }

    internal byte[] Bytes { get; }

    internal string Text { get; }

    internal XElement Root { get; }

    internal double Width => Number(Root, "width", "mm");

    internal double Height => Number(Root, "height", "mm");

    internal static WrittenSvg Of(Pattern pattern, For purpose, SaveOptions? options = null) =>
        Of(file => pattern.Save(file, FileFormat.Svg, purpose, options));

    internal static WrittenSvg Of(Action<Stream> save)
    {
        using var file = new MemoryStream();
        save(file);
        return new(file.ToArray());
    }

    internal XElement? Group(string id) =>
        Root.Elements(Svg + "g").SingleOrDefault(group => (string?)group.Attribute("id") == id);

    internal IEnumerable<XElement> Paths(string group) =>
        Group(group)?.Elements(Svg + "path") ?? [];

    internal IEnumerable<XElement> Circles(string group) =>
        Group(group)?.Elements(Svg + "circle") ?? [];

    /// <summary>The runs of all paths of a group.</summary>
    internal IReadOnlyList<IReadOnlyList<ReadPiece>> Runs(string group) =>
        [.. Paths(group).SelectMany(path => SvgPathReader.Read((string)path.Attribute("d")!))];

    internal static double Number(XElement element, string name, string unit = "")
    {
        var text = (string)element.Attribute(name)!;
        text.ShouldEndWith(unit);
        return double.Parse(text[..^unit.Length], CultureInfo.InvariantCulture);
    }
}
