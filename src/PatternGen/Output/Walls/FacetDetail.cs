namespace PatternGen;

/// <summary>How finely walls are cut into facets.</summary>
/// <param name="Turn">Radians by which a curved wall turns from one facet to the next, at most.</param>
/// <param name="Valley">How far the foot of a facet may miss the valley, as a share of the chip's clearance.</param>
/// <param name="Past">How far each wall reaches under those it meets in the valley, as a share of the chip's clearance, so that no line shows between them.</param>
/// <param name="Free">Width along the sides that is left free, in mm of the shape's own frame.</param>
/// <param name="Overlaps">Whether each facet reaches under the next one, so that no line shows between them.</param>
internal readonly record struct FacetDetail(
    double Turn,
    double Valley,
    double Past = 0.02,
    double Free = 0,
    bool Overlaps = true
)
{
    /// <summary>A drawing: facets of 7.5 degrees keep it small.</summary>
    internal static FacetDetail Coarse { get; } = new(Math.PI / 24, 0.01);

    /// <summary>A picture to look at closely: neighbouring tones differ by less than eyes tell.</summary>
    internal static FacetDetail Fine { get; } = new(Math.PI / 45, 0.004);
}
