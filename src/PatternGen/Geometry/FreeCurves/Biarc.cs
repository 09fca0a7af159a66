namespace PatternGen.Geometry;

/// <summary>The arcs that leave one point and reach another in given directions: two that run smoothly into each other, or one.</summary>
internal readonly struct Biarc
{
    /// <summary>Directions nearer than this, in radians, are the same.</summary>
    private const double SameDirection = 1e-9;

    private Biarc(Segment first, Segment? second) => (First, Second) = (first, second);

    /// <summary>The arc or line that leaves the start.</summary>
    internal Segment First { get; }

    /// <summary>The arc or line that reaches the end; null where the first one does.</summary>
    internal Segment? Second { get; }

    /// <summary>Both, in order.</summary>
    internal IReadOnlyList<Segment> Segments => Second is { } second ? [First, second] : [First];

    /// <summary>Returns the one arc that leaves the start as asked and also reaches the end so, or else the biarc of equal tangents.</summary>
    /// <remarks>
    /// From (0, 0) to (4, 0), both directions (0, 1): two half circles of radius 1 that meet at (2, 0). Directions taken from
    /// one circle give that circle.
    /// </remarks>
    /// <param name="start">Where it starts.</param>
    /// <param name="leaving">Direction of length 1 at the start.</param>
    /// <param name="end">Where it ends, not the start.</param>
    /// <param name="arriving">Direction of length 1 at the end.</param>
    internal static Biarc Between(Point start, Vector leaving, Point end, Vector arriving)
    {
        var single = Leaving(start, leaving, end);
        if ((single.TangentAt(single.Length) - arriving).Length < SameDirection)
            return new(single, null);
        var joint = Joint(start, leaving, end, arriving);
        return new(Leaving(start, leaving, joint), Leaving(end, -arriving, joint).Reversed());
    }

    /// <summary>The arc that leaves a point in a direction of length 1 and ends at another point.</summary>
    /// <remarks>It turns through twice the angle between its tangent and its chord, so its bulge is tan(angle / 2).</remarks>
    internal static Segment Leaving(Point start, Vector leaving, Point end)
    {
        var chord = end - start;
        return new(start, end, Math.Tan(Math.Atan2(leaving.Cross(chord), leaving.Dot(chord)) / 2));
    }

    /// <summary>
    /// Half-way between the points that both tangents reach after the same distance d, which lie 2d apart:
    /// |chord - d (leaving + arriving)| = 2d.
    /// </summary>
    private static Point Joint(Point start, Vector leaving, Point end, Vector arriving)
    {
        var chord = end - start;
        var along = chord.Dot(leaving + arriving);
        var turn = 2 * (1 - leaving.Dot(arriving));
        var middle = start.Towards(end, 0.5);
        if (turn >= SameDirection)
        {
            var reach = (Math.Sqrt(along * along + turn * chord.LengthSquared) - along) / turn;
            return middle + (leaving - arriving) * (reach / 2);
        }
        // Parallel directions: the middle of the chord, whatever the reach; across the chord there is none.
        return along > 0
            ? middle + (leaving - arriving) * (chord.LengthSquared / (4 * along))
            : middle;
    }
}
