using System.Buffers;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Collects bytes in a pooled buffer and passes them on to a stream; nothing is allocated per write.</summary>
/// <param name="stream">Where the bytes go; only written to, forwards, and left open.</param>
/// <param name="asynchronous">Whether to use the stream's asynchronous writing, which some streams insist on.</param>
/// <param name="cancellation">Asks to stop.</param>
internal sealed class OutputBuffer(
    Stream stream,
    bool asynchronous = false,
    CancellationToken cancellation = default
) : IDisposable
{
    private const int Size = 1 << 16;

    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(Size);
    private int _count;

    /// <summary>Returns a stream of a caller, for writing.</summary>
    /// <exception cref="ArgumentException">It can't be written to.</exception>
    internal static Stream Writable(Stream stream) =>
        Guard.NotNull(stream).CanWrite
            ? stream
            : throw new ArgumentException("The stream can't be written to.", nameof(stream));

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
    internal void Write(double value, int decimals)
    {
        // Not in one expression with the count: the room may first have to be made by flushing.
        var room = Room(FixedPoint.MaxLength);
        Advance(FixedPoint.Write(room, value, decimals));
    }

    /// <summary>Writes a number that <see cref="FixedPoint.Scale"/> has rounded.</summary>
    internal void WriteScaled(long scaled, int decimals)
    {
        var room = Room(FixedPoint.MaxLength);
        Advance(FixedPoint.WriteScaled(room, scaled, decimals));
    }

    /// <summary>Writes an integer.</summary>
    internal void Write(long value) => WriteScaled(value, 0);

    /// <summary>
    /// Returns the free part of the buffer, for those who write many short things at once; follow it by
    /// <see cref="Advance"/>.
    /// </summary>
    /// <param name="length">Bytes needed at least, far fewer than the buffer holds.</param>
    internal Span<byte> Room(int length)
    {
        if (_bytes.Length - _count < length)
            Flush();
        return _bytes.AsSpan(_count);
    }

    /// <summary>Says how many bytes were written to the <see cref="Room"/>.</summary>
    internal void Advance(int length) => _count += length;

    /// <summary>Passes on what is left.</summary>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    internal void Flush()
    {
        cancellation.ThrowIfCancellationRequested();
        var bytes = _bytes.AsMemory(0, _count);
        _count = 0;
        if (asynchronous)
            stream.WriteAsync(bytes, cancellation).AsTask().GetAwaiter().GetResult();
        else
            stream.Write(bytes.Span);
    }

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
        _count = 0;
    }
}
