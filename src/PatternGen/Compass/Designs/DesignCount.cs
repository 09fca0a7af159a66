using System.Numerics;

namespace PatternGen;

/// <summary>Counts designs by Burnside's lemma: as many as symmetries leave unchanged, on average.</summary>
/// <remarks>
/// A permutation of the choices leaves unchanged what carves each of its cycles as a whole or not at all. By number of
/// choices that is the product of 1 + x^c over its cycles of length c (Pólya). It takes a choice of half of them to its
/// reverse if it carves every other choice of each cycle, which all must then have even lengths: 2 ways a cycle.
/// </remarks>
internal static class DesignCount
{
    internal static BigInteger Of(DesignBoard board, DesignLimits limits)
    {
        var choices = board.Choices.Length;
        var bySize = new BigInteger[choices + 1];
        var reversed = BigInteger.Zero;
        foreach (var permutation in board.Permutations)
        {
            var cycles = CyclesOf(permutation);
            var unchanged = BySize(cycles, choices);
            for (var size = 0; size <= choices; size++)
                bySize[size] += unchanged[size];
            if (cycles.TrueForAll(length => length % 2 == 0))
                reversed += BigInteger.One << cycles.Count;
        }
        var count = BigInteger.Zero;
        var most = Math.Min(choices, limits.MaxOrbits);
        for (var size = limits.MinOrbits; size <= most; size++)
            count += OfSize(size);
        return count;

        BigInteger OfSize(int size)
        {
            var symmetries = board.Permutations.Length;
            // Only a reverse that is within the limits too, and no larger, leaves a design out.
            if (!limits.UpToReversal || 2 * size < choices || !limits.AdmitOrbits(choices - size))
                return bySize[size] / symmetries;
            return 2 * size == choices ? (bySize[size] + reversed) / (2 * symmetries) : 0;
        }
    }

    private static List<int> CyclesOf(int[] permutation)
    {
        var lengths = new List<int>();
        var isSeen = new bool[permutation.Length];
        for (var first = 0; first < permutation.Length; first++)
        {
            var length = 0;
            for (var at = first; !isSeen[at]; at = permutation[at])
            {
                isSeen[at] = true;
                length++;
            }
            if (length > 0)
                lengths.Add(length);
        }
        return lengths;
    }

    private static BigInteger[] BySize(List<int> cycles, int choices)
    {
        var product = new BigInteger[choices + 1];
        product[0] = 1;
        foreach (var length in cycles)
            for (var size = choices; size >= length; size--)
                product[size] += product[size - length];
        return product;
    }
}
