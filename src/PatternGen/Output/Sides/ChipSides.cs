using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sides of a pattern's chips: which are shared, and each of them once.</summary>
internal static class ChipSides
{
    /// <summary>
    /// Millimetres of side that neighbouring chips have in common: by how much the sides drawn once are shorter than
    /// all outlines together.
    /// </summary>
    internal static double SharedLength(Pattern pattern) =>
        Collect(pattern, SaveOptions.Default.Decimals).Pieces().SharedLength;

    /// <summary>
    /// Every side of every chip once, joined into runs as long as they go. A run that ends where it starts is closed.
    /// </summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="decimals">Decimals that are written; points that round alike are one point.</param>
    internal static IReadOnlyList<Chain> Chains(Pattern pattern, int decimals) =>
        SideRuns.Of(Collect(pattern, decimals).Pieces());

    private static SideSet Collect(Pattern pattern, int decimals)
    {
        var sink = new Sink(decimals);
        pattern.Root.Draw(sink, LayerSet.Chips);
        return sink.Sides;
    }

    private sealed class Sink(int decimals) : SelectiveSink
    {
        internal SideSet Sides { get; } = new(decimals);

        public override void Chip(in PlacedChip chip) => Sides.Add(chip.Outline, closed: true);
    }
}
