using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Groups parts into orbits: those that permutations take to each other.</summary>
internal static class PartOrbits
{
    /// <param name="count">Number of parts.</param>
    /// <param name="generators">Where the permutations that make up the group take each part.</param>
    /// <returns>Each orbit's parts in ascending order; orbits in the order of their first parts.</returns>
    internal static int[][] Of(int count, IEnumerable<int[]?> generators)
    {
        var groups = new Groups(count);
        foreach (var taken in generators.OfType<int[]>())
            for (var i = 0; i < count; i++)
                groups.Join(i, taken[i]);
        return [.. Enumerable.Range(0, count).GroupBy(groups.Of).Select(orbit => orbit.ToArray())];
    }
}
