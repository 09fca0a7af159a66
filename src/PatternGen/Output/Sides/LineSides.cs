using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Lines that are each drawn once, since a machine would go over what is drawn twice.</summary>
internal static class LineSides
{
    /// <summary>So many segments are compared with each other in less time than it takes to get the side sets going.</summary>
    private const int FewSegments = 200;

    /// <summary>
    /// Returns the lines as they are if no two of them have a stretch in common; else every part once, joined into
    /// runs as long as they go. Specks are left out, those that came in and those that joining leaves over.
    /// </summary>
    internal static IReadOnlyList<Chain> Once(IReadOnlyList<Chain> lines, int decimals)
    {
        var drawn = WithoutSpecks(lines, decimals);
        if (AreFewAndApart(drawn))
            return drawn;
        var pieces = Pieces(drawn, decimals);
        return pieces.RepeatedCount > 0 ? WithoutSpecks(SideRuns.Of(pieces), decimals) : drawn;
    }

    /// <summary>Returns the outlines, of those that are written alike the first.</summary>
    internal static IReadOnlyList<Contour> Once(IReadOnlyList<Contour> outlines, int decimals) =>
        outlines.Count > 1
            ? [.. outlines.DistinctBy(outline => new OutlineKey(outline, decimals))]
            : outlines;

    /// <summary>Finds what a pattern's layout lines, line cuts and outlines of the wood have more than each once.</summary>
    internal static RepeatedLines Repeated(Pattern pattern)
    {
        var decimals = SaveOptions.Default.Decimals;
        var read = PatternReader.Read(pattern.Root);
        var layout = Pieces(read.LayoutLines, decimals);
        var cuts = Pieces(read.LineCuts.Select(cut => cut.Path), decimals);
        var stock = Once(read.Stock, decimals);
        return new(
            layout.RepeatedCount + cuts.RepeatedCount + read.Stock.Count - stock.Count,
            layout.SharedLength + cuts.SharedLength + Length(read.Stock) - Length(stock)
        );
    }

    /// <summary>Returns the lines of which something is left in a file's decimals.</summary>
    internal static IReadOnlyList<Chain> WithoutSpecks(IReadOnlyList<Chain> lines, int decimals) =>
        [.. lines.Where(line => !Vanishing.IsSpeck(line.Span, decimals))];

    private static bool AreFewAndApart(IReadOnlyList<Chain> lines)
    {
        var segments = new List<Segment>();
        foreach (var line in lines)
        {
            segments.AddRange(line.ToSegments());
            if (segments.Count > FewSegments)
                return false;
        }
        var boxes = new Extents[segments.Count];
        for (var i = 0; i < boxes.Length; i++)
        {
            boxes[i] = segments[i].Extents;
            for (var j = 0; j < i; j++)
                if (boxes[i].Touches(boxes[j]) && Overlap(segments[i], segments[j]))
                    return false;
        }
        return true;

        static bool Overlap(Segment a, Segment b) =>
            a.Intersect(b).Kind == IntersectionKind.Overlapping;
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
