using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Lines that are each drawn once, since a machine would go over what is drawn twice.</summary>
internal static class LineSides
{
    /// <summary>
    /// Returns the lines as they are if no two of them have a stretch in common; else every part once, joined into
    /// runs as long as they go.
    /// </summary>
    internal static IReadOnlyList<Chain> Once(IReadOnlyList<Chain> lines, int decimals) =>
        HaveOverlaps(lines) ? SideRuns.Of(Pieces(lines, decimals)) : lines;

    /// <summary>Returns the outlines, of those that are written alike the first.</summary>
    internal static IReadOnlyList<Contour> Once(IReadOnlyList<Contour> outlines, int decimals) =>
        outlines.Count > 1
            ? [.. outlines.DistinctBy(outline => new OutlineKey(outline, decimals))]
            : outlines;

    /// <summary>Millimetres by which a pattern's layout lines, line cuts and outlines of the wood are longer than each once.</summary>
    internal static double RepeatedLength(Pattern pattern)
    {
        var decimals = SaveOptions.Default.Decimals;
        var read = PatternReader.Read(pattern.Root);
        return Pieces(read.LayoutLines, decimals).SharedLength
            + Pieces(read.LineCuts.Select(cut => cut.Path), decimals).SharedLength
            + Length(read.Stock)
            - Length(Once(read.Stock, decimals));
    }

    private static bool HaveOverlaps(IReadOnlyList<Chain> lines)
    {
        var segments = new List<Segment>();
        foreach (var line in lines)
            segments.AddRange(line.ToSegments());
        if (segments.Count < 2)
            return false;
        var extents = new Extents[segments.Count];
        for (var i = 0; i < extents.Length; i++)
            extents[i] = segments[i].Extents;
        var found = false;
        new ExtentsGrid(extents).VisitPairs(
            (i, j) =>
                found =
                    found || segments[i].Intersect(segments[j]).Kind == IntersectionKind.Overlapping
        );
        return found;
    }

    private static double Length(IEnumerable<Contour> outlines) =>
        outlines.Sum(outline => outline.Length);

    private static SidePieces Pieces(IEnumerable<Chain> lines, int decimals)
    {
        var sides = new SideSet(decimals);
        foreach (var line in lines)
            sides.Add(line.Span, closed: false);
        return sides.Pieces();
    }
}
