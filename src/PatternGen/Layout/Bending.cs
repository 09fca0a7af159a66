using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Bands and motifs bent along paths.</summary>
public static class Bending
{
    /// <summary>Returns a band bent along a path of lines and arcs that go on smoothly, fitted with whole repeats.</summary>
    /// <param name="path">A chain, or a contour, round which the band closes.</param>
    /// <param name="band">The band. Its upper edge is to the left of travel; reverse the path to turn it round.</param>
    /// <param name="offset">
    /// Distance in mm from the path to the lowest rule, positive to the left: 5 leaves a strip of 5 mm between a
    /// counter-clockwise outline and a band inside it, -12 puts a band 12 mm high just right of the path. If not given, the
    /// path runs along the middle of the band.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The offset is not finite.</exception>
    /// <remarks>
    /// Throws a <see cref="PatternException"/> when the border is first drawn, if the path has a corner or an arc so tight
    /// that the band would reach its centre; the message says which radius works.
    /// </remarks>
    [Pure]
    public static PathBorder Border(this SegmentRun path, TriangleBand band, double? offset = null)
    {
        Guard.NotNull(path);
        Guard.NotNull(band);
        return new(
            path,
            band,
            Guard.Within(offset ?? -band.Height / 2, -Guard.MaxSize, Guard.MaxSize, nameof(offset))
        );
    }

    /// <summary>Returns a pattern bent along a path of lines and arcs that go on smoothly.</summary>
    /// <param name="path">A chain or a contour.</param>
    /// <param name="motif">
    /// The pattern. Bent once, its x counts along the path from its start; in repeats, its origin lies in the middle of each.
    /// </param>
    /// <param name="spacing">
    /// Length of one repeat in mm, made a little longer or shorter so that whole repeats fill the path; if not given, the
    /// motif is bent once.
    /// </param>
    /// <param name="offset">Distance in mm from the path to the motif's x axis, positive to the left of travel; 0 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not positive, or the offset not finite.</exception>
    /// <remarks>
    /// Throws a <see cref="PatternException"/> when it is first drawn, if the path has a corner or an arc so tight that the
    /// motif would fold over its centre, or the motif does not fit; the message says what works.
    /// </remarks>
    [Pure]
    public static BentPattern Bend(
        this SegmentRun path,
        Pattern motif,
        double? spacing = null,
        double offset = 0
    ) =>
        new(
            Guard.NotNull(path),
            Guard.NotNull(motif),
            spacing is { } asked ? Guard.Positive(asked, nameof(spacing)) : null,
            Guard.Within(offset, -Guard.MaxSize, Guard.MaxSize)
        );
}
