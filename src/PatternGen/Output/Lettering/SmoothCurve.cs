using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Arcs that leave one point and reach another in given directions.</summary>
internal static class SmoothCurve
{
    /// <summary>Returns one arc where one will do, or else two that run smoothly into each other.</summary>
    /// <param name="start">Where the curve starts.</param>
    /// <param name="leaving">Direction of length 1 at the start; null where any will do.</param>
    /// <param name="end">Where the curve ends.</param>
    /// <param name="arriving">Direction of length 1 at the end; null where any will do. One of the two is needed.</param>
    internal static IReadOnlyList<Segment> Between(
        Point start,
        Vector? leaving,
        Point end,
        Vector? arriving
    ) =>
        (leaving, arriving) switch
        {
            ({ } first, { } last) => Biarc.Between(start, first, end, last).Segments,
            ({ } first, null) => [Biarc.Leaving(start, first, end)],
            (null, { } last) => [Biarc.Leaving(end, -last, start).Reversed()],
            _ => throw new FormatException(
                $"The curve from {start} to {end} has no direction at either end."
            ),
        };
}
