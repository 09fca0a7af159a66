using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A carving plan written out, to print, for a spreadsheet or for a program.</summary>
/// <remarks>
/// <para>
/// The JSON is one object, lengths in mm, angles in degrees, points as [x, y], numbers rounded to 6 decimals:
/// <c>format</c> ("carving-plan"), <c>version</c> (1), <c>title</c>, <c>order</c> ("by-chip", "by-passes"), <c>technique</c> ("three-cuts",
/// "stab-and-slice"), <c>hand</c> ("right", "left"), <c>knife</c> {<c>angle</c>}, <c>stock</c> {<c>thickness</c>, <c>grain</c>,
/// <c>species</c> or null}, <c>totals</c> {<c>chips</c>, <c>small</c>, <c>medium</c>, <c>large</c>, <c>cuts</c>, <c>lightCuts</c>, <c>length</c>,
/// <c>volume</c> in mm³, <c>deepest</c>, <c>lineCuts</c>, <c>lineCutLength</c>, <c>lineCutVolume</c>, <c>boardTurns</c>, <c>boardTurnsSaved</c>, <c>minutes</c> or null}, <c>cautions</c> [text],
/// <c>chips</c> and <c>steps</c>.
/// </para>
/// <para>
/// A chip, in the order in which they come out, is {<c>number</c>, <c>id</c>, <c>size</c>, <c>width</c>, <c>depth</c>, <c>volume</c>,
/// <c>reason</c>}. A step is {<c>step</c>, <c>reason</c>, <c>turnsBoard</c>, <c>cuts</c>}, and a cut {<c>chip</c> (its number), <c>kind</c> ("cut", "stab",
/// "slice"), <c>side</c>, <c>hole</c>, <c>facing</c>, <c>boardTurn</c>, <c>start</c>, <c>end</c>, <c>direction</c>, <c>deepest</c>, <c>depth</c>,
/// <c>deepestAlong</c>, <c>startDepth</c>, <c>endDepth</c>, <c>length</c>, <c>bladeAngle</c>, <c>pressure</c> ("full", "light"), <c>grain</c> ("along",
/// "with", "across", "against"), <c>reason</c>}. Reasons and facings are the names of <see cref="PlanReason"/> and <see cref="SideFacing"/> with
/// hyphens, such as "largest-first".
/// </para>
/// <para>Immutable and safe to share between threads. The same plan gives the same bytes, in any culture.</para>
/// </remarks>
public sealed class CarvingSchedule
{
    internal CarvingSchedule(CarvingPlan plan, Wording wording, CarvingRate? rate)
    {
        (Plan, Wording, Rate) = (plan, wording, rate);
    }

    /// <summary>The columns of the CSV, as its heading line names them: lengths in mm, angles in degrees.</summary>
    public static IReadOnlyList<string> CsvColumns => CsvSchedule.Columns;

    /// <summary>What is written out.</summary>
    public CarvingPlan Plan { get; }

    /// <summary>The words of the Markdown. Default English.</summary>
    public Wording Wording { get; }

    /// <summary>How fast somebody carves; null, the default, if the schedule says nothing of minutes.</summary>
    public CarvingRate? Rate { get; }

    /// <summary>Returns the schedule in other words.</summary>
    [Pure]
    public CarvingSchedule WithWording(Wording wording) => new(Plan, Guard.NotNull(wording), Rate);

    /// <summary>Returns the schedule with the minutes that it takes at a rate.</summary>
    [Pure]
    public CarvingSchedule WithRate(CarvingRate rate) => new(Plan, Wording, Guard.NotNull(rate));

    /// <summary>Saves the schedule; the extension chooses the format.</summary>
    /// <param name="path">Path that ends in .md, .csv or .json.</param>
    /// <exception cref="ArgumentException">It does not.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    public void Save(string path)
    {
        var format = FormatOf(path);
        TargetFile.Write(path, stream => Write(new(stream), format));
    }

    /// <summary>Saves the schedule without holding up the caller.</summary>
    /// <param name="path">Path that ends in .md, .csv or .json.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <exception cref="ArgumentException">The path ends otherwise.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public Task SaveAsync(string path, CancellationToken cancellation = default)
    {
        var format = FormatOf(path);
        return Task.Run(
            () =>
                TargetFile.Write(
                    path,
                    stream => Write(new(stream, cancellation: cancellation), format)
                ),
            cancellation
        );
    }

    /// <summary>Writes the schedule to a stream, forwards only; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <param name="format">The kind of file.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The format is none of the named values.</exception>
    public void Save(Stream stream, ScheduleFormat format)
    {
        Write(new(OutputBuffer.Writable(stream)), Guard.Defined(format));
    }

    private void Write(OutputBuffer output, ScheduleFormat format)
    {
        using (output)
        {
            if (format == ScheduleFormat.Json)
                JsonSchedule.Write(this, output);
            else if (format == ScheduleFormat.Csv)
                CsvSchedule.Write(Plan, output);
            else
                MarkdownSchedule.Write(this, output);
            output.Flush();
        }
    }

    private static ScheduleFormat FormatOf(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return Path.GetExtension(path).ToUpperInvariant() switch
        {
            ".MD" => ScheduleFormat.Markdown,
            ".CSV" => ScheduleFormat.Csv,
            ".JSON" => ScheduleFormat.Json,
            _ => throw new ArgumentException(
                $"'{path}' ends in none of .md, .csv and .json, the formats of a schedule.",
                nameof(path)
            ),
        };
    }
}
