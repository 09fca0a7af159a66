namespace PatternGen.Tests.Importing.Dxf;

/// <summary>A text, and after it another one again and again, without an end.</summary>
internal sealed class EndlessStream(string start, string again) : Stream
{
    private readonly byte[] _start = System.Text.Encoding.ASCII.GetBytes(start);
    private readonly byte[] _again = System.Text.Encoding.ASCII.GetBytes(again);
    private long _position;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        for (var i = 0; i < count; i++, _position++)
            buffer[offset + i] =
                _position < _start.Length
                    ? _start[_position]
                    : _again[(_position - _start.Length) % _again.Length];
        return count;
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) =>
        throw new NotSupportedException();
}
