using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Arcs that leave one point and reach another in given directions.</summary>
internal static class SmoothCurve
{
    private const double SameDirection = 1e-9;

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
            ({ } first, { } last) => Between(start, first, end, last),
            ({ } first, null) => [Leaving(start, first, end)],
            (null, { } last) => [Leaving(end, -last, start).Reversed()],
            _ => throw new FormatException(
                $"The curve from {start} to {end} has no direction at either end."
            ),
        };

    private static IReadOnlyList<Segment> Between(
        Point start,
        Vector leaving,
        Point end,
        Vector arriving
    )
    {
        var single = Leaving(start, leaving, end);
        if ((single.TangentAt(single.Length) - arriving).Length < SameDirection)
            return [single];
        var reach = Reach(end - start, leaving, arriving);
        var joint = (start + reach * leaving).Towards(end - reach * arriving, 0.5);
        return [Leaving(start, leaving, joint), Leaving(end, -arriving, joint).Reversed()];
    }

    /// <summary>
    /// How far both tangents run before they meet that of the joint: the reach d for which the two tangent points lie
    /// 2d apart, |chord - d (leaving + arriving)| = 2d.
    /// </summary>
    private static double Reach(Vector chord, Vector leaving, Vector arriving)
    {
        var along = chord.Dot(leaving + arriving);
        var turn = 2 * (1 - leaving.Dot(arriving));
        return turn < SameDirection
            ? chord.LengthSquared / (2 * along)
            : (Math.Sqrt(along * along + turn * chord.LengthSquared) - along) / turn;
    }

    /// <summary>The arc turns through twice the angle between its tangent and its chord, so its bulge is tan(angle / 2).</summary>
    private static Segment Leaving(Point start, Vector leaving, Point end)
    {
        var chord = end - start;
        return new(start, end, Math.Tan(Math.Atan2(leaving.Cross(chord), leaving.Dot(chord)) / 2));
    }
}
