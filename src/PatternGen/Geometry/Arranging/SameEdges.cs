namespace PatternGen.Geometry;

/// <summary>Finds edges that run along each other, and makes them one with the sources of all.</summary>
internal static class SameEdges
{
    /// <summary>Of edges that run along each other keeps the first.</summary>
    internal static EdgePiece[] Merged(List<EdgePiece> edges, int points, Tolerance tolerance)
    {
        var kept = new List<EdgePiece>(edges.Count);
        // The edges kept between a point and others, as chains: an edge is in that of its smaller point.
        var (first, next) = (new int[points], new int[edges.Count]);
        Array.Fill(first, -1);
        foreach (var edge in edges)
        {
            ref var chain = ref first[Math.Min(edge.From, edge.To)];
            var same = chain;
            while (same >= 0 && !AreSame(kept[same], edge, tolerance))
                same = next[same];
            if (same >= 0)
            {
                kept[same] = kept[same].With([.. kept[same].Sources.Union(edge.Sources).Order()]);
                continue;
            }
            (next[kept.Count], chain) = (chain, kept.Count);
            kept.Add(edge);
        }
        return [.. kept];
    }

    private static bool AreSame(EdgePiece one, EdgePiece other, Tolerance tolerance) =>
        (
            (one.From == other.From && one.To == other.To)
            || (one.From == other.To && one.To == other.From)
        )
        && one.HasRest == other.HasRest
        && one.Middle.DistanceTo(other.Middle) <= CircleMeeting.SameWithin * tolerance.Merge;
}
