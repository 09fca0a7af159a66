namespace PatternGen.Geometry;

/// <summary>Makes an arrangement, in steps that are a class each.</summary>
/// <remarks>
/// <para>Nouns. A <em>strand</em> is a curve as it is cut up: a segment, a circle, or an arc of more than half of one. A
/// <em>node</em> is a point where strands end or meet. An <em>edge</em> is a piece of a strand between two nodes, and each
/// of its two directions is a <em>half-edge</em>, which has the face on its left. A <em>walk</em> follows half-edges, at
/// each node taking the next one clockwise, until it comes back: it goes round a face, or round a hole in one. A
/// <em>component</em> is what hangs together.</para>
/// <para><see cref="StrandSet"/> makes strands of the curves, <see cref="StrandCuts"/> finds where they meet,
/// <see cref="StrandPieces"/> cuts them there, <see cref="LeavingOrder"/> sorts what leaves each node and finds pieces that
/// run along each other, <see cref="FaceWalks"/> walks round the faces, and <see cref="ComponentNesting"/> tells in which
/// face each component lies.</para>
/// </remarks>
internal static class ArrangementMaker
{
    internal static Arrangement Make(Curve[] curves)
    {
        var tolerance = Tolerance.For(ExtentsOf(curves));
        var set = new StrandSet(curves, tolerance);
        Strand[] strands = [.. set.Strands];
        var cuts = StrandCuts.Of(strands, tolerance);
        var (edges, nodes) = Numbered(StrandPieces.Of(strands, cuts), cuts.Points);
        var sources = Array.ConvertAll(edges, edge => set.SourcesOf(edge.Strand));
        var order = LeavingOrder.Of(edges, nodes.Length, tolerance);
        if (order.Same.Count > 0)
        {
            (edges, sources) = WithoutSame(edges, sources, order.Same);
            order = LeavingOrder.Of(edges, nodes.Length, tolerance);
        }
        return new(curves, tolerance, nodes, edges, sources, order);
    }

    /// <summary>The points at which something is left, numbered on: a piece shorter than the tolerance vanishes with its points.</summary>
    private static (EdgePiece[] Edges, Point[] Nodes) Numbered(
        List<EdgePiece> pieces,
        IReadOnlyList<Point> points
    )
    {
        var numbers = new int[points.Count];
        Array.Fill(numbers, -1);
        var nodes = new List<Point>(points.Count);
        var edges = new EdgePiece[pieces.Count];
        for (var i = 0; i < edges.Length; i++)
            edges[i] = pieces[i].Between(NumberOf(pieces[i].From), NumberOf(pieces[i].To));
        return (edges, [.. nodes]);

        int NumberOf(int point)
        {
            if (numbers[point] < 0)
            {
                numbers[point] = nodes.Count;
                nodes.Add(points[point]);
            }
            return numbers[point];
        }
    }

    private static Extents ExtentsOf(Curve[] curves)
    {
        if (curves.Length == 0)
            return default;
        var all = curves[0].Extents;
        foreach (var curve in curves)
            all = all.Including(curve.Extents);
        return all;
    }

    /// <summary>Of edges that run along each other keeps the first, with the sources of all.</summary>
    private static (EdgePiece[], IReadOnlyList<int>[]) WithoutSame(
        EdgePiece[] edges,
        IReadOnlyList<int>[] sources,
        IReadOnlyList<(int, int)> same
    )
    {
        var groups = new Groups(edges.Length);
        foreach (var (one, other) in same)
            groups.Join(one, other);
        var places = new Dictionary<int, int>();
        var (kept, keptSources) = (new List<EdgePiece>(), new List<IReadOnlyList<int>>());
        for (var i = 0; i < edges.Length; i++)
        {
            var group = groups.Of(i);
            if (places.TryGetValue(group, out var place))
                keptSources[place] = [.. keptSources[place].Union(sources[i]).Order()];
            else
            {
                places[group] = kept.Count;
                kept.Add(edges[i]);
                keptSources.Add(sources[i]);
            }
        }
        return ([.. kept], [.. keptSources]);
    }
}
