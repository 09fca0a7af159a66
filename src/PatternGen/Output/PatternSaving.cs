using PatternGen.Geometry;

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
        var format = FormatOf(path);
        Check(pattern, format, purpose, options);
        TargetFile.Write(path, stream => Write(new(stream), pattern, format, purpose, options));
        return new(pattern);
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
        Check(pattern, format, purpose, options);
        Check(stream);
        Write(new(stream), pattern, format, purpose, options);
        return new(pattern);
    }

    private static void Write(
        OutputBuffer output,
        Pattern pattern,
        FileFormat format,
        For purpose,
        SaveOptions? options
    )
    {
        using (output)
        {
            if (format == FileFormat.Dxf)
                DxfWriter.Write(pattern, output, options ?? SaveOptions.Default);
            else
                SvgWriter.Write(pattern, output, purpose, options ?? SaveOptions.Default);
            output.Flush();
        }
    }

    /// <summary>Refuses what can't be written, before anything is.</summary>
    private static void Check(Pattern pattern, FileFormat format, For purpose, SaveOptions? options)
    {
        Guard.NotNull(pattern);
        if (format == FileFormat.Dxf && purpose != For.Machine)
            throw new ArgumentException(
                $"A DXF is for a machine, not for {purpose}; save as .svg to look at it or to print it.",
                nameof(purpose)
            );
        if (pattern.Extents is null)
            throw new PatternException(
                "The pattern is empty: there is nothing to draw.",
                remedies: ["add chips, line cuts, layout lines or an outline before saving"]
            );
        foreach (var text in Texts(pattern, options ?? SaveOptions.Default))
            OutputText.Checked(text);
    }

    private static IEnumerable<string> Texts(Pattern pattern, SaveOptions options) =>
        [
            pattern.Name ?? "",
            .. pattern.Caption(options.Wording),
            .. pattern.Labels.Select(label => label.Text),
        ];

    private static void Check(Stream stream)
    {
        if (!Guard.NotNull(stream).CanWrite)
            throw new ArgumentException("The stream can't be written to.", nameof(stream));
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
