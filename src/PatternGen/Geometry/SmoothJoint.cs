namespace PatternGen.Geometry;

/// <summary>How two segments meet, the second starting where the first ends.</summary>
internal static class SmoothJoint
{
    /// <summary>
    /// Directions nearer than this, in radians, are the same. A node that stands for a tangency lies up to 3e-5 of the
    /// radius off it and turns directions by as much; far larger values would take blunt corners for none.
    /// </summary>
    private const double Near = 1e-3;

    /// <summary>Whether the second segment goes on along the line or circle of the first.</summary>
    /// <param name="arriving">The first segment.</param>
    /// <param name="leaving">The second segment.</param>
    /// <param name="near">How far off its line or circle, in mm, a piece may lie.</param>
    internal static bool GoesOn(Segment arriving, Segment leaving, double near)
    {
        if (Math.Abs(Turn(arriving, leaving)) > Near)
            return false;
        // The longer one tells where its circle runs: a shorter one would have to be drawn out.
        var (longer, shorter) =
            arriving.Chord.LengthSquared >= leaving.Chord.LengthSquared
                ? (arriving, leaving)
                : (leaving, arriving);
        var frame = new ArcFrame(longer);
        return Math.Abs(frame.Side(shorter.Middle)) <= near
            && Math.Abs(frame.Side(shorter.Start)) <= near
            && Math.Abs(frame.Side(shorter.End)) <= near;
    }

    /// <summary>
    /// The angle between the two segments on their left, in radians from 0 to 2π: π where they go on smoothly, near 0 in a
    /// sharp tip of what lies on the left.
    /// </summary>
    internal static double AngleOnLeft(Segment arriving, Segment leaving)
    {
        var angle = Math.PI - Turn(arriving, leaving);
        if (angle > Near && angle < Math.Tau - Near)
            return angle;
        // Back the way it came: only the curves tell on which side of each other they are.
        var back = arriving.Reversed();
        var side =
            back.Chord.LengthSquared <= leaving.Chord.LengthSquared
                ? new ArcFrame(leaving).Side(back.Middle)
                : -new ArcFrame(back).Side(leaving.Middle);
        return side >= 0 ? 0 : Math.Tau;
    }

    /// <summary>Whether an angle on the left is that of a corner pointing out, and not of a smooth joint.</summary>
    internal static bool IsTip(double angleOnLeft) => angleOnLeft < Math.PI - Near;

    /// <summary>Whether it is that of a corner pointing in.</summary>
    internal static bool IsInward(double angleOnLeft) => angleOnLeft > Math.PI + Near;

    /// <summary>By how much the direction turns to the left, in radians from -π to π.</summary>
    private static double Turn(Segment arriving, Segment leaving)
    {
        var (before, after) = (arriving.TangentAt(arriving.Length), leaving.TangentAt(0));
        return Math.Atan2(before.Cross(after), before.Dot(after));
    }
}
