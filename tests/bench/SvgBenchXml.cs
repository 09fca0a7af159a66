using System.Globalization;
using System.Xml;

namespace PatternGen.Bench;

/// <summary>The same paths through a plain XML writer, with doubles formatted by the framework.</summary>
internal static class SvgBenchXml
{
    internal static void Write(Stream stream)
    {
        using var xml = XmlWriter.Create(stream);
        xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        for (var i = 0; i < SvgBenchChips.Count; i++)
        {
            xml.WriteStartElement("path");
            xml.WriteAttributeString("d", Path(SvgBenchChips.Margin + SvgBenchChips.Pitch * i));
            xml.WriteEndElement();
        }
        xml.WriteEndElement();
    }

    private static string Path(double left)
    {
        var (low, high) = (SvgBenchChips.Margin + SvgBenchChips.Height, SvgBenchChips.Margin);
        var right = left + SvgBenchChips.Pitch;
        var middle = left + SvgBenchChips.Pitch / 2;
        var radius = Text(SvgBenchChips.Radius);
        return $"M{Text(left)} {Text(low)}L{Text(right)} {Text(low)}L{Text(middle)} {Text(high)}"
            + $"A{radius} {radius} 0 0 1 {Text(left)} {Text(low)}Z";
    }

    private static string Text(double value) =>
        value.ToString("0.######", CultureInfo.InvariantCulture);
}
