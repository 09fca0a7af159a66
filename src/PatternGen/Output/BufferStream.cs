namespace PatternGen;

/// <summary>Lets those who write to a stream write to the buffer, in turn with those who write to it directly.</summary>
internal sealed class BufferStream(OutputBuffer output) : Stream
{
    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(ReadOnlySpan<byte> buffer) => output.Write(buffer);

    public override void Write(byte[] buffer, int offset, int count) =>
        output.Write(buffer.AsSpan(offset, count));

    /// <summary>Does nothing: the bytes are in the buffer, which knows when to pass them on.</summary>
    public override void Flush() { }

    public override int Read(byte[] buffer, int offset, int count) =>
        throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
