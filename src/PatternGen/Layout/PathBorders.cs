using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Bands along paths.</summary>
public static class PathBorders
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
}
