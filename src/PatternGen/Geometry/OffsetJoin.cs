namespace PatternGen.Geometry;

/// <summary>How the parallel of an outline goes round a corner that opens. The default value is <see cref="Round"/>.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct OffsetJoin
{
    private OffsetJoin(double mitreLimit) => MitreLimit = mitreLimit;

    /// <summary>An arc about the corner: every place of the result is at exactly the distance from the outline.</summary>
    public static OffsetJoin Round => default;

    /// <summary>Longest mitre, as a multiple of the distance; 0 for round joins.</summary>
    internal double MitreLimit { get; }

    /// <summary>Returns the join that goes straight on, along the tangents, until the two sides meet.</summary>
    /// <param name="limit">
    /// Longest distance from the corner to the tip as a multiple of the offset, from 1; where it would be longer the join is
    /// round. The tip at a corner of angle a is 1 / sin(a/2) times the offset away: 1.41421 at a right angle, 4 at 29°.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The limit is less than 1 or more than 1000.</exception>
    public static OffsetJoin Mitred(double limit = 4) => new(Guard.Within(limit, 1, 1000));
}
