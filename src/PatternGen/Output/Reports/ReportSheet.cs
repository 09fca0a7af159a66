namespace PatternGen;

/// <summary>A drawing of what an inspection found: the pattern, a numbered mark for each finding, and below it what is wrong and what would clear it.</summary>
/// <remarks>
/// Findings are numbered in the order of the report. All places of a finding are ringed; the number stands beside the first. Immutable and
/// safe to share between threads.
/// </remarks>
public sealed class ReportSheet
{
    private const string Kind = "a report";

    internal ReportSheet(InspectionReport report, Wording wording)
    {
        (Report, Wording) = (report, wording);
    }

    /// <summary>What is shown.</summary>
    public InspectionReport Report { get; }

    /// <summary>The words of the title; the findings keep those of their report.</summary>
    public Wording Wording { get; }

    /// <summary>Saves the drawing.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <exception cref="ArgumentException">It does not.</exception>
    /// <exception cref="PatternException">The pattern is empty.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    public void Save(string path) => PictureFile.Save(path, Kind, Write);

    /// <summary>Saves the drawing without holding up the caller.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <exception cref="ArgumentException">The path does not end in .svg.</exception>
    /// <exception cref="PatternException">The pattern is empty.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public Task SaveAsync(string path, CancellationToken cancellation = default) =>
        PictureFile.SaveAsync(path, Kind, Write, cancellation);

    /// <summary>Writes the drawing to a stream as SVG; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    /// <exception cref="PatternException">The pattern is empty.</exception>
    public void Save(Stream stream) => PictureFile.Save(stream, Write);

    private void Write(OutputBuffer output) => new ReportSheetWriter(this).Write(output);
}
