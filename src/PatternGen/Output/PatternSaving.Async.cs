namespace PatternGen;

public static partial class PatternSaving
{
    /// <summary>
    /// Saves the pattern without holding up the caller; the extension chooses the format: <c>.svg</c> to look at,
    /// <c>.dxf</c> for a machine.
    /// </summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="path">Path that ends in .svg or .dxf.</param>
    /// <param name="options">How to write it; <see cref="SaveOptions.Default"/> by default.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <exception cref="ArgumentException">The extension is neither.</exception>
    /// <exception cref="PatternException">The pattern is empty, or impossible as designed.</exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public static Task<SaveResult> SaveAsync(
        this Pattern pattern,
        string path,
        SaveOptions? options = null,
        CancellationToken cancellation = default
    ) => SaveAsync(pattern, path, DefaultFor(path), options, cancellation);

    /// <summary>Saves the pattern for a purpose without holding up the caller; the extension chooses the format.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="path">Path that ends in .svg or .dxf.</param>
    /// <param name="purpose">What the file is for. A DXF is for a machine only.</param>
    /// <param name="options">How to write it; <see cref="SaveOptions.Default"/> by default.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <exception cref="ArgumentException">The extension is neither, or the purpose does not suit it.</exception>
    /// <exception cref="PatternException">The pattern is empty, or impossible as designed.</exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public static Task<SaveResult> SaveAsync(
        this Pattern pattern,
        string path,
        For purpose,
        SaveOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        var job = new SaveJob(pattern, FormatOf(path), purpose, options, cancellation);
        return Task.Run(() => job.ToFile(path), cancellation);
    }

    /// <summary>
    /// Writes the pattern to a stream, forwards only and by its asynchronous methods; the stream stays open.
    /// </summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="stream">Any writable stream.</param>
    /// <param name="format">The kind of file.</param>
    /// <param name="purpose">What the file is for. A DXF is for a machine only.</param>
    /// <param name="options">How to write it; <see cref="SaveOptions.Default"/> by default.</param>
    /// <param name="cancellation">Asks to stop; the stream may then hold a part of the file.</param>
    /// <exception cref="ArgumentException">The purpose does not suit the format, or the stream can't be written to.</exception>
    /// <exception cref="PatternException">The pattern is empty, or impossible as designed.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public static Task<SaveResult> SaveAsync(
        this Pattern pattern,
        Stream stream,
        FileFormat format,
        For purpose,
        SaveOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        OutputBuffer.Writable(stream);
        var job = new SaveJob(pattern, format, purpose, options, cancellation);
        return Task.Run(() => job.ToStream(stream, asynchronous: true), cancellation);
    }
}
