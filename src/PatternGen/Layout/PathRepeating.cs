using System.Diagnostics.Contracts;
using System.Runtime.CompilerServices;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Repeats motifs along lines and arcs.</summary>
public static class PathRepeating
{
    /// <summary>Returns a motif repeated along a path at equal distances, measured along the path.</summary>
    /// <param name="path">An outline or an open chain.</param>
    /// <param name="motif">The motif: its origin comes to lie on the path, its x axis in the direction of the heading.</param>
    /// <param name="spacing">
    /// Distance from one repeat to the next in mm, fitted to a whole number of repeats: 16 round a circle of radius 50 makes
    /// 20 repeats 15.708 mm apart.
    /// </param>
    /// <param name="heading">Which way the motif faces; <see cref="Heading.Along"/>, the direction of travel, by default.</param>
    /// <exception cref="ArgumentException">The motif is empty, or the path has no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not positive, or over 1 km.</exception>
    [Pure]
    public static PathRepeats Repeat(
        this SegmentRun path,
        Pattern motif,
        double spacing,
        Heading heading = default
    )
    {
        Guard.NotNull(path);
        return Of(path, [Drawn(motif)], Guard.Positive(spacing), heading);
    }

    /// <summary>Returns motifs in turn along a path at equal distances, measured along the path: A B A B … of two.</summary>
    /// <param name="path">An outline or an open chain.</param>
    /// <param name="motifs">
    /// The motifs, in the order in which they follow each other. The number of repeats on a closed path is a multiple of
    /// theirs, so that there is no seam. Each stretch that is fitted by itself begins with the first.
    /// </param>
    /// <param name="spacing">Distance from one repeat to the next in mm, fitted to a whole number of repeats.</param>
    /// <param name="heading">Which way the motifs face; <see cref="Heading.Along"/>, the direction of travel, by default.</param>
    /// <exception cref="ArgumentException">There is no motif, one is empty, or the path has no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not positive, or over 1 km.</exception>
    [Pure]
    public static PathRepeats Repeat(
        this SegmentRun path,
        IEnumerable<Pattern> motifs,
        double spacing,
        Heading heading = default
    )
    {
        Guard.NotNull(path);
        Pattern[] parts = [.. Guard.NotNull(motifs).Select(motif => Drawn(motif, nameof(motifs)))];
        if (parts.Length == 0)
            throw new ArgumentException("There is no motif to repeat.", nameof(motifs));
        return Of(path, parts, Guard.Positive(spacing), heading);
    }

    private static PathRepeats Of(
        SegmentRun path,
        Pattern[] motifs,
        double spacing,
        Heading heading
    ) =>
        path.Length > 0
            ? new(path, motifs, new(spacing, heading))
            : throw new ArgumentException(
                $"A path needs some length to repeat a motif along, but this one is the point {path.PointAt(0)}.",
                nameof(path)
            );

    /// <summary>Refuses a motif that draws nothing.</summary>
    internal static Pattern Drawn(
        Pattern motif,
        [CallerArgumentExpression(nameof(motif))] string name = ""
    ) =>
        Guard.NotNull(motif, name).Root.PieceCount > 0
            ? motif
            : throw new ArgumentException(
                "A motif needs something to draw, but this one is empty.",
                name
            );
}
