using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Lines and arcs of which no two have any part in common.</summary>
internal sealed record SidePieces(IReadOnlyList<Point> Points, IReadOnlyList<Side> Sides)
{
    /// <summary>Millimetres that were drawn more than once: how much shorter the pieces are than what they came from.</summary>
    internal double SharedLength => Sides.Sum(side => (side.Times - 1) * SegmentOf(side).Length);

    /// <summary>Number of stretches that were drawn before, each as often as that.</summary>
    internal int RepeatedCount => Sides.Sum(side => side.Times - 1);

    internal Segment SegmentOf(Side side) => new(Points[side.From], Points[side.To], side.Bulge);
}
