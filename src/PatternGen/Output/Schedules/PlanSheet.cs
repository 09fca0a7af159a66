namespace PatternGen;

/// <summary>The drawing of a plan: chips with the numbers in which they come out, and an arrow for each cut.</summary>
/// <remarks>
/// It is enlarged where chips are so small that their numbers could not be read, and says how much. Immutable and safe to
/// share between threads.
/// </remarks>
public sealed class PlanSheet
{
    private const string Kind = "the drawing of a plan";

    internal PlanSheet(CarvingPlan plan, Wording wording)
    {
        (Plan, Wording) = (plan, wording);
    }

    /// <summary>What is drawn.</summary>
    public CarvingPlan Plan { get; }

    /// <summary>The words on the sheet.</summary>
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

    private void Write(OutputBuffer output) => new PlanSheetWriter(this).Write(output);
}
