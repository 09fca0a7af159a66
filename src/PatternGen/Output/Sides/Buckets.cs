namespace PatternGen;

/// <summary>Items by the number of the group that they belong to, in their order within each group.</summary>
internal sealed class Buckets
{
    private readonly int[] _starts;
    private readonly int[] _items;

    /// <param name="groupOf">For each item the number of its group.</param>
    /// <param name="count">Number of groups.</param>
    internal Buckets(ReadOnlySpan<int> groupOf, int count)
    {
        _starts = new int[count + 1];
        foreach (var group in groupOf)
            _starts[group + 1]++;
        for (var group = 0; group < count; group++)
            _starts[group + 1] += _starts[group];
        _items = new int[groupOf.Length];
        var next = _starts.AsSpan(0, count).ToArray();
        for (var item = 0; item < groupOf.Length; item++)
            _items[next[groupOf[item]]++] = item;
    }

    internal int Count => _starts.Length - 1;

    internal ReadOnlySpan<int> this[int group] => _items.AsSpan(_starts[group].._starts[group + 1]);
}
