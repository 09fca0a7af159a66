namespace PatternGen.Geometry;

/// <summary>The parallel of a region's outline, in four steps, each a class of its own.</summary>
/// <remarks>
/// <para><see cref="OffsetCurve"/> draws, for each ring, a closed curve that stays within the distance of it: the parallel
/// of each segment, an arc or mitre where a corner opens, and where it closes two straight lines through the corner. Moving
/// the ring into that curve sweeps over every place nearer than the distance on that side, each time with the same sign.
/// So places farther away keep their winding number, 1 inside and 0 outside, and nearer places lose (growing: gain) at
/// least one: the result is exactly where the winding number is above 0.</para>
/// <para><see cref="SegmentCuts"/> cuts the curve where it meets itself, <see cref="BoundaryPieces"/> keeps the pieces with
/// a winding number above 0 on just one side, and <see cref="RingStitcher"/> joins them into rings.</para>
/// </remarks>
internal static class RegionOffset
{
    /// <summary>
    /// How much coarser each new try merges, should pieces nearer to each other than rounding allows not close into rings.
    /// No case is known that needs a second try.
    /// </summary>
    private const double Coarser = 16;

    private const int Tries = 3;

    internal static List<Contour> Rings(
        Contour[] rings,
        double distance,
        OffsetJoin join,
        Tolerance tolerance
    )
    {
        var merge = tolerance.Merge;
        for (var tries = 1; ; tries++, merge *= Coarser)
        {
            var coarse = Tolerance.OfMerge(merge);
            var curve = new OffsetCurve(-distance, join, coarse);
            foreach (var ring in rings)
                curve.Add(ring);
            var pieces = SegmentCuts.Of(curve.Parallels, coarse);
            var winding = new WindingIndex(curve.Path);
            var boundary = BoundaryPieces.Of(pieces, winding, coarse);
            var stitcher = new RingStitcher(boundary, coarse);
            if (stitcher.Open is not { } open)
                return stitcher.Rings();
            if (tries == Tries)
                throw new PatternException(
                    $"The outline's parallel at {Guard.Text(distance)} mm does not close.",
                    open,
                    ["a slightly different distance"]
                );
        }
    }
}
