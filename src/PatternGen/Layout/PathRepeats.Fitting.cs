using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class PathRepeats
{
    /// <summary>Returns the repeats with a spacing that stays within limits. Default: within a third of the one asked for.</summary>
    /// <param name="min">Shortest spacing in mm.</param>
    /// <param name="max">Longest spacing in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is not positive, or the longest is under the shortest.</exception>
    [Pure]
    public PathRepeats SpacingBetween(double min, double max)
    {
        Guard.Positive(min);
        return With(
            Settings with
            {
                Limits = (min, Guard.Within(max, min, Guard.MaxSize)),
                IsExact = false,
            }
        );
    }

    /// <summary>
    /// Returns the repeats at exactly the spacing asked for; what is left over is shared by both ends of each stretch. A
    /// closed path that is no whole number of spacings long is refused.
    /// </summary>
    [Pure]
    public PathRepeats ExactSpacing() => With(Settings with { IsExact = true, Limits = null });

    /// <summary>Returns the repeats with the same length left free at both ends of an open path.</summary>
    /// <param name="margin">In mm, 0 or more; 0 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    [Pure]
    public PathRepeats EndMargins(double margin) => EndMargins(margin, margin);

    /// <summary>Returns the repeats with the given lengths left free at the ends of an open path.</summary>
    /// <param name="first">In mm from where the path starts, 0 or more.</param>
    /// <param name="last">In mm to where the path ends, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A margin is negative.</exception>
    [Pure]
    public PathRepeats EndMargins(double first, double last) =>
        With(
            Settings with
            {
                FirstMargin = Guard.NotNegative(first),
                LastMargin = Guard.NotNegative(last),
            }
        );

    /// <summary>
    /// Returns the repeats with one on each end: of the open path less its margins, or of each stretch between corners less
    /// the room there. Default: half a spacing in. 100 mm at 25 then take 5 repeats, not 4.
    /// </summary>
    [Pure]
    public PathRepeats RepeatsOnEnds() => With(Settings with { OnEnds = true });

    /// <summary>Returns the repeats half a spacing in from the ends, which is the default.</summary>
    [Pure]
    public PathRepeats HalfSpacingIn() => With(Settings with { OnEnds = false });

    /// <summary>Returns the repeats of a closed path with the first one at a place of one's own.</summary>
    /// <param name="length">
    /// Distance along the path from its first corner in mm; beyond the ends it goes round again. Default 0.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite, or beyond 2 km.</exception>
    [Pure]
    public PathRepeats StartingAt(double length) =>
        With(Settings with { Start = Guard.Coordinate(length) });

    /// <summary>Returns the repeats with an odd number on each stretch, so that one stands in the middle of it.</summary>
    [Pure]
    public PathRepeats OddRepeats() => With(Settings with { Parity = RepeatParity.Odd });

    /// <summary>Returns the repeats with an even number on each stretch.</summary>
    [Pure]
    public PathRepeats EvenRepeats() => With(Settings with { Parity = RepeatParity.Even });
}
