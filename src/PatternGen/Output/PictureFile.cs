namespace PatternGen;

/// <summary>Saves drawings that are neither for a machine nor patterns: SVG only, whole or not at all.</summary>
internal static class PictureFile
{
    /// <param name="path">Path that ends in .svg.</param>
    /// <param name="kind">What it is, for the refusal of other extensions: "a step sheet".</param>
    /// <param name="write">Writes it.</param>
    internal static void Save(string path, string kind, Action<OutputBuffer> write)
    {
        Check(path, kind);
        TargetFile.Write(path, stream => Write(new(stream), write));
    }

    internal static Task SaveAsync(
        string path,
        string kind,
        Action<OutputBuffer> write,
        CancellationToken cancellation
    )
    {
        Check(path, kind);
        return Task.Run(
            () =>
                TargetFile.Write(
                    path,
                    stream => Write(new(stream, cancellation: cancellation), write)
                ),
            cancellation
        );
    }

    /// <param name="stream">Any writable stream; it stays open.</param>
    /// <param name="write">Writes it.</param>
    internal static void Save(Stream stream, Action<OutputBuffer> write) =>
        Write(new(OutputBuffer.Writable(stream)), write);

    internal static Task SaveAsync(
        Stream stream,
        Action<OutputBuffer> write,
        CancellationToken cancellation
    )
    {
        OutputBuffer.Writable(stream);
        return Task.Run(() => Write(new(stream, true, cancellation), write), cancellation);
    }

    private static void Write(OutputBuffer output, Action<OutputBuffer> write)
    {
        using (output)
        {
            write(output);
            output.Flush();
        }
    }

    private static void Check(string path, string kind)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        if (!Path.GetExtension(path).Equals(".svg", StringComparison.OrdinalIgnoreCase))
            throw new ArgumentException(
                $"'{path}' does not end in .svg: {kind} is a picture for people. What a machine needs is a pattern, saved as .dxf.",
                nameof(path)
            );
    }
}
