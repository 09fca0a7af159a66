using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A printable sheet that shows, step by step, how a drawing is made with compass, straightedge and pencil.</summary>
/// <remarks>
/// Every picture is to the scale that shows what its step needs; the settings in the sentences are what to measure. The
/// sheet is 190 mm wide, so that it fits A4 and Letter paper, and as high as it needs. Immutable and safe to share
/// between threads.
/// </remarks>
public sealed class StepSheet
{
    private const int DefaultColumns = 3;
    private const string Kind = "a step sheet";

    internal StepSheet(CompassDrawing drawing, Wording wording)
        : this(drawing, wording, DefaultColumns) { }

    private StepSheet(CompassDrawing drawing, Wording wording, int columns)
    {
        Drawing = drawing;
        Wording = wording;
        Columns = columns;
    }

    /// <summary>The drawing whose steps are shown.</summary>
    public CompassDrawing Drawing { get; }

    /// <summary>The words on the sheet.</summary>
    public Wording Wording { get; }

    /// <summary>Pictures side by side. Default 3.</summary>
    public int Columns { get; }

    /// <summary>Returns the sheet with another number of pictures side by side; fewer are larger.</summary>
    /// <param name="columns">1 to 6.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
    public StepSheet WithColumns(int columns) => new(Drawing, Wording, Guard.Within(columns, 1, 6));

    /// <summary>Saves the sheet as a picture.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <exception cref="ArgumentException">It does not.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    public void Save(string path) => PictureFile.Save(path, Kind, Write);

    /// <summary>Saves the sheet as a picture without holding up the caller.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <exception cref="ArgumentException">The path does not end in .svg.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public Task SaveAsync(string path, CancellationToken cancellation = default) =>
        PictureFile.SaveAsync(path, Kind, Write, cancellation);

    /// <summary>Writes the sheet to a stream as SVG; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    public void Save(Stream stream) => PictureFile.Save(stream, Write);

    private void Write(OutputBuffer output) => new StepSheetWriter(this).Write(output);
}
