namespace PatternGen;

/// <summary>Sets labels in a row, in order, each as near to its place as the others let it.</summary>
internal static class LabelSpread
{
    /// <summary>Returns the middles of the labels, none nearer to the next than both together are wide, with the least sum of squared moves.</summary>
    /// <remarks>
    /// Less the widths before it, the middles may not fall from one label to the next: isotonic regression, by joining
    /// neighbours that fall into groups that move as one.
    /// </remarks>
    /// <param name="places">Where the middles would be, ascending.</param>
    /// <param name="widths">Widths of the labels, with the gap to the next.</param>
    internal static double[] Of(IReadOnlyList<double> places, IReadOnlyList<double> widths)
    {
        var offsets = new double[places.Count];
        for (var i = 1; i < offsets.Length; i++)
            offsets[i] = offsets[i - 1] + (widths[i - 1] + widths[i]) / 2;
        var groups = new List<(double Sum, int Count)>();
        for (var i = 0; i < places.Count; i++)
        {
            var group = (Sum: places[i] - offsets[i], Count: 1);
            while (groups.Count > 0 && groups[^1].Sum / groups[^1].Count > group.Sum / group.Count)
            {
                group = (group.Sum + groups[^1].Sum, group.Count + groups[^1].Count);
                groups.RemoveAt(groups.Count - 1);
            }
            groups.Add(group);
        }
        var middles = new double[places.Count];
        var next = 0;
        foreach (var (sum, count) in groups)
            for (var i = 0; i < count; i++, next++)
                middles[next] = sum / count + offsets[next];
        return middles;
    }
}
