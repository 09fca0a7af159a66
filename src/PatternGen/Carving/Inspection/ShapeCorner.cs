using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A corner of a chip: how a side arrives there, and how the next one leaves, with the chip on the left.</summary>
internal readonly struct ShapeCorner
{
    /// <summary>
    /// Sides that go on in one direction to this, in radians, make no corner. Smaller values would take the rounding of
    /// a joint between line and arc for a corner; larger ones would miss what a knife could leave.
    /// </summary>
    private const double Smooth = 1e-6;

    /// <summary>135 degrees: the corners of a petal of 90 that stops at a plain centre.</summary>
    private const double BluntestTip = Math.PI * 3 / 4 + Smooth;

    internal ShapeCorner(in SegmentFrame arriving, in SegmentFrame leaving)
    {
        Point = leaving.Start;
        In = arriving.Frame.TangentAt(arriving.Frame.Half);
        Out = leaving.Frame.TangentAt(-leaving.Frame.Half);
        Inside = Math.PI - Math.Atan2(In.Cross(Out), In.Dot(Out));
        // Where it turns right back, rounding would decide on which side the chip lies; the curves know.
        if (Math.Abs(Inside) < Smooth || Math.Abs(Inside - Math.Tau) < Smooth)
            Inside = arriving.Frame.Curvature + leaving.Frame.Curvature < 0 ? 0 : Math.Tau;
    }

    internal Point Point { get; }

    /// <summary>Direction in which a side arrives.</summary>
    internal Vector In { get; }

    /// <summary>Direction in which the next side leaves.</summary>
    internal Vector Out { get; }

    /// <summary>The chip's angle in radians, from 0 to a whole turn; half a turn where the outline goes on smoothly.</summary>
    internal double Inside { get; }

    /// <summary>
    /// Whether the chip ends here. A petal that stops at a plain centre does so in two blunt corners, each of a right
    /// angle and half the petal's own.
    /// </summary>
    internal bool IsTip => Inside <= BluntestTip;

    /// <summary>Whether the ground comes to a point here.</summary>
    internal bool PointsIn => Inside > Math.PI + Smooth;
}
