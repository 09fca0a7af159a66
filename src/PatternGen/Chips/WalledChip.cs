using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip whose walls all go down at one angle and meet in its valleys: the usual chip of two, three or more sides.</summary>
/// <remarks>
/// The depth of a point is its distance from the outline times the tangent of the wall angle. So a 3-4-5 chip, whose deepest
/// point is 1 mm from its sides, is 2.144507 mm deep at 65°, and holds 4.289014 mm³. Immutable and safe to share between threads.
/// </remarks>
public sealed class WalledChip : ChipSolid
{
    private readonly double _slope;
    private readonly double _scale;

    internal WalledChip(Roof roof, Angle wallAngle, Transform placement)
    {
        RefuseAngle(wallAngle, nameof(wallAngle));
        (Roof, WallAngle, Placement) = (roof, wallAngle, placement);
        _slope = Math.Tan(wallAngle.Radians);
        _scale = placement.Scale;
    }

    /// <summary>The shape of the walls, in the frame in which the chip was drawn: all repeats of a chip share it.</summary>
    public Roof Roof { get; }

    /// <summary>The angle between walls and surface.</summary>
    public Angle WallAngle { get; }

    /// <summary>How the roof is placed on the wood.</summary>
    public Transform Placement { get; }

    /// <summary>Distance in mm of the deepest point from the outline.</summary>
    public double Clearance => Roof.Clearance * _scale;

    /// <inheritdoc/>
    public override double Depth => Clearance * _slope;

    /// <inheritdoc/>
    public override Point Deepest => Placement.Apply(Roof.Deepest);

    /// <inheritdoc/>
    public override double Area => Roof.Area * _scale * _scale;

    /// <inheritdoc/>
    public override double Volume => Roof.Moment * _scale * _scale * _scale * _slope;

    /// <inheritdoc/>
    public override double SurfaceArea => Area / WallAngle.Cos();

    /// <inheritdoc/>
    public override double DepthAt(Point point) =>
        Roof.ClearanceAt(Placement.Inverse().Apply(Guard.Place(point))) * _scale * _slope;
}
