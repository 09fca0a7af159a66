using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A V-shaped router bit: a cone that runs upright along the valleys of a chip. Its angle sets the walls.</summary>
/// <remarks>
/// <para>
/// Bits are sold by the included angle, between the two walls of the groove that they cut. A wall's slope is measured from
/// the surface, so it is 90 degrees less half of that: an included angle of 60 degrees makes walls of 60 degrees, one of
/// 90 makes walls of 45, and the knife's 65 degrees would take a bit of 50.
/// </para>
/// <para>
/// Guards, hold-downs, eye and ear protection; the machine's manual comes first. Immutable and safe to share between
/// threads.
/// </para>
/// </remarks>
public sealed class VBit : Cutter
{
    private VBit(Angle included, double diameter)
    {
        IncludedAngle = included;
        Diameter = diameter;
        WallAngle = Angle.FromDegrees(90) - included / 2;
        Reach = diameter / 2 * Math.Tan(WallAngle.Radians);
    }

    /// <summary>Angle between the two walls of the groove that the bit cuts.</summary>
    public Angle IncludedAngle { get; }

    /// <summary>Slope of the walls from the surface: 90 degrees less half of the included angle.</summary>
    public Angle WallAngle { get; }

    /// <summary>Largest diameter of the cone, in mm.</summary>
    public double Diameter { get; }

    /// <summary>
    /// How deep the cone cuts before its shank does, in mm: half the diameter × tan(wall angle). 60 degrees included and
    /// 12 mm make 10.392.
    /// </summary>
    public override double Reach { get; }

    /// <summary>Returns a bit.</summary>
    /// <param name="includedDegrees">Angle between the two walls of its groove, from 10 to 140 degrees; 60 by default.</param>
    /// <param name="diameter">Largest diameter of the cone in mm; 12 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside that range, or the diameter is not positive.</exception>
    public static VBit Of(double includedDegrees = 60, double diameter = 12)
    {
        const double sharpest = 180 - 2 * CutAngle.SteepestWall;
        const double bluntest = 180 - 2 * CutAngle.FlattestWall;
        if (!(includedDegrees is >= sharpest and <= bluntest))
            Guard.Throw(
                nameof(includedDegrees),
                "The included angle",
                includedDegrees,
                $"must lie between {Guard.Text(sharpest)} and {Guard.Text(bluntest)} degrees"
            );
        return new(Angle.FromDegrees(includedDegrees), Guard.Positive(diameter));
    }

    /// <summary>Returns the angle of the walls, which is the bit's own for every chip.</summary>
    /// <inheritdoc/>
    public override Angle WallAngleFor(double clearance)
    {
        Guard.NotNegative(clearance);
        return WallAngle;
    }

    /// <summary>Returns angle and diameter, for messages.</summary>
    public override string ToString() =>
        $"V bit of {IncludedAngle} included, {Guard.Text(Diameter)} mm";
}
