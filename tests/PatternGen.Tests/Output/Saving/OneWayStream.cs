namespace PatternGen.Tests.Output.Saving;

/// <summary>A stream that can be written to and nothing else, and fails in the ways that streams do.</summary>
internal sealed class OneWayStream(
    MemoryStream target,
    long room = long.MaxValue,
    bool refusesSynchronous = false,
    Action? onWrite = null
) : Stream
{
    internal const string Full = "There is no space left on this stream.";

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) =>
        Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (refusesSynchronous)
            throw new InvalidOperationException("Only asynchronous writing is allowed.");
        Take(buffer);
    }

    public override ValueTask WriteAsync(
        ReadOnlyMemory<byte> buffer,
        CancellationToken token = default
    )
    {
        token.ThrowIfCancellationRequested();
        Take(buffer.Span);
        return default;
    }

    public override void Flush() =>
        throw new InvalidOperationException("Not the writer's to flush.");

    public override int Read(byte[] buffer, int offset, int count) =>
        throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    private void Take(ReadOnlySpan<byte> bytes)
    {
        if (target.Length + bytes.Length > room)
            throw new IOException(Full);
        target.Write(bytes);
        onWrite?.Invoke();
    }
}
