namespace PatternGen;

/// <summary>The kind of file that a carving schedule is written to.</summary>
public enum ScheduleFormat
{
    /// <summary>Markdown, to read and to print, in the words of the schedule's wording: <c>.md</c>.</summary>
    Markdown,

    /// <summary>
    /// Comma-separated values after RFC 4180, for spreadsheets: <c>.csv</c>. UTF-8 without a mark, a heading line, lines that end in CR LF. A
    /// line is a cut, or in passes a row of cuts alike, told by its first; the columns are those of
    /// <see cref="CarvingSchedule.CsvColumns"/>.
    /// </summary>
    Csv,

    /// <summary>JSON, for programs: <c>.json</c>. The members are those that <see cref="CarvingSchedule"/> documents.</summary>
    Json,
}
