using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class PathRepeats
{
    /// <summary>
    /// Returns the repeats spaced evenly past the corners of the path, which is the default; those that stand on a corner, or
    /// near it, face as half-way through its turn: on the bisector.
    /// </summary>
    /// <param name="within">How near along the path, in mm. Default 0: on the corner itself.</param>
    /// <remarks>
    /// A repeat on the corner itself that is offset stands where the parallels of both sides cross (at most 4 offsets from
    /// the corner); one beside it stays square to its own side.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative.</exception>
    [Pure]
    public PathRepeats TurnedAtCorners(double within = 0) =>
        AtCorners(PathCorners.Turned, Guard.NotNegative(within), null, default);

    /// <summary>Returns the repeats with the corners of the path left free: each stretch between them is fitted by itself.</summary>
    /// <param name="clearance">
    /// How near to a corner repeats may stand, in mm along the path. Default 0: with repeats half a spacing in, the spacing
    /// then goes on round the corner. Offset to the inside of a corner, it is measured on the parallel there.
    /// </param>
    /// <remarks>A stretch too short for a repeat stays empty, and the fit says so.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The clearance is negative.</exception>
    [Pure]
    public PathRepeats CornerGaps(double clearance = 0) =>
        AtCorners(PathCorners.Free, Guard.NotNegative(clearance), null, default);

    /// <summary>Returns the repeats with a motif on each corner of the path, and each stretch between them fitted by itself.</summary>
    /// <param name="motif">
    /// The corner motif: its origin comes to lie on the corner. If repeats are offset, it lies where the parallels of both
    /// sides cross.
    /// </param>
    /// <param name="room">
    /// Length along the path that stays free for it on both sides of the corner, in mm; by default as far as the motif
    /// reaches from its origin, measured on the corners of its extents.
    /// </param>
    /// <param name="heading">
    /// Which way it faces. Along, the default, lays its y axis on the bisector; Inwards and Outwards lay its x axis there.
    /// </param>
    /// <exception cref="ArgumentException">The motif is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The room is negative.</exception>
    [Pure]
    public PathRepeats CornerMotif(Pattern motif, double? room = null, Heading heading = default)
    {
        PathRepeating.Drawn(motif);
        return AtCorners(
            PathCorners.Motif,
            Guard.NotNegative(room ?? Reach(motif), nameof(room)),
            motif,
            heading
        );
    }

    /// <summary>Returns the repeats with corners that count from the given turn on; blunter joints are passed as if smooth.</summary>
    /// <param name="degrees">Least change of direction, more than 0 and at most 180: a square has 90. Default 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not between 0.001 and 180.</exception>
    [Pure]
    public PathRepeats CornersFrom(double degrees) =>
        With(Settings with { LeastCorner = Angle.FromDegrees(Guard.Within(degrees, 0.001, 180)) });

    private PathRepeats AtCorners(
        PathCorners rule,
        double clearance,
        Pattern? motif,
        Heading heading
    ) =>
        With(
            Settings with
            {
                Corners = rule,
                Clearance = clearance,
                CornerMotif = motif,
                CornerHeading = heading,
            }
        );

    private static double Reach(Pattern motif) =>
        motif.Extents is { } drawn
            ? double.Hypot(Math.Max(-drawn.Min.X, drawn.Max.X), Math.Max(-drawn.Min.Y, drawn.Max.Y))
            : 0;
}
