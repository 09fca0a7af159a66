using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The lines of a grid as they are printed: cut off at the edges of a rectangle.</summary>
internal static class GridLines
{
    /// <summary>More lines would be a grey area, not a grid.</summary>
    private const int MostLines = 4000;

    internal static IEnumerable<Chain> Within(ISnapGrid grid, Extents room)
    {
        var count = grid.LineCount(room);
        if (count > MostLines)
            throw new PatternException(
                $"The grid would be {Guard.Text(Math.Ceiling(count))} lines, more than the {MostLines} that can be told apart.",
                room.Centre,
                [grid.Coarser(room, MostLines)]
            );
        // A line on the very edge is inside, whichever way it rounds.
        var inside = room.Grown(Tolerance.For(room).Merge);
        return grid.Lines(room).SelectMany(line => Clipped(line, inside));
    }

    private static IEnumerable<Chain> Clipped(SegmentRun line, Extents room)
    {
        if (room.Contains(line.Extents))
            return [line as Chain ?? line.Part(0, line.Length)];
        var edge = Contour.Rectangle(room.Min, room.Max);
        double[] places = [.. line.Intersections(edge).Select(contact => contact.LengthOnFirst)];
        return Parts(line, places)
            .Where(part => part.Length > 0 && room.Contains(part.PointAt(part.Length / 2)));
    }

    private static IReadOnlyList<Chain> Parts(SegmentRun line, double[] places) =>
        line switch
        {
            Chain chain => chain.SplitAt(places),
            Contour ring when places.Length > 0 => ring.SplitAt(places),
            _ => [line.Part(0, line.Length)],
        };
}
