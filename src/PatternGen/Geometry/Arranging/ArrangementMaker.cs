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
        var cuts = StrandCuts.Of(strands, tolerance);
        for (var round = 1; cuts.HasOverlaps && round <= Rounds; round++)
        {
            strands =
            [
                .. Pieces(strands, cuts, cuts.AtOverlaps, tolerance)
                    .Select(part => part.ToStrand()),
            ];
            cuts = StrandCuts.Of(strands, tolerance);
        }
        EdgePiece[] edges = [.. Pieces(strands, cuts, cuts.All, tolerance)];
        var nodes = Renumber(edges, cuts.Points);
        return new(curves, tolerance, nodes, edges, LeavingOrder.Of(edges, nodes.Length));
    }

    private static List<EdgePiece> Pieces(
        Strand[] strands,
        StrandCuts cuts,
        CutLists lists,
        Tolerance tolerance
    )
    {
        var pieces = StrandPieces.Of(strands, cuts, lists);
        SameEdges.Merge(pieces, cuts.Points.Length, tolerance);
        return pieces;
    }

    /// <summary>Numbers the points on at which an edge is left, and returns them: a piece shorter than the tolerance vanishes with its points.</summary>
    private static Point[] Renumber(EdgePiece[] edges, ReadOnlySpan<Point> points)
    {
        var numbers = new int[points.Length];
        Array.Fill(numbers, -1);
        var nodes = new List<Point>(points.Length);
        foreach (ref var edge in edges.AsSpan())
            edge = edge.Between(NumberOf(edge.From, points), NumberOf(edge.To, points));
        return [.. nodes];

        int NumberOf(int point, ReadOnlySpan<Point> places)
        {
            if (numbers[point] < 0)
            {
                numbers[point] = nodes.Count;
                nodes.Add(places[point]);
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
}
