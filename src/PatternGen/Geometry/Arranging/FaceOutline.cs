namespace PatternGen.Geometry;

/// <summary>Turns the half-edges round faces into the rings that bound them all together.</summary>
internal sealed class FaceOutline
{
    private readonly Arrangement _arrangement;
    private readonly HashSet<int> _faces;
    private readonly HashSet<int> _walked = [];
    private readonly List<Contour> _rings = [];

    private FaceOutline(Arrangement arrangement, IEnumerable<int> faces)
    {
        _arrangement = arrangement;
        _faces = [.. faces];
    }

    /// <summary>The outline and the holes of a face, or of several that hang together.</summary>
    internal static RegionPart Of(Arrangement arrangement, params int[] faces)
    {
        var rings = Rings(arrangement, faces);
        // Only the way round the outside has the faces inside it.
        var outer = rings.MaxBy(ring => ring.SignedArea)!;
        rings.Remove(outer);
        return new(outer, rings);
    }

    /// <summary>The rings round any faces, with these on their left; faces that touch in a node only have rings of their own.</summary>
    internal static List<Contour> Rings(Arrangement arrangement, IReadOnlyList<int> faces)
    {
        var outline = new FaceOutline(arrangement, faces);
        foreach (var face in faces)
        foreach (var walk in arrangement.WalksRound(face))
        foreach (var halfEdge in arrangement.WalkFrom(walk))
            if (outline.IsSide(halfEdge) && !outline._walked.Contains(halfEdge))
                outline.AddRings(halfEdge);
        return outline._rings;
    }

    /// <summary>Whether there is something else on the right, which is not so at dangling ends and between two of the faces.</summary>
    private bool IsSide(int halfEdge) => !_faces.Contains(_arrangement.FaceOf(halfEdge ^ 1));

    /// <summary>Takes a ring off the walk whenever it comes back to a node, so that an area that touches itself has rings that touch.</summary>
    private void AddRings(int start)
    {
        var way = new List<int>();
        var placeOf = new Dictionary<int, int>();
        for (var next = start; _walked.Add(next); next = SideAfter(next))
        {
            placeOf[_arrangement.OriginOf(next)] = way.Count;
            way.Add(next);
            if (!placeOf.TryGetValue(_arrangement.OriginOf(next ^ 1), out var first))
                continue;
            _rings.Add(Ring(way[first..]));
            foreach (var done in way[first..])
                placeOf.Remove(_arrangement.OriginOf(done));
            way.RemoveRange(first, way.Count - first);
        }
    }

    /// <summary>The next half-edge of the walk that is a side: what is none has one of the faces on its right too, and is passed round.</summary>
    private int SideAfter(int halfEdge)
    {
        var next = _arrangement.NextOf(halfEdge);
        while (!IsSide(next))
            next = _arrangement.NextOf(next ^ 1);
        return next;
    }

    private Contour Ring(List<int> halfEdges)
    {
        var segments = halfEdges
            .SelectMany(halfEdge => new HalfEdge(_arrangement, halfEdge).Segments)
            .ToList();
        var ring = Contour.Of(segments);
        // Of a ring thinner than the merge distance, sides that are not one would count as one.
        return ring.Area > _arrangement.Tolerance.Merge * ring.Length / 2
            ? Contour.Of(PieceJoiner.Joined(segments, _arrangement.Tolerance))
            : ring;
    }
}
