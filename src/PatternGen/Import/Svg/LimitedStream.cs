namespace PatternGen;

/// <summary>Reads a stream up to a number of bytes, refuses what is compressed, and leaves the stream open.</summary>
internal sealed class LimitedStream(Stream stream, long most) : Stream
{
    private long _read;

    public override bool CanRead => true;
    public override bool CanSeek => false;
    public override bool CanWrite => false;
    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => _read;
        set => throw new NotSupportedException();
    }

    /// <exception cref="ImportException">There are more bytes than allowed, or they are compressed.</exception>
    public override int Read(byte[] buffer, int offset, int count) =>
        Read(buffer.AsSpan(offset, count));

    /// <exception cref="ImportException">There are more bytes than allowed, or they are compressed.</exception>
    public override int Read(Span<byte> buffer)
    {
        var count = stream.Read(buffer);
        // The two bytes that gzip starts with; no text does.
        if (_read == 0 && count > 1 && buffer is [0x1f, 0x8b, ..])
            throw new ImportException(
                "The file is compressed.",
                null,
                ["the file unpacked first (an .svgz is an .svg in gzip)"]
            );
        _read += count;
        return _read <= most
            ? count
            : throw new ImportException(
                $"The file is larger than {most} bytes.",
                null,
                ["a smaller file", "a higher limit (ImportLimits.WithBytes)"]
            );
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) =>
        throw new NotSupportedException();
}
