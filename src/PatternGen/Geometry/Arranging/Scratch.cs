using System.Buffers;
using System.Runtime.CompilerServices;

namespace PatternGen.Geometry;

/// <summary>A list for the time of one method, on an array that is used again afterwards.</summary>
/// <remarks>
/// A large drawing needs tens of megabytes while it is arranged. Allocated anew each time, they would cost more in collections
/// than the arranging itself.
/// </remarks>
internal sealed class Scratch<T>(int capacity = 16) : IDisposable
{
    private T[] _items = ArrayPool<T>.Shared.Rent(capacity);

    internal int Count { get; private set; }

    internal Span<T> Span => _items.AsSpan(0, Count);

    /// <summary>A list of so many equal items.</summary>
    internal static Scratch<T> Of(int count, T value)
    {
        var scratch = new Scratch<T>(count) { Count = count };
        scratch.Span.Fill(value);
        return scratch;
    }

    internal void Add(T item)
    {
        if (Count == _items.Length)
            Grow();
        _items[Count++] = item;
    }

    /// <summary>Keeps the first items only.</summary>
    internal void Cut(int count) => Count = count;

    public void Dispose()
    {
        Return(_items);
        _items = [];
        Count = 0;
    }

    private void Grow()
    {
        var longer = ArrayPool<T>.Shared.Rent(Math.Max(16, 2 * _items.Length));
        Span.CopyTo(longer);
        Return(_items);
        _items = longer;
    }

    /// <summary>References are cleared, or they would keep alive what they lead to.</summary>
    private static void Return(T[] items)
    {
        if (items.Length > 0)
            ArrayPool<T>.Shared.Return(items, RuntimeHelpers.IsReferenceOrContainsReferences<T>());
    }
}
