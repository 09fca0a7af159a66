using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What an inspection holds a pattern against.</summary>
/// <remarks>
/// The defaults are common practice, without a source, and no guarantee: test on scrap. Each method returns a changed
/// copy. Immutable and safe to share between threads.
/// </remarks>
public sealed class InspectionLimits
{
    private InspectionLimits() { }

    private InspectionLimits(InspectionLimits other)
    {
        Ridge = other.Ridge;
        RidgeAcrossGrain = other.RidgeAcrossGrain;
        Edge = other.Edge;
        EndGrainEdge = other.EndGrainEdge;
        FloorShare = other.FloorShare;
        Floor = other.Floor;
        ComfortableDepth = other.ComfortableDepth;
        ChipWidth = other.ChipWidth;
        TipAngle = other.TipAngle;
        MostTips = other.MostTips;
        PlainCentre = other.PlainCentre;
        HollowRadius = other.HollowRadius;
        RidgeTipAngle = other.RidgeTipAngle;
        RuledLine = other.RuledLine;
    }

    /// <summary>The limits of common practice.</summary>
    public static InspectionLimits Default { get; } = new();

    /// <summary>Least width in mm of a ridge between chips that do not share a side. Default 0.8.</summary>
    public double Ridge { get; private init; } = 0.8;

    /// <summary>The same for a ridge that runs across the grain, at 45 degrees or more to it. Default 1.2.</summary>
    public double RidgeAcrossGrain { get; private init; } = 1.2;

    /// <summary>Least distance in mm from a chip to the edge of the wood. Default 3.</summary>
    public double Edge { get; private init; } = 3;

    /// <summary>The same for an edge that is end grain. Default 5.</summary>
    public double EndGrainEdge { get; private init; } = 5;

    /// <summary>Least share of the thickness that stays below the deepest point. Default 0.5.</summary>
    public double FloorShare { get; private init; } = 0.5;

    /// <summary>Least wood in mm that stays below the deepest point, whatever its share. Default 3.</summary>
    public double Floor { get; private init; } = 3;

    /// <summary>Depth in mm down to which chips are comfortable to cut. Default 4: at 65 degrees, a two-sided chip 3.7 mm wide.</summary>
    public double ComfortableDepth { get; private init; } = 4;

    /// <summary>Least width in mm of a chip: of the largest circle in it. Default 2.</summary>
    public double ChipWidth { get; private init; } = 2;

    /// <summary>Least angle of a chip's tip. Default 12 degrees.</summary>
    public Angle TipAngle { get; private init; } = Angle.FromDegrees(12);

    /// <summary>How many tips may meet in one place. Default 8.</summary>
    public int MostTips { get; private init; } = 8;

    /// <summary>Least diameter in mm of the plain centre that lets more tips come together. Default 1.5.</summary>
    public double PlainCentre { get; private init; } = 1.5;

    /// <summary>Least radius in mm of a side that curves into the chip; null, the default, for what the knife follows, by default 4. A bit follows every curve.</summary>
    public double? HollowRadius { get; private init; }

    /// <summary>Least angle of ground that comes to a point across the grain, at 45 degrees or more to it. Default 20 degrees.</summary>
    public Angle RidgeTipAngle { get; private init; } = Angle.FromDegrees(20);

    /// <summary>How far in mm a chip may fall short of a ruled line or cross it. Default 0.1, less than a pencil line is wide.</summary>
    public double RuledLine { get; private init; } = 0.1;

    /// <summary>Returns the limits with other least widths of ridges, in mm.</summary>
    /// <param name="least">0 or more; 0 for none.</param>
    /// <param name="acrossGrain">Where the ridge runs across the grain, 0 or more; half as much again if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is negative.</exception>
    [Pure]
    public InspectionLimits WithRidge(double least, double? acrossGrain = null) =>
        new(this)
        {
            Ridge = Guard.NotNegative(least),
            RidgeAcrossGrain = Guard.NotNegative(acrossGrain ?? 1.5 * least, nameof(acrossGrain)),
        };

    /// <summary>Returns the limits with other least distances to the edge, in mm.</summary>
    /// <param name="least">0 or more.</param>
    /// <param name="atEndGrain">At end grain, 0 or more; as elsewhere if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance is negative.</exception>
    [Pure]
    public InspectionLimits WithEdge(double least, double? atEndGrain = null) =>
        new(this)
        {
            Edge = Guard.NotNegative(least),
            EndGrainEdge = Guard.NotNegative(atEndGrain ?? least, nameof(atEndGrain)),
        };

    /// <summary>Returns the limits with another least floor.</summary>
    /// <param name="share">Share of the thickness, from 0 to 1.</param>
    /// <param name="least">In mm, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not between 0 and 1, or the floor is negative.</exception>
    [Pure]
    public InspectionLimits WithFloor(double share, double least) =>
        new(this) { FloorShare = Guard.Within(share, 0, 1), Floor = Guard.NotNegative(least) };

    /// <summary>Returns the limits with another comfortable depth, in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not positive.</exception>
    [Pure]
    public InspectionLimits WithComfortableDepth(double depth) =>
        new(this) { ComfortableDepth = Guard.Positive(depth) };

    /// <summary>Returns the limits with another least width of chips, in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is negative.</exception>
    [Pure]
    public InspectionLimits WithChipWidth(double least) =>
        new(this) { ChipWidth = Guard.NotNegative(least) };

    /// <summary>Returns the limits with another least angle of tips.</summary>
    /// <param name="degrees">From 0 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not between 0 and 90 degrees.</exception>
    [Pure]
    public InspectionLimits WithTipAngle(double degrees) =>
        new(this) { TipAngle = Angle.FromDegrees(Guard.Within(degrees, 0, 90)) };

    /// <summary>Returns the limits with another number of tips that may meet.</summary>
    /// <param name="most">In one place, from 1 to 1000.</param>
    /// <param name="plainCentre">Least diameter in mm of the plain centre that lets more come together, 0 or more; 1.5 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Pure]
    public InspectionLimits WithTips(int most, double plainCentre = 1.5) =>
        new(this)
        {
            MostTips = Guard.Within(most, 1, 1000),
            PlainCentre = Guard.NotNegative(plainCentre),
        };

    /// <summary>Returns the limits with another least radius of sides that curve into the chip, in mm, whatever it is cut with.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The radius is negative.</exception>
    [Pure]
    public InspectionLimits WithHollowRadius(double least) =>
        new(this) { HollowRadius = Guard.NotNegative(least) };

    /// <summary>Returns the limits with another least angle of ground that comes to a point across the grain.</summary>
    /// <param name="degrees">From 0 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not between 0 and 90 degrees.</exception>
    [Pure]
    public InspectionLimits WithRidgeTipAngle(double degrees) =>
        new(this) { RidgeTipAngle = Angle.FromDegrees(Guard.Within(degrees, 0, 90)) };

    /// <summary>Returns the limits with another distance from ruled lines, in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative.</exception>
    [Pure]
    public InspectionLimits WithRuledLine(double most) =>
        new(this) { RuledLine = Guard.NotNegative(most) };
}
