using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A V groove along a path, as a solid: what a pointed cone leaves that runs along the path with its walls at the wall angle.</summary>
/// <remarks>
/// <para>
/// With the clearance h(s) of <see cref="GrooveProfile"/> at s mm along the path, the depth at a point is tan(wall angle) ×
/// the largest h(s) less the point's distance to the place s. That is its distance to the groove's edge times the
/// tangent, so walls have the same slope in tapers too, and it is never deeper than h × tan over the valley. Upright ends
/// are cut off square to the path. Corners of the path are rounded outside, as a cone leaves them; a knife leaves them
/// sharp.
/// </para>
/// <para>Immutable and safe to share between threads.</para>
/// </remarks>
public sealed class Groove
{
    private readonly GroovePiece[] _pieces;
    private readonly double _slope;

    internal Groove(Chain path, double width, Angle wallAngle, GrooveProfile profile)
    {
        Path = path;
        Width = width;
        WallAngle = wallAngle;
        Profile = profile;
        _slope = Math.Tan(wallAngle.Radians);
        _pieces = GroovePiece.Along(path, width, profile);
    }

    /// <summary>The valley of the groove, seen from above.</summary>
    public Chain Path { get; }

    /// <summary>Width in mm at the surface where it is widest.</summary>
    public double Width { get; }

    /// <summary>Angle between the walls and the surface.</summary>
    public Angle WallAngle { get; }

    /// <summary>How it runs out at its ends.</summary>
    public GrooveProfile Profile { get; }

    /// <summary>The greatest depth in mm: half the width × tan(wall angle), 1.07225346 for a width of 1 at 65 degrees.</summary>
    public double Depth => Width / 2 * _slope;

    /// <summary>
    /// The wood removed, in mm³. A straight groove of constant width has width² / 4 × tan(wall angle) for each mm of its
    /// length: 10 mm of width 2 at 45 degrees have 10.
    /// </summary>
    /// <remarks>
    /// Exact in closed form, on curves too, as long as the groove does not meet itself: where the path bends more tightly
    /// than half the width, or its parts come nearer than the width, what is cut twice counts twice. Corners of the path
    /// are exact between straight sides where the width is constant; others count as if they were such.
    /// </remarks>
    public double Volume => _slope * GrooveVolume.UnitSlope(_pieces, IsRing);

    /// <summary>Whether the path ends where it starts, so that nothing stops the groove there.</summary>
    private bool IsRing => !Profile.IsTapering && Path.Start == Path.End;

    /// <summary>Returns a groove.</summary>
    /// <param name="path">The valley, seen from above.</param>
    /// <param name="width">Width in mm at the surface where it is widest, more than 0.</param>
    /// <param name="wallAngle">Angle between the walls and the surface, from 20 to 85 degrees.</param>
    /// <param name="profile">How it runs out at its ends; as wide all along if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the angle is out of range.</exception>
    /// <exception cref="PatternException">The groove is too wide to taper to points.</exception>
    public static Groove Along(
        Chain path,
        double width,
        Angle wallAngle,
        GrooveProfile profile = default
    )
    {
        profile.RefuseBlunt(Guard.NotNull(path), Guard.Positive(width));
        return new(path, width, CutAngle.Wall(wallAngle), profile);
    }

    /// <summary>Returns the depth of the valley in mm at a place along the path.</summary>
    /// <param name="along">Distance from the start in mm; the nearer end counts outside the path.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite.</exception>
    public double DepthAlong(double along) => Depth * Profile.ShareAt(along, Path.Length);

    /// <summary>Returns the depth in mm below a point of the surface; 0 where nothing is cut.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The point lies beyond 2 km.</exception>
    public double DepthAt(Point point)
    {
        Guard.Place(point);
        double clearance = 0;
        for (var i = 0; i < _pieces.Length; i++)
        {
            var cutOffStart = !Profile.IsTapering && i == 0 && !IsRing;
            var cutOffEnd = !Profile.IsTapering && i == _pieces.Length - 1 && !IsRing;
            clearance = Math.Max(clearance, _pieces[i].ClearanceAt(point, cutOffStart, cutOffEnd));
        }
        return clearance * _slope;
    }

    /// <summary>Returns width and depth, for messages.</summary>
    public override string ToString() =>
        $"groove {Guard.Text(Width)} mm wide, {Guard.Text(Depth)} mm deep";
}
