using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A stretch of the section that runs through one chip or groove.</summary>
/// <param name="Chip">The chip; null for a groove.</param>
/// <param name="Breaks">Places in order, from where the chip is entered to where it is left; between them the depth is one smooth curve.</param>
/// <param name="DepthAt">Depth in mm at a point within the stretch.</param>
internal sealed record SectionStretch(
    ChipId? Chip,
    IReadOnlyList<double> Breaks,
    Func<Point, double> DepthAt
)
{
    internal double Start => Breaks[0];

    internal double End => Breaks[^1];
}
