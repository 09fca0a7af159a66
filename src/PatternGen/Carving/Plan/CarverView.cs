using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The wood as a right-handed carver sees it. A left-handed one sees it in a mirror, so that all rules need to be said for
/// the right hand only.
/// </summary>
/// <remarks>
/// Common practice, no source: the comfortable cut is drawn straight towards the carver, the blade's back leaning to the
/// right, so that the chip is on the blade's left. The carver sits below the drawing, so the cut runs downwards, and along every
/// side it goes with the chip on the right of the way.
/// </remarks>
internal readonly struct CarverView(Hand hand)
{
    /// <summary>Directions that differ by less than this, in degrees, need no turn of the board: the wrist takes it up.</summary>
    internal const double Swing = 5;

    /// <summary>What arithmetic leaves of a half turn, in degrees, is one.</summary>
    private const double Noise = 1e-6;

    private bool IsMirrored => hand == Hand.Left;

    internal Point Seen(Point point) => IsMirrored ? new(-point.X, point.Y) : point;

    internal Vector Seen(Vector vector) => IsMirrored ? new(-vector.X, vector.Y) : vector;

    /// <summary>Whether the way round a placed path, drawn with the chip on its left, is to be turned round.</summary>
    internal bool Reverses(Transform placement) => !IsMirrored ^ placement.IsMirrored;

    /// <summary>By how many degrees the board is turned, as seen, for a cut in a direction: more than -180, up to 180, counter-clockwise.</summary>
    internal double TurnFor(Vector direction)
    {
        var seen = Seen(direction);
        return Normal(-90 - seen.Direction.Degrees);
    }

    /// <summary>The turn as it is on the wood, counter-clockwise from how the pattern is drawn.</summary>
    internal Angle Turn(double seen) => Angle.FromDegrees(IsMirrored ? Normal(-seen) : seen);

    /// <summary>More than -180, up to 180.</summary>
    internal static double Normal(double degrees)
    {
        degrees -= 360 * Math.Round(degrees / 360);
        return Math.Min(180, degrees <= -180 + Noise ? degrees + 360 : degrees);
    }

    /// <summary>How well a cut runs with the grain: from -1, against it, over 0, along or across it, to 1, with it at 45 degrees.</summary>
    /// <param name="direction">Of the cut, of length 1.</param>
    /// <param name="grain">Either way along the grain, of length 1.</param>
    internal double WithGrain(Vector direction, Vector grain)
    {
        var (way, fibre) = (Seen(direction), Seen(grain));
        // The chip lies on the right. Fibres that go the way of the blade and to the right run into it.
        return 2 * way.Dot(fibre) * -way.Left.Dot(fibre);
    }
}
