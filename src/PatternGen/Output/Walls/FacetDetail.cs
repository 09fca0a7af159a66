namespace PatternGen;

/// <summary>How finely walls are cut into facets.</summary>
/// <param name="Turn">Radians by which a curved wall turns from one facet to the next, at most.</param>
/// <param name="Valley">How far the foot of a facet may miss the valley, as a share of the chip's clearance.</param>
/// <param name="Free">Width along the sides that is left free, in mm of the shape's own frame.</param>
/// <param name="Overlaps">Whether each facet reaches under the next one, so that no line shows between them.</param>
internal readonly record struct FacetDetail(
    double Turn,
    double Valley,
    double Free = 0,
    bool Overlaps = true
)
{
    /// <summary>A small picture: tones a fifteenth of a half turn apart.</summary>
    internal static FacetDetail Coarse { get; } = new(Math.PI / 15, 0.01);

    /// <summary>A picture to look at closely: neighbouring tones differ by less than eyes tell.</summary>
    internal static FacetDetail Fine { get; } = new(Math.PI / 48, 0.002);
}
