using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws what inspections found.</summary>
public static class ReportSheets
{
    /// <summary>Returns the drawing of a report: the pattern with a numbered mark for each finding, and the findings below.</summary>
    /// <param name="report">What an inspection found.</param>
    /// <param name="wording">The words of the title; English by default.</param>
    /// <returns><c>pattern.Inspect(knife, stock).Sheet().Save("report.svg")</c> writes it.</returns>
    public static ReportSheet Sheet(this InspectionReport report, Wording? wording = null) =>
        new(Guard.NotNull(report), wording ?? Wording.English);
}
