using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace PatternGen.Tests.Output.Svg;

/// <summary>Where an element lies on the sheet, with what it refers to moved and turned as it says.</summary>
internal static partial class SvgReferences
{
    /// <summary>Points of a path or circle, or of the one that a <c>use</c> refers to; corners are among them.</summary>
    internal static IEnumerable<Point> Points(WrittenSvg file, XElement element) =>
        element.Name.LocalName switch
        {
            "path" => SvgPathReader
                .Read((string)element.Attribute("d")!)
                .SelectMany(run => run)
                .SelectMany(piece => piece.Sample(8)),
            "circle" => Circle(element),
            "use" => Points(file, Shape(file, element)).Select(Placement(element)),
            var other => throw new FormatException($"Unexpected <{other}>"),
        };

    private static XElement Shape(WrittenSvg file, XElement use)
    {
        var id = ((string)use.Attribute("href")!)[1..];
        return file.Root.Descendants().Single(element => (string?)element.Attribute("id") == id);
    }

    private static IEnumerable<Point> Circle(XElement circle)
    {
        var (x, y) = (WrittenSvg.Number(circle, "cx"), WrittenSvg.Number(circle, "cy"));
        var radius = WrittenSvg.Number(circle, "r");
        return Enumerable
            .Range(0, 16)
            .Select(i => i * Math.Tau / 16)
            .Select(angle => new Point(x + radius * Math.Cos(angle), y + radius * Math.Sin(angle)));
    }

    /// <summary>SVG 2, "The use element": x and y move. "The rotate function": x axis towards y axis.</summary>
    private static Func<Point, Point> Placement(XElement use)
    {
        var names = use.Attributes().Select(attribute => attribute.Name.LocalName);
        if (names.Contains("x"))
        {
            names.ShouldBe(["href", "x", "y"]);
            var move = new Vector(WrittenSvg.Number(use, "x"), WrittenSvg.Number(use, "y"));
            return at => at + move;
        }
        names.ShouldBe(["href", "transform"]);
        var transform = MoveAndTurn().Match((string)use.Attribute("transform")!);
        transform.Success.ShouldBeTrue(use.ToString());
        var (x, y, turn) = (Number(1), Number(2), double.DegreesToRadians(Number(3)));
        return at =>
            new(
                x + at.X * Math.Cos(turn) - at.Y * Math.Sin(turn),
                y + at.X * Math.Sin(turn) + at.Y * Math.Cos(turn)
            );

        double Number(int group) =>
            double.Parse(transform.Groups[group].Value, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"^translate\((-?[\d.]+) (-?[\d.]+)\) rotate\((-?[\d.]+)\)$")]
    private static partial Regex MoveAndTurn();
}
