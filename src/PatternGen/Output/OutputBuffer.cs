using System.Buffers;

namespace PatternGen;

/// <summary>Collects bytes in a pooled buffer and passes them on to a stream; nothing is allocated per write.</summary>
internal sealed class OutputBuffer(Stream stream, CancellationToken cancellation = default)
    : IDisposable
{
    private const int Size = 1 << 16;

    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(Size);
    private int _count;

    /// <summary>Writes bytes: ASCII text, or text already encoded.</summary>
    internal void Write(ReadOnlySpan<byte> bytes)
    {
        while (bytes.Length > _bytes.Length - _count)
        {
            var part = _bytes.Length - _count;
            bytes[..part].CopyTo(_bytes.AsSpan(_count));
            _count += part;
            Flush();
            bytes = bytes[part..];
        }
        bytes.CopyTo(_bytes.AsSpan(_count));
        _count += bytes.Length;
    }

    /// <summary>Writes a number in fixed point with at most the given decimals.</summary>
    internal void Write(double value, int decimals) =>
        _count += FixedPoint.Write(Room(), value, decimals);

    /// <summary>Writes a number given in units of the last decimal.</summary>
    internal void WriteScaled(long scaled, int decimals) =>
        _count += FixedPoint.WriteScaled(Room(), scaled, decimals);

    /// <summary>Writes an integer.</summary>
    internal void Write(long value) => _count += FixedPoint.WriteScaled(Room(), value, 0);

    /// <summary>Passes on what is left.</summary>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    internal void Flush()
    {
        cancellation.ThrowIfCancellationRequested();
        stream.Write(_bytes, 0, _count);
        _count = 0;
    }

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
    }

    private Span<byte> Room()
    {
        if (_bytes.Length - _count < FixedPoint.MaxLength)
            Flush();
        return _bytes.AsSpan(_count);
    }
}
