using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sides of a pattern's chips: which are shared, and each of them once.</summary>
internal static class ChipSides
{
    /// <summary>
    /// Millimetres of side that neighbouring chips have in common: by how much the sides drawn once are shorter than
    /// all outlines and holes together.
    /// </summary>
    internal static double SharedLength(Pattern pattern) =>
        Collect(pattern, SaveOptions.Default.Decimals).Pieces().SharedLength;

    /// <summary>
    /// Every side of every chip once, joined into runs as long as they go. A run that ends where it starts is closed.
    /// </summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="decimals">Decimals that are written; points that round alike are one point.</param>
    /// <exception cref="PatternException">Nothing is left of a chip in these decimals.</exception>
    internal static IReadOnlyList<Chain> Chains(Pattern pattern, int decimals) =>
        LineSides.WithoutSpecks(
            SideRuns.Of(Collect(pattern, decimals, refuses: true).Pieces()),
            decimals
        );

    private static SideSet Collect(Pattern pattern, int decimals, bool refuses = false)
    {
        var sink = new Sink(decimals, refuses);
        pattern.Root.Draw(sink, LayerSet.Chips);
        return sink.Sides;
    }

    /// <param name="decimals">Decimals that are written.</param>
    /// <param name="refuses">Whether a chip that vanishes is refused, as it is where chips are drawn closed.</param>
    private sealed class Sink(int decimals, bool refuses) : SelectiveSink
    {
        private readonly RoundedRun _rounded = new(decimals, Point.Origin);

        internal SideSet Sides { get; } = new(decimals);

        public override void Chip(in PlacedChip chip)
        {
            for (var ring = 0; ring < chip.RingCount; ring++)
                Add(chip.Ring(ring));
        }

        private void Add(ReadOnlySpan<Vertex> ring)
        {
            if (refuses && RoundedRun.IsNothing(_rounded.Round(ring, closed: true)))
                throw Vanishing.Refusal(ring, decimals);
            Sides.Add(ring, closed: true);
        }
    }
}
