namespace PatternGen.Geometry;

/// <summary>Finds edges that run along each other, and makes them one with the sources of all.</summary>
internal static class SameEdges
{
    /// <summary>Of edges that run along each other keeps the first, in place.</summary>
    internal static void Merge(Scratch<EdgePiece> edges, int points, Tolerance tolerance)
    {
        var all = edges.Span;
        var count = 0;
        // The edges kept between a point and others, as chains: an edge is in that of its smaller point.
        using var firsts = Scratch<int>.Of(points, -1);
        using var nexts = Scratch<int>.Of(all.Length, -1);
        var first = firsts.Span;
        var next = nexts.Span;
        foreach (ref readonly var edge in all)
        {
            ref var chain = ref first[Math.Min(edge.From, edge.To)];
            var same = chain;
            while (same >= 0 && !AreSame(in all[same], in edge, tolerance))
                same = next[same];
            if (same >= 0)
            {
                all[same] = all[same].With([.. all[same].Sources.Union(edge.Sources).Order()]);
                continue;
            }
            (next[count], chain) = (chain, count);
            all[count++] = edge;
        }
        edges.Cut(count);
    }

    /// <remarks>Of two half circles rounding may make one a little more, so that it has two parts.</remarks>
    private static bool AreSame(in EdgePiece one, in EdgePiece other, Tolerance tolerance) =>
        (
            (one.From == other.From && one.To == other.To)
            || (one.From == other.To && one.To == other.From)
        )
        && one.Middle.DistanceTo(other.Middle) <= CircleMeeting.SameWithin * tolerance.Merge;
}
