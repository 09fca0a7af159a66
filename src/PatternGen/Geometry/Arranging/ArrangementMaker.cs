namespace PatternGen.Geometry;

/// <summary>Makes an arrangement, in steps that are a class each.</summary>
/// <remarks>
/// <para>Nouns. A <em>strand</em> is a curve as it is cut up: a segment, a circle, or an arc of more than half of one. A
/// <em>node</em> is a point where strands end or meet. An <em>edge</em> is a piece of a strand between two nodes, and each
/// of its two directions is a <em>half-edge</em>, which has the face on its left. A <em>walk</em> follows half-edges, at
/// each node taking the next one clockwise, until it comes back: it goes round a face, or round a hole in one. A
/// <em>component</em> is what hangs together.</para>
/// <para><see cref="StrandSet"/> makes strands of the curves, <see cref="StrandCuts"/> finds where they meet,
/// <see cref="StrandPieces"/> cuts them there, and <see cref="SameEdges"/> makes pieces one that run along each other.
/// <see cref="LeavingOrder"/> sorts what leaves each node, <see cref="FaceWalks"/> walks round the faces, and
/// <see cref="ComponentNesting"/> tells in which face each component lies.</para>
/// <para>Strands that run along each other are first cut where they begin and cease to do so, made one there, and all is
/// done again: a third curve then meets one strand instead of two that arithmetic tells apart.</para>
/// </remarks>
internal static class ArrangementMaker
{
    /// <summary>
    /// How much coarser or finer other tries merge, should curves that lie about the tolerance apart contradict one another:
    /// coarser where numbers were rounded to about the tolerance, finer where many curves leave one point at small angles.
    /// </summary>
    private static readonly double[] Merges = [1, 16, 1.0 / 16, 256, 4096];

    /// <summary>How often strands that run along each other are made one. Once does, unless curves are nearly parallel within the tolerance.</summary>
    private const int Rounds = 4;

    internal static Arrangement Make(Curve[] curves)
    {
        var tolerance = Tolerance.For(ExtentsOf(curves));
        Point place = default;
        foreach (var factor in Merges)
        {
            var arrangement = Make(curves, Tolerance.OfMerge(tolerance.Merge * factor));
            if (arrangement.FirstContradiction is not { } contradiction)
                return arrangement;
            place = contradiction;
        }
        throw new PatternException(
            "Curves lie too near to each other to tell their faces apart.",
            place,
            ["curves that meet exactly, or stay farther apart"]
        );
    }

    private static Arrangement Make(Curve[] curves, Tolerance tolerance)
    {
        var strands = StrandSet.Of(curves, tolerance);
        for (var round = 0; ; round++)
        {
            using var cuts = StrandCuts.Of(strands, tolerance);
            var isLast = !cuts.HasOverlaps || round == Rounds;
            using var pieces = StrandPieces.Of(strands, cuts, isLast ? cuts.All : cuts.AtOverlaps);
            SameEdges.Merge(pieces, cuts.Points.Length, tolerance);
            EdgePiece[] edges = [.. pieces.Span];
            if (!isLast)
            {
                strands = Array.ConvertAll(edges, edge => edge.ToStrand());
                continue;
            }
            var nodes = Renumber(edges, cuts.Points);
            return new(curves, tolerance, nodes, edges, LeavingOrder.Of(edges, nodes.Length));
        }
    }

    /// <summary>Numbers the points on at which an edge is left, and returns them: a piece shorter than the tolerance vanishes with its points.</summary>
    private static Point[] Renumber(EdgePiece[] edges, ReadOnlySpan<Point> points)
    {
        using var numbers = Scratch<int>.Of(points.Length, -1);
        using var nodes = new Scratch<Point>(points.Length);
        foreach (ref var edge in edges.AsSpan())
            edge = edge.Between(NumberOf(edge.From, points), NumberOf(edge.To, points));
        return [.. nodes.Span];

        int NumberOf(int point, ReadOnlySpan<Point> places)
        {
            ref var number = ref numbers.Span[point];
            if (number < 0)
            {
                number = nodes.Count;
                nodes.Add(places[point]);
            }
            return number;
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
}
