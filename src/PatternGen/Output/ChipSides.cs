using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sides of a pattern's chips: which are shared, and each of them once.</summary>
internal static class ChipSides
{
    /// <summary>Millimetres of side that neighbouring chips have in common.</summary>
    internal static double SharedLength(Pattern pattern) => throw new NotImplementedException();

    /// <summary>
    /// Every side of every chip once, joined into runs as long as they go. A run that ends where it starts is closed.
    /// </summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="decimals">Decimals that are written; points that round alike are one point.</param>
    internal static IReadOnlyList<Chain> Chains(Pattern pattern, int decimals) =>
        throw new NotImplementedException();
}
