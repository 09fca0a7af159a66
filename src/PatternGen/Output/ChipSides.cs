using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sides of a pattern's chips: which are shared, and each of them once.</summary>
internal static class ChipSides
{
    internal static double SharedLength(Pattern pattern) => throw new NotImplementedException();

    internal static IReadOnlyList<Chain> Chains(Pattern pattern, int decimals) =>
        throw new NotImplementedException();
}
