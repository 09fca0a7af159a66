namespace PatternGen;

/// <summary>Numbers values by size, so that those that differ by rounding only have one number.</summary>
internal static class Ranks
{
    /// <summary>Returns for each value its rank, 0 for the least.</summary>
    /// <param name="values">The values.</param>
    /// <param name="gap">A value that is farther than this above the next lower one begins a new rank.</param>
    internal static int[] Of(double[] values, double gap)
    {
        var order = new int[values.Length];
        for (var i = 0; i < order.Length; i++)
            order[i] = i;
        var sorted = values.ToArray();
        Array.Sort(sorted, order);
        var ranks = new int[values.Length];
        var rank = 0;
        for (var i = 0; i < order.Length; i++)
        {
            if (i > 0 && sorted[i] - sorted[i - 1] > gap)
                rank++;
            ranks[order[i]] = rank;
        }
        return ranks;
    }
}
