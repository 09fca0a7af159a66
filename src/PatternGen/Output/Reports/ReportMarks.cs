using System.Globalization;
using System.Text;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the marks of a report: a ring at each place, and the numbers of the findings.</summary>
internal sealed class ReportMarks(
    SvgFile file,
    IReadOnlyList<Finding> findings,
    FindingBadges badges,
    Wording words
)
{
    private const double NumberHeight = 2.4;

    /// <summary>Draws the rings, a group for each severity; errors last, so that no warning at the same place hides them.</summary>
    internal void DrawRings()
    {
        foreach (var severity in findings.GroupBy(finding => finding.Severity).Reverse())
        {
            var (colour, width) = Look(severity.Key);
            file.StartGroup(
                $"places-{CodeNames.Of(severity.Key)}",
                words.Severity(severity.Key),
                SvgStyle.Line(colour, width)
            );
            foreach (var place in severity.SelectMany(finding => finding.Places))
                file.Paths.Closed(
                    new Circle(place.Place, FindingBadges.RingRadius).ToContour().Span
                );
            file.EndGroup();
        }
    }

    /// <summary>Draws the numbers beside the first places, and those in front of the words.</summary>
    /// <param name="listed">Where the latter stand, in the order of the findings.</param>
    internal void DrawNumbers(IReadOnlyList<Point> listed)
    {
        if (findings.Count == 0)
            return;
        file.StartGroup("numbers", null, SvgStyle.Line(StepColours.Ink, 0.25));
        for (var i = 0; i < findings.Count; i++)
        {
            var place = findings[i].Place;
            var badge = badges.Middles[i];
            var away = (badge - place).Unit();
            file.Paths.Open(Chain.Line(place + away * FindingBadges.RingRadius, badge).Span);
            DrawNumber(i, badge);
        }
        for (var i = 0; i < listed.Count; i++)
            DrawNumber(i, listed[i]);
        file.EndGroup();
    }

    private void DrawNumber(int finding, Point middle)
    {
        var (colour, _) = Look(findings[finding].Severity);
        file.Paths.Closed(
            new Circle(middle, FindingBadges.BadgeRadius).ToContour().Span,
            Encoding.ASCII.GetBytes($" fill=\"{StepColours.Paper}\" stroke=\"{colour}\"")
        );
        var number = (finding + 1).ToString(CultureInfo.InvariantCulture);
        // Numbers of more than two figures are set smaller, to fit.
        var height = NumberHeight * Math.Min(1, 2.0 / number.Length);
        var start = middle - new Vector(Lettering.Width(number, height), height) / 2;
        file.Text(new Label(number, start, height), StepColours.PenWidth * height);
    }

    /// <summary>Severities differ in colour and in the line, so that a plain printer shows them too.</summary>
    private static (string Colour, double Width) Look(FindingSeverity severity) =>
        severity switch
        {
            FindingSeverity.Error => ("#a3241c", 0.6),
            FindingSeverity.Warning => ("#b86a00", 0.4),
            _ => ("#3f6184", 0.25),
        };
}
