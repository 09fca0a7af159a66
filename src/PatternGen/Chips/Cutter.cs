using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What chips are cut with: a <see cref="Knife"/> or a <see cref="VBit"/>. It decides how steep their walls are.</summary>
/// <remarks>
/// The depth of a chip whose walls all lean alike is its clearance, the distance in mm from its deepest point to its
/// outline, times the tangent of the wall angle. Immutable and safe to share between threads.
/// </remarks>
public abstract class Cutter
{
    private protected Cutter() { }

    /// <summary>The deepest that it can cut, in mm below the surface.</summary>
    public abstract double Reach { get; }

    /// <summary>Returns the angle between the walls of a chip and the surface.</summary>
    /// <param name="clearance">Distance in mm from the chip's deepest point to its outline, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The clearance is negative or not a number.</exception>
    public abstract Angle WallAngleFor(double clearance);

    /// <summary>Returns the depth of a chip in mm: clearance × tan(wall angle).</summary>
    /// <param name="clearance">
    /// Distance in mm from the chip's deepest point to its outline, 0 or more. A two-sided chip 3.7 mm wide has 1.85, and
    /// is 3.967 mm deep at 65 degrees.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The clearance is negative or not a number.</exception>
    public double DepthFor(double clearance) =>
        clearance * Math.Tan(WallAngleFor(clearance).Radians);
}
