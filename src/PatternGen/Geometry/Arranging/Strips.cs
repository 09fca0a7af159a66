namespace PatternGen.Geometry;

/// <summary>Finds which of many upright rectangles reach a height: each is listed in every level strip that it touches.</summary>
internal sealed class Strips
{
    private readonly double _low;
    private readonly double _height;
    private readonly int[] _starts;
    private readonly int[] _items;

    internal Strips(Extents[] items)
    {
        var all = items.Length > 0 ? items[0] : default;
        double heights = 0;
        foreach (var item in items)
        {
            all = all.Including(item);
            heights += item.Height;
        }
        _low = all.Min.Y;
        // As high as the average rectangle, so that each is listed about twice, however few of them lie side by side.
        var count = heights > 0 ? Math.Min(items.Length, all.Height / heights * items.Length) : 1;
        _height = Math.Max(all.Height, double.Epsilon) / Math.Max(1, Math.Floor(count));
        _starts = new int[Math.Max(1, (int)count) + 1];
        _items = Fill(items);
    }

    /// <summary>Those that may reach a height, and others near it.</summary>
    internal ReadOnlySpan<int> At(double y)
    {
        var strip = Strip(y);
        return _items.AsSpan(_starts[strip], _starts[strip + 1] - _starts[strip]);
    }

    /// <summary>Those that may reach any height between two, some of them more than once.</summary>
    internal IEnumerable<int> Between(double low, double high)
    {
        for (var i = _starts[Strip(low)]; i < _starts[Strip(high) + 1]; i++)
            yield return _items[i];
    }

    private int[] Fill(Extents[] items)
    {
        foreach (var item in items)
            for (var strip = Strip(item.Min.Y); strip <= Strip(item.Max.Y); strip++)
                _starts[strip + 1]++;
        for (var strip = 1; strip < _starts.Length; strip++)
            _starts[strip] += _starts[strip - 1];
        var listed = new int[_starts[^1]];
        var next = _starts.ToArray();
        for (var i = 0; i < items.Length; i++)
        for (var strip = Strip(items[i].Min.Y); strip <= Strip(items[i].Max.Y); strip++)
            listed[next[strip]++] = i;
        return listed;
    }

    private int Strip(double y) => (int)Math.Clamp((y - _low) / _height, 0, _starts.Length - 2);
}
