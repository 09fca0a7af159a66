using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Lines that are each drawn once, since a machine would go over what is drawn twice.</summary>
internal static class LineSides
{
    /// <summary>Returns every part of the lines once, joined into runs as long as they go.</summary>
    internal static IReadOnlyList<Chain> Once(IEnumerable<Chain> lines, int decimals) =>
        SideRuns.Of(Pieces(lines, decimals));

    /// <summary>Returns the outlines, of those that are written alike the first.</summary>
    internal static IReadOnlyList<Contour> Once(IEnumerable<Contour> outlines, int decimals) =>
        [.. outlines.DistinctBy(outline => new OutlineKey(outline, decimals))];

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
