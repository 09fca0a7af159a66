using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class PathRepeats
{
    /// <summary>Farthest from its drawn size that a repeat may be scaled.</summary>
    private const double MostScaled = 1000;

    /// <summary>
    /// Returns the repeats moved beside the path, square to it. They keep their places along the path, so that they stand
    /// closer on the inside of a bend.
    /// </summary>
    /// <param name="left">In mm, to the left of travel, which is into a counter-clockwise contour; negative to the right.</param>
    /// <remarks>
    /// To space them evenly on the parallel itself, repeat along that: <c>outline.Inset(8).Largest().Repeat(…)</c>. An
    /// offset beyond the centre of an arc that repeats stand on is refused, since their order turns round there.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The offset is not finite, or more than 1 km.</exception>
    [Pure]
    public PathRepeats OffsetBy(double left) =>
        With(Settings with { Offset = Guard.Within(left, -Guard.MaxSize, Guard.MaxSize) });

    /// <summary>
    /// Returns the repeats with every second one of a stretch mirrored in the path, offset and heading with it. A closed path
    /// gets an even number.
    /// </summary>
    /// <remarks>A heading that does not turn with the path (fixed, to or from a point) is kept, and the motif mirrored in its own x axis.</remarks>
    [Pure]
    public PathRepeats EverySecondMirrored() => With(Settings with { Sides = PathSides.Alternate });

    /// <summary>Returns the repeats with a second one at each place, mirrored in the path, offset and heading with it.</summary>
    /// <remarks>A heading that does not turn with the path (fixed, to or from a point) is kept, and the motif mirrored in its own x axis.</remarks>
    [Pure]
    public PathRepeats OnBothSides() => With(Settings with { Sides = PathSides.Both });

    /// <summary>Returns the repeats on one side only, none mirrored, which is the default.</summary>
    [Pure]
    public PathRepeats OnOneSide() => With(Settings with { Sides = PathSides.One });

    /// <inheritdoc cref="RepeatsScaled(IEnumerable{double})"/>
    [Pure]
    public PathRepeats RepeatsScaled(params double[] factors) =>
        RepeatsScaled((IEnumerable<double>)factors);

    /// <summary>Returns the repeats scaled by their place on the path.</summary>
    /// <param name="factors">
    /// Factors at equal distances along the path, from the first repeat to the last, or once round a closed path; between
    /// them they change evenly. 1, 0.4 diminishes to the tip; 0.6, 1, 0.6 swells to the middle, and closes round a contour.
    /// </param>
    /// <exception cref="ArgumentException">There is no factor.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A factor is not between 0.001 and 1000.</exception>
    [Pure]
    public PathRepeats RepeatsScaled(IEnumerable<double> factors) =>
        With(Settings with { Factors = Checked(factors), FactorsBetweenCorners = false });

    /// <inheritdoc cref="RepeatsScaledBetweenCorners(IEnumerable{double})"/>
    [Pure]
    public PathRepeats RepeatsScaledBetweenCorners(params double[] factors) =>
        RepeatsScaledBetweenCorners((IEnumerable<double>)factors);

    /// <summary>Returns the repeats scaled by their place on the stretch between two corners that they are fitted to.</summary>
    /// <param name="factors">
    /// Factors at equal distances, from the first repeat of the stretch to its last: 0.6, 1, 0.6 swells to the middle of each
    /// side of a square.
    /// </param>
    /// <exception cref="ArgumentException">There is no factor.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A factor is not between 0.001 and 1000.</exception>
    [Pure]
    public PathRepeats RepeatsScaledBetweenCorners(IEnumerable<double> factors) =>
        With(Settings with { Factors = Checked(factors), FactorsBetweenCorners = true });

    /// <summary>Returns the repeats with the path itself as a layout line.</summary>
    [Pure]
    public PathRepeats PathAsLayoutLine() => With(Settings with { ShowsPath = true });

    private static double[] Checked(IEnumerable<double> factors)
    {
        double[] values = [.. Guard.NotNull(factors)];
        if (values.Length == 0)
            throw new ArgumentException("There is no factor to scale by.", nameof(factors));
        foreach (var factor in values)
            Guard.Within(factor, 1 / MostScaled, MostScaled, nameof(factors));
        return values;
    }
}
