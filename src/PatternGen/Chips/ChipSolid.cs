using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One chip as a solid: the wood that is cut away, with depth, deepest point, volume and surface.</summary>
/// <remarks>All depths are measured down from the surface, in mm, positive. Immutable and safe to share between threads.</remarks>
public abstract class ChipSolid
{
    private protected ChipSolid() { }

    /// <summary>Depth of the deepest point in mm.</summary>
    public abstract double Depth { get; }

    /// <summary>The deepest point as seen from above; where the chip is equally deep along a line, one point of it.</summary>
    public abstract Point Deepest { get; }

    /// <summary>Area in mm² as seen from above.</summary>
    public abstract double Area { get; }

    /// <summary>Volume of the wood cut away, in mm³.</summary>
    public abstract double Volume { get; }

    /// <summary>Area in mm² of all that the knife leaves: walls, and the floor if there is one.</summary>
    public abstract double SurfaceArea { get; }

    /// <summary>Returns the depth in mm at a point as seen from above; 0 outside.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite, or lies beyond 2 km.</exception>
    public abstract double DepthAt(Point point);

    /// <summary>Returns the chip whose walls all go down at one angle.</summary>
    /// <param name="roof">The shape of the walls, in any frame.</param>
    /// <param name="wallAngle">Between wall and surface, between 0 and 90 degrees; 65 is common practice.</param>
    /// <param name="placement">Where the chip lies on the wood; by default where the roof's outline lies. Its scale grows the chip, and not the angle.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not between 0 and 90 degrees.</exception>
    public static WalledChip Walled(Roof roof, Angle wallAngle, Transform placement = default) =>
        new(Guard.NotNull(roof), wallAngle, placement);

    /// <summary>Returns a stab-cut chip: two upright walls that meet at a corner, and a floor that slopes down from the side opposite to there.</summary>
    /// <param name="outline">Three sides, of which the one opposite the apex is straight.</param>
    /// <param name="apex">The corner where the chip is deepest, from 0 to 2.</param>
    /// <param name="depth">Depth there in mm.</param>
    /// <exception cref="ArgumentException">The outline has not three sides, or encloses no area, or the side opposite the apex is an arc.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such corner, or the depth is not above 0.</exception>
    /// <exception cref="PatternException">The outline reaches over the side opposite the apex, so that the floor would rise out of the wood.</exception>
    public static StabCutChip StabCut(Contour outline, int apex, double depth) =>
        new(Guard.NotNull(outline), apex, WithDepth(Guard.Positive(depth)));

    /// <summary>Returns a stab-cut chip by the slope of its floor.</summary>
    /// <param name="outline">Three sides, of which the one opposite the apex is straight.</param>
    /// <param name="apex">The corner where the chip is deepest, from 0 to 2.</param>
    /// <param name="slope">Between floor and surface, between 0 and 90 degrees. At 30, an apex 4 mm from the base is 4 × tan 30° = 2.309 mm deep.</param>
    /// <exception cref="ArgumentException">As for a depth.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such corner, or the slope is not between 0 and 90 degrees.</exception>
    /// <exception cref="PatternException">As for a depth.</exception>
    public static StabCutChip StabCut(Contour outline, int apex, Angle slope)
    {
        RefuseAngle(slope, nameof(slope));
        return new(Guard.NotNull(outline), apex, height => height * Math.Tan(slope.Radians));
    }

    private static Func<double, double> WithDepth(double depth) => _ => depth;

    private protected static void RefuseAngle(Angle angle, string name)
    {
        if (!(angle.Radians > 0 && angle.Radians < Math.PI / 2))
            Guard.Throw(name, $"{name} in degrees", angle.Degrees, "must lie between 0 and 90");
    }

    /// <summary>Returns depth, deepest point and volume, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Depth:0.###} mm deep at {Deepest}, {Volume:0.###} mm³");
}
