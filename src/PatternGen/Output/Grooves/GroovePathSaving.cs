using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes groove paths to files and streams, as DXF.</summary>
/// <remarks>
/// <para>
/// Millimetres, the surface at z = 0, down is negative. The paths are 3D polylines on the layer GROOVES; the outline of the wood is on
/// STOCK, for reference, and a text on NOTE says bit, depths, accuracy, how the paths enter, and the cautions. It is geometry for a program
/// that makes a machine's program, and not one itself: it holds no feeds, speeds or safe heights.
/// </para>
/// <para>
/// Guards and hold-downs in place, eyes and ears protected; the machine's manual, local codes and licensed practice come first; test on scrap. The
/// same paths give the same bytes, in any culture; a file appears whole or not at all. Depths are rounded up, towards the surface.
/// </para>
/// </remarks>
public static class GroovePathSaving
{
    /// <summary>Saves the paths.</summary>
    /// <param name="paths">The paths.</param>
    /// <param name="path">Path that ends in .dxf.</param>
    /// <param name="options">Decimals, dialect and words; <see cref="SaveOptions.Default"/> by default.</param>
    /// <exception cref="ArgumentException">The path does not end in .dxf.</exception>
    /// <exception cref="PatternException">There are no paths.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    public static void Save(this GroovePaths paths, string path, SaveOptions? options = null)
    {
        Check(paths, path);
        TargetFile.Write(path, stream => Write(paths, new(stream), options));
    }

    /// <summary>Writes the paths to a stream, forwards only; the stream stays open.</summary>
    /// <param name="paths">The paths.</param>
    /// <param name="stream">Any writable stream.</param>
    /// <param name="options">Decimals, dialect and words; <see cref="SaveOptions.Default"/> by default.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    /// <exception cref="PatternException">There are no paths.</exception>
    public static void Save(this GroovePaths paths, Stream stream, SaveOptions? options = null)
    {
        Check(paths, stream);
        Write(paths, new(stream), options);
    }

    /// <summary>Saves the paths without holding up the caller.</summary>
    /// <param name="paths">The paths.</param>
    /// <param name="path">Path that ends in .dxf.</param>
    /// <param name="options">Decimals, dialect and words; <see cref="SaveOptions.Default"/> by default.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <exception cref="ArgumentException">The path does not end in .dxf.</exception>
    /// <exception cref="PatternException">There are no paths.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public static Task SaveAsync(
        this GroovePaths paths,
        string path,
        SaveOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        Check(paths, path);
        return Task.Run(
            () =>
                TargetFile.Write(
                    path,
                    stream => Write(paths, new(stream, cancellation: cancellation), options)
                ),
            cancellation
        );
    }

    /// <summary>Writes the paths to a stream, forwards only and by its asynchronous methods; the stream stays open.</summary>
    /// <param name="paths">The paths.</param>
    /// <param name="stream">Any writable stream.</param>
    /// <param name="options">Decimals, dialect and words; <see cref="SaveOptions.Default"/> by default.</param>
    /// <param name="cancellation">Asks to stop; the stream may then hold a part of the file.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    /// <exception cref="PatternException">There are no paths.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    public static Task SaveAsync(
        this GroovePaths paths,
        Stream stream,
        SaveOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        Check(paths, stream);
        return Task.Run(
            () => Write(paths, new(stream, asynchronous: true, cancellation), options),
            cancellation
        );
    }

    private static void Write(GroovePaths paths, OutputBuffer output, SaveOptions? options)
    {
        using (output)
        {
            GrooveDxfWriter.Write(paths, output, options ?? SaveOptions.Default);
            output.Flush();
        }
    }

    private static void Check(GroovePaths paths, string path)
    {
        RefuseEmpty(paths);
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        if (!Path.GetExtension(path).Equals(".dxf", StringComparison.OrdinalIgnoreCase))
            throw new ArgumentException(
                $"'{path}' does not end in .dxf, the format that groove paths are saved in.",
                nameof(path)
            );
    }

    private static void Check(GroovePaths paths, Stream stream)
    {
        RefuseEmpty(paths);
        OutputBuffer.Writable(stream);
    }

    private static void RefuseEmpty(GroovePaths paths)
    {
        if (Guard.NotNull(paths).PathCount == 0)
            throw new PatternException(
                "There are no groove paths: nothing of the pattern is cut by this bit.",
                remedies:
                [
                    "a pattern with chips or line cuts",
                    "a larger bit, if chips were left out",
                ]
            );
    }
}
