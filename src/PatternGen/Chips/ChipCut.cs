using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How a chip is cut: with leaning walls all round, or stabbed.</summary>
/// <remarks>
/// <para>
/// With <see cref="Walls"/>, the cutter decides the angle, and the walls meet in the chip's valleys. A stab-cut chip has
/// two upright walls that meet in its apex, a corner of the outline where it is deepest, and a floor that slopes from
/// there up to the side across. The knife is set upright on the apex, drawn away along one side and then the other, and
/// the chip is sliced out: Edwin W. Foster, Carpentry and Woodwork (1911), ch. XI.
/// </para>
/// <para>Immutable and safe to share between threads. Equal if they say the same.</para>
/// </remarks>
public sealed class ChipCut : IEquatable<ChipCut>
{
    /// <summary>Slope of the floor if nothing else is said, in degrees: common practice, no source.</summary>
    private const double UsualSlope = 30;

    /// <summary>
    /// Sizes that agree to this share are the same: turning a motif leaves its scale within a few units in the last place
    /// of 1.
    /// </summary>
    private const double SameScale = 1e-12;

    private ChipCut() { }

    /// <summary>Leaning walls all round, at the angle of the cutter. What chips have if nothing else is said.</summary>
    public static ChipCut Walls { get; } = new();

    /// <summary>Angle of the walls from the surface, if the chip has one of its own; else null.</summary>
    public Angle? WallAngle { get; private init; }

    /// <summary>Number of the corner that is the apex of a stab-cut chip, counted from 0 along the outline's vertices; null for leaning walls.</summary>
    public int? Apex { get; private init; }

    /// <summary>Angle between the floor of a stab-cut chip and the surface; null if a depth is given instead, and for leaning walls.</summary>
    public Angle? Slope { get; private init; }

    /// <summary>Depth in mm of a stab-cut chip at its apex; null if a slope is given instead, and for leaning walls.</summary>
    public double? Depth { get; private init; }

    /// <summary>Whether the chip is stab-cut.</summary>
    public bool IsStabbed => Apex is not null;

    /// <summary>Returns leaning walls at an angle of their own, whatever the cutter's.</summary>
    /// <param name="degrees">From the surface, from 20 to 85.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside that range.</exception>
    public static ChipCut WallsAt(double degrees) => new() { WallAngle = CutAngle.Wall(degrees) };

    /// <inheritdoc cref="WallsAt(double)"/>
    /// <param name="angle">From the surface, from 20 to 85 degrees.</param>
    public static ChipCut WallsAt(Angle angle) => new() { WallAngle = CutAngle.Wall(angle) };

    /// <summary>Returns a stab cut, by the slope of its floor or by its depth.</summary>
    /// <param name="corner">The apex: number of a corner of the chip's shape, from 0, the default.</param>
    /// <param name="slope">
    /// Angle between floor and surface in degrees, from 5 to 70; 30, common practice, if neither slope nor depth is given. A
    /// triangle 4 mm from tip to base is then 4 × tan 30° = 2.309 mm deep.
    /// </param>
    /// <param name="depth">Depth at the apex in mm, more than 0.</param>
    /// <exception cref="ArgumentException">Both slope and depth are given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The corner is negative, or the slope or the depth is out of range.</exception>
    public static ChipCut Stabbed(int corner = 0, double? slope = null, double? depth = null)
    {
        Guard.Within(corner, 0, int.MaxValue);
        if (depth is not { } deep)
            return new()
            {
                Apex = corner,
                Slope = CutAngle.Floor(slope ?? UsualSlope, nameof(slope)),
            };
        if (slope is not null)
            throw new ArgumentException(
                "A stab cut is given by the slope of its floor or by its depth, not by both.",
                nameof(depth)
            );
        return new() { Apex = corner, Depth = Guard.Positive(deep, nameof(depth)) };
    }

    /// <inheritdoc cref="Stabbed(int, double?, double?)"/>
    /// <param name="corner">The apex: number of a corner of the chip's shape, from 0.</param>
    /// <param name="slope">Angle between floor and surface, from 5 to 70 degrees.</param>
    public static ChipCut Stabbed(int corner, Angle slope) =>
        new() { Apex = Guard.Within(corner, 0, int.MaxValue), Slope = CutAngle.Floor(slope) };

    /// <summary>Returns the solid of a chip that is stabbed so.</summary>
    /// <param name="outline">The outline in which the apex is counted.</param>
    internal StabCutChip StabbedSolid(Contour outline) =>
        Depth is { } depth
            ? ChipSolid.StabCut(outline, Apex ?? 0, depth)
            : ChipSolid.StabCut(outline, Apex ?? 0, Slope ?? Angle.Zero);

    /// <summary>Refuses a stab where no floor could rise from the apex to a side across.</summary>
    /// <exception cref="PatternException">
    /// The chip has not three sides, or holes, or that side is an arc, or there is no such corner; or a wall reaches over that side.
    /// </exception>
    internal void RefuseUnfit(Contour outline, int holes)
    {
        if (Apex is not { } apex)
            return;
        var trouble =
            outline.Count != 3 ? $"has {outline.Count} sides"
            : holes > 0 ? "has ground standing in it"
            : apex > 2 ? $"has no corner {apex}, only 0 to 2"
            : outline.At((apex + 1) % 3).IsLine ? null
            : $"is curved on the side across from corner {apex}";
        if (trouble is null)
        {
            // A wall that reaches over the base is refused where the solid is made.
            _ = StabbedSolid(outline);
            return;
        }
        throw new PatternException(
            $"A stab-cut chip has three sides and a straight one across from its apex, but this one {trouble}.",
            outline.Vertices[0].Point,
            ["a cut chosen for each shape", "another corner as the apex", "walls all round"]
        );
    }

    /// <summary>The angle at which the walls lean: the chip's own, or the cutter's for a deepest point so far in mm from the outline.</summary>
    internal Angle WallAngleWith(Cutter cutter, double clearance) =>
        WallAngle ?? cutter.WallAngleFor(clearance);

    /// <summary>Returns the same stab with its apex at another corner.</summary>
    internal ChipCut AtCorner(int corner) =>
        corner == Apex
            ? this
            : new()
            {
                Apex = corner,
                Slope = Slope,
                Depth = Depth,
            };

    /// <summary>Returns the cut as it lies on the wood.</summary>
    /// <param name="placement">How the chip is placed.</param>
    /// <param name="corners">Number of corners of the outline.</param>
    internal ChipCut Placed(Transform placement, int corners)
    {
        if (Apex is not { } apex)
            return this;
        // A mirrored outline is walked the other way from the same first corner.
        var corner = placement.IsMirrored && apex > 0 ? corners - apex : apex;
        var scale = placement.Scale;
        if (Depth is not { } depth || Math.Abs(scale - 1) <= SameScale)
            return AtCorner(corner);
        return new() { Apex = corner, Depth = depth * scale };
    }

    /// <inheritdoc/>
    public bool Equals(ChipCut? other) =>
        other is not null
        && WallAngle == other.WallAngle
        && Apex == other.Apex
        && Slope == other.Slope
        && Depth == other.Depth;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ChipCut);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(WallAngle, Apex, Slope, Depth);

    /// <summary>Whether two cuts say the same.</summary>
    public static bool operator ==(ChipCut? a, ChipCut? b) => a is null ? b is null : a.Equals(b);

    /// <summary>Whether two cuts differ.</summary>
    public static bool operator !=(ChipCut? a, ChipCut? b) => !(a == b);

    /// <summary>Returns what the cut is, for messages.</summary>
    public override string ToString()
    {
        if (Apex is not { } apex)
            return WallAngle is { } angle ? $"walls at {angle}" : "walls as the cutter leans";
        return Slope is { } slope
            ? $"stab at corner {apex}, floor at {slope}"
            : $"stab at corner {apex}, {Guard.Text(Depth ?? 0)} mm deep";
    }
}
