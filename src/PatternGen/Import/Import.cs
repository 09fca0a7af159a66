using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Reads outlines and curves from files.</summary>
/// <remarks>
/// Nothing outside the file is opened, and a file that asks too much is refused (<see cref="ImportLimits"/>). A file is closed
/// as soon as it is read; a caller's stream stays open. Of an SVG, the lower left corner of the sheet becomes the origin, and
/// places are true to about 1e-4 mm on a metre; <see cref="ImportedDrawing.Accuracy"/> tells how far exactly.
/// </remarks>
public static partial class Import
{
    /// <summary>Reads a drawing from a file.</summary>
    /// <param name="path">The file, SVG or ASCII DXF; if its name ends in neither .svg nor .dxf, its content tells.</param>
    /// <param name="settings">How it is read; <see cref="ImportSettings.Default"/> if not given.</param>
    /// <returns>
    /// The curves, never null, loose ones joined end to end; what could not be read stands in
    /// <see cref="ImportedDrawing.Notes"/>.
    /// </returns>
    /// <exception cref="ImportException">The file is no drawing of its kind, or beyond the limits.</exception>
    /// <exception cref="IOException">It can't be opened or read.</exception>
    public static ImportedDrawing Drawing(string path, ImportSettings? settings = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        using var file = SourceFile.Open(path);
        return Read(file, SourceFile.FormatOf(path, file), settings, default);
    }

    /// <summary>Reads a drawing from a stream, from where it stands to the end of the drawing; the stream stays open.</summary>
    /// <param name="stream">Any readable stream.</param>
    /// <param name="format">What it holds.</param>
    /// <param name="settings">How it is read; <see cref="ImportSettings.Default"/> if not given.</param>
    /// <returns>The curves, never null.</returns>
    /// <exception cref="ArgumentException">The stream can't be read from.</exception>
    /// <exception cref="ImportException">It is no drawing of its kind, or beyond the limits.</exception>
    public static ImportedDrawing Drawing(
        Stream stream,
        FileFormat format,
        ImportSettings? settings = null
    ) => Read(Readable(stream), Guard.Defined(format), settings, default);

    /// <summary>Reads a drawing from a file without holding up the caller.</summary>
    /// <param name="path">The file, as for <see cref="Drawing(string, ImportSettings)"/>.</param>
    /// <param name="settings">How it is read; <see cref="ImportSettings.Default"/> if not given.</param>
    /// <param name="cancellation">Asks to stop.</param>
    /// <exception cref="ImportException">The file is no drawing of its kind, or beyond the limits.</exception>
    /// <exception cref="IOException">It can't be opened or read.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public static Task<ImportedDrawing> DrawingAsync(
        string path,
        ImportSettings? settings = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return Task.Run(
            () =>
            {
                using var file = SourceFile.Open(path);
                return Read(file, SourceFile.FormatOf(path, file), settings, cancellation);
            },
            cancellation
        );
    }

    /// <summary>Reads a drawing from a stream without holding up the caller; the stream stays open.</summary>
    /// <param name="stream">Any readable stream.</param>
    /// <param name="format">What it holds.</param>
    /// <param name="settings">How it is read; <see cref="ImportSettings.Default"/> if not given.</param>
    /// <param name="cancellation">Asks to stop.</param>
    /// <exception cref="ArgumentException">The stream can't be read from.</exception>
    /// <exception cref="ImportException">It is no drawing of its kind, or beyond the limits.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public static Task<ImportedDrawing> DrawingAsync(
        Stream stream,
        FileFormat format,
        ImportSettings? settings = null,
        CancellationToken cancellation = default
    )
    {
        Readable(stream);
        Guard.Defined(format);
        return Task.Run(() => Read(stream, format, settings, cancellation), cancellation);
    }

    /// <summary>Reads the area that the closed curves of a file bound.</summary>
    /// <param name="path">The file, as for <see cref="Drawing(string, ImportSettings)"/>.</param>
    /// <param name="settings">How it is read; <see cref="ImportSettings.Default"/> if not given.</param>
    /// <returns><c>Import.Outline("lid.svg").Inset(8).Largest()</c> is a line 8 mm inside the edge.</returns>
    /// <exception cref="ImportException">The file is no drawing of its kind, or beyond the limits.</exception>
    /// <exception cref="PatternException">No curve is closed; the message says where the open ones end and what would close them.</exception>
    /// <exception cref="IOException">It can't be opened or read.</exception>
    public static Region Outline(string path, ImportSettings? settings = null) =>
        Drawing(path, settings).Outline();

    /// <summary>Reads the area that the closed curves in a stream bound; the stream stays open.</summary>
    /// <inheritdoc cref="Drawing(Stream, FileFormat, ImportSettings)" path="/param"/>
    /// <exception cref="ArgumentException">The stream can't be read from.</exception>
    /// <exception cref="ImportException">It is no drawing of its kind, or beyond the limits.</exception>
    /// <exception cref="PatternException">No curve is closed; the message says where the open ones end and what would close them.</exception>
    public static Region Outline(
        Stream stream,
        FileFormat format,
        ImportSettings? settings = null
    ) => Drawing(stream, format, settings).Outline();

    private static Stream Readable(Stream stream) =>
        Guard.NotNull(stream).CanRead
            ? stream
            : throw new ArgumentException("The stream can't be read from.", nameof(stream));

    private static ImportedDrawing Read(
        Stream stream,
        FileFormat format,
        ImportSettings? settings,
        CancellationToken cancellation
    )
    {
        var how = settings ?? ImportSettings.Default;
        using var source = new SourceStream(stream, how.Limits.Bytes, cancellation);
        var curves = new ImportedCurves(how, cancellation);
        return Drawable(() =>
            Joined(
                format == FileFormat.Svg
                    ? SvgReader.Read(source, curves)
                    : DxfReader.Read(source, curves)
            )
        );
    }

    private static ImportedDrawing Drawable(Func<ImportedDrawing> read)
    {
        try
        {
            return read();
        }
        catch (ArgumentException inner)
        {
            // The kernel's limits, met by a number that is one but no use, such as an arc that leaves the world.
            throw new ImportException(
                $"The drawing holds a curve that can't be drawn: {inner.Message}",
                null,
                ["a drawing within 1 km of its origin"],
                inner
            );
        }
    }

    /// <summary>The drawing that a reader found, loose ends joined.</summary>
    private static ImportedDrawing Joined(ReadDrawing read)
    {
        var joined = RunJoiner.Join(read.Curves);
        return new(
            joined.Contours,
            joined.Chains,
            read.Curves.Notes,
            read.Accuracy + joined.Moved,
            read.Unit
        );
    }
}
