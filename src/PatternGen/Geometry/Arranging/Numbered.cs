using System.Collections;

namespace PatternGen.Geometry;

/// <summary>A list whose items are made of their places as they are read.</summary>
internal sealed class Numbered<T>(int count, Func<int, T> make) : IReadOnlyList<T>
{
    public int Count => count;

    public T this[int index] =>
        index >= 0 && index < count
            ? make(index)
            : throw new ArgumentOutOfRangeException(
                nameof(index),
                index,
                $"There are {count}, numbered from 0."
            );

    public IEnumerator<T> GetEnumerator()
    {
        for (var i = 0; i < count; i++)
            yield return make(i);
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
