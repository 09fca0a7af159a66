namespace PatternGen.Geometry;

/// <summary>Turns the walks round a face into its outline and holes.</summary>
internal static class FaceOutline
{
    internal static RegionPart Of(Arrangement arrangement, int face)
    {
        var rings = new List<Contour>();
        foreach (var walk in arrangement.WalksRound(face))
            AddRings(
                arrangement,
                arrangement
                    .WalkFrom(walk)
                    .Where(halfEdge =>
                        arrangement.FaceOf(halfEdge) != arrangement.FaceOf(halfEdge ^ 1)
                    ),
                rings
            );
        // Only the way round the outside has the face inside it.
        var outer = rings.MaxBy(ring => ring.SignedArea)!;
        rings.Remove(outer);
        return new(outer, rings);
    }

    /// <summary>Takes a ring off a walk whenever it comes back to a node, so that an area that touches itself has rings that touch.</summary>
    internal static void AddRings(
        Arrangement arrangement,
        IEnumerable<int> walk,
        List<Contour> rings
    )
    {
        var way = new List<int>();
        var placeOf = new Dictionary<int, int>();
        foreach (var halfEdge in walk)
        {
            placeOf[arrangement.OriginOf(halfEdge)] = way.Count;
            way.Add(halfEdge);
            if (!placeOf.TryGetValue(arrangement.OriginOf(halfEdge ^ 1), out var first))
                continue;
            rings.Add(Ring(arrangement, way[first..]));
            foreach (var done in way[first..])
                placeOf.Remove(arrangement.OriginOf(done));
            way.RemoveRange(first, way.Count - first);
        }
    }

    private static Contour Ring(Arrangement arrangement, List<int> halfEdges)
    {
        var segments = halfEdges
            .SelectMany(halfEdge => new HalfEdge(arrangement, halfEdge).Segments)
            .ToList();
        var ring = Contour.Of(segments);
        // Of a ring thinner than the merge distance, sides that are not one would count as one.
        return ring.Area > arrangement.Tolerance.Merge * ring.Length / 2
            ? Contour.Of(PieceJoiner.Joined(segments, arrangement.Tolerance))
            : ring;
    }
}
