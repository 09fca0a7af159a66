namespace PatternGen;

/// <summary>Writes patterns to files and streams.</summary>
/// <remarks>
/// The same pattern gives the same bytes, in any culture and on any thread. A file appears whole or not at all; an
/// older file of the same name stays as it was until then.
/// </remarks>
public static partial class PatternSaving
{
    /// <summary>Saves the pattern; the extension chooses the format: <c>.svg</c> to look at, <c>.dxf</c> for a machine.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="path">Path that ends in .svg or .dxf.</param>
    /// <param name="options">How to write it; <see cref="SaveOptions.Default"/> by default.</param>
    /// <exception cref="ArgumentException">The extension is neither.</exception>
    /// <exception cref="PatternException">The pattern is empty, or impossible as designed.</exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static SaveResult Save(this Pattern pattern, string path, SaveOptions? options = null)
    {
        return Save(pattern, path, DefaultFor(path), options);
    }

    /// <summary>Saves the pattern for a purpose; the extension chooses the format.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="path">Path that ends in .svg or .dxf.</param>
    /// <param name="purpose">What the file is for. A DXF is for a machine only.</param>
    /// <param name="options">How to write it; <see cref="SaveOptions.Default"/> by default.</param>
    /// <exception cref="ArgumentException">The extension is neither, or the purpose does not suit it.</exception>
    /// <exception cref="PatternException">The pattern is empty, or impossible as designed.</exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static SaveResult Save(
        this Pattern pattern,
        string path,
        For purpose,
        SaveOptions? options = null
    )
    {
        return new SaveJob(pattern, FormatOf(path), purpose, options).ToFile(path);
    }

    /// <summary>Writes the pattern to a stream, forwards only; the stream stays open.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="stream">Any writable stream.</param>
    /// <param name="format">The kind of file.</param>
    /// <param name="purpose">What the file is for. A DXF is for a machine only.</param>
    /// <param name="options">How to write it; <see cref="SaveOptions.Default"/> by default.</param>
    /// <exception cref="ArgumentException">The purpose does not suit the format, or the stream can't be written to.</exception>
    /// <exception cref="PatternException">The pattern is empty, or impossible as designed.</exception>
    public static SaveResult Save(
        this Pattern pattern,
        Stream stream,
        FileFormat format,
        For purpose,
        SaveOptions? options = null
    )
    {
        OutputBuffer.Writable(stream);
        return new SaveJob(pattern, format, purpose, options).ToStream(stream, asynchronous: false);
    }

    private static FileFormat FormatOf(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var extension = Path.GetExtension(path);
        if (extension.Equals(".svg", StringComparison.OrdinalIgnoreCase))
            return FileFormat.Svg;
        if (extension.Equals(".dxf", StringComparison.OrdinalIgnoreCase))
            return FileFormat.Dxf;
        throw new ArgumentException(
            $"'{path}' ends in neither .svg nor .dxf, the two formats that a pattern is saved in.",
            nameof(path)
        );
    }

    private static For DefaultFor(string path) =>
        FormatOf(path) == FileFormat.Dxf ? For.Machine : For.Viewing;
}
