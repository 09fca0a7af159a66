using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A carving knife, held at a constant angle to the surface.</summary>
/// <remarks>
/// The defaults are common practice, without a source: test on scrap. Keep the blade sharp, anchor the thumb of the
/// knife hand, and keep the other hand out of the blade's path. Each method returns a changed copy. Immutable and safe
/// to share between threads.
/// </remarks>
public sealed class Knife : Cutter
{
    /// <summary>Walls are never flattened below this, in degrees: the chip would no longer read as one.</summary>
    internal const double FlattestWalls = 40;

    private readonly double _reach = 20;

    private Knife(Angle heldAt) => HeldAt = heldAt;

    private Knife(Knife other, double? reach = null)
    {
        HeldAt = other.HeldAt;
        SmallestCurve = other.SmallestCurve;
        DeepestWanted = other.DeepestWanted;
        _reach = reach ?? other._reach;
    }

    /// <summary>The angle between blade and surface, at which walls of ordinary chips lean. Default 65 degrees.</summary>
    public Angle HeldAt { get; }

    /// <summary>How deep the blade's point reaches into the wood, in mm below the surface. Default 20.</summary>
    public override double Reach => _reach;

    /// <summary>Radius in mm of the tightest hollow curve that the blade follows. Default 4.</summary>
    public double SmallestCurve { get; private init; } = 4;

    /// <summary>Depth in mm beyond which wide chips get flatter walls; null, the default, for none.</summary>
    public double? DeepestWanted { get; private init; }

    /// <summary>Returns a knife held at an angle to the surface.</summary>
    /// <param name="degrees">Between blade and surface, from 20 to 85. 65 is common practice.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside that range.</exception>
    public static Knife Held(double degrees = 65) => new(CutAngle.Wall(degrees));

    /// <inheritdoc cref="Held(double)"/>
    /// <param name="angle">Between blade and surface, from 20 to 85 degrees.</param>
    public static Knife Held(Angle angle) => new(CutAngle.Wall(angle));

    /// <summary>Returns the knife with another reach.</summary>
    /// <param name="reach">How deep the blade's point reaches, in mm below the surface, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reach is not positive.</exception>
    [Pure]
    public Knife WithReach(double reach) => new(this, Guard.Positive(reach));

    /// <summary>Returns the knife with another tightest curve.</summary>
    /// <param name="radius">Radius in mm of the tightest hollow curve that the blade follows, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is negative.</exception>
    [Pure]
    public Knife WithSmallestCurve(double radius) =>
        new(this) { SmallestCurve = Guard.NotNegative(radius) };

    /// <summary>
    /// Returns the knife held flatter for wide chips, so that they get no deeper than wanted; but never under 40 degrees,
    /// at which a very wide chip is deeper after all.
    /// </summary>
    /// <param name="depth">
    /// In mm, more than 0. With 4, a chip of clearance 3 gets walls of atan(4 / 3) = 53.13 degrees and is 4 mm deep; one
    /// of clearance 6 gets 40 degrees and is 6 × tan 40° = 5.035 mm deep.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not positive.</exception>
    [Pure]
    public Knife NoDeeperThan(double depth) => new(this) { DeepestWanted = Guard.Positive(depth) };

    /// <inheritdoc/>
    public override Angle WallAngleFor(double clearance)
    {
        Guard.NotNegative(clearance);
        if (DeepestWanted is not { } deepest || clearance * Math.Tan(HeldAt.Radians) <= deepest)
            return HeldAt;
        var flattened = Math.Atan(deepest / clearance);
        // Rounded so that the chip is not deeper than wanted by a last digit, which an inspection would report.
        while (clearance * Math.Tan(flattened) > deepest)
            flattened = Math.BitDecrement(flattened);
        var flattest = Angle.FromDegrees(FlattestWalls);
        // A knife that is held flatter than that anyway stays as it is held.
        if (flattened >= flattest.Radians)
            return Angle.FromRadians(flattened);
        return HeldAt < flattest ? HeldAt : flattest;
    }

    /// <summary>Returns how the knife is held, for messages.</summary>
    public override string ToString() => $"knife at {HeldAt}";
}
