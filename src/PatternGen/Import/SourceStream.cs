namespace PatternGen;

/// <summary>A caller's stream as readers may use it: forwards, no further than the limit, until the caller asks to stop. It leaves the stream open.</summary>
internal sealed class SourceStream(Stream stream, long limit, CancellationToken cancellation)
    : ForwardStream
{
    private long _read;

    /// <exception cref="ImportException">There is more than the limit allows, or it is compressed.</exception>
    public override int Read(byte[] buffer, int offset, int count)
    {
        cancellation.ThrowIfCancellationRequested();
        var read = stream.Read(buffer, offset, count);
        // The two bytes that gzip starts with; no drawing does.
        if (_read == 0 && buffer.AsSpan(offset, read).StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]))
            throw new ImportException(
                "The file is compressed.",
                null,
                ["the file unpacked first: an .svgz is an .svg in gzip"]
            );
        _read += read;
        return _read <= limit
            ? read
            : throw new ImportException(
                $"The file is larger than {limit} bytes.",
                null,
                ["a smaller file", "a higher limit (ImportLimits.WithBytes)"]
            );
    }
}
