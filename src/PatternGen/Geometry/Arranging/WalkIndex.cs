namespace PatternGen.Geometry;

/// <summary>Finds the walk that winds most closely round a point, from the edges at its height.</summary>
internal sealed class WalkIndex
{
    private readonly FaceWalks _walks;
    private readonly List<(Segment Curve, int HalfEdge)> _curves = [];
    private readonly Strips _strips;

    internal WalkIndex(Arrangement arrangement, FaceWalks walks)
    {
        _walks = walks;
        for (var edge = 0; edge < arrangement.EdgePieces.Length; edge++)
        {
            var piece = arrangement.EdgePieces[edge];
            _curves.Add((piece.Curve, 2 * edge));
            if (piece.HasRest)
                _curves.Add((piece.Rest, 2 * edge));
        }
        _strips = new([.. _curves.Select(curve => curve.Curve.Extents)]);
    }

    /// <summary>The edges, each by its forward half-edge, whose height comes within a distance of a point's.</summary>
    internal IEnumerable<int> EdgesAtHeightOf(Point point, double within)
    {
        foreach (var i in _strips.Between(point.Y - within, point.Y + within))
            yield return _curves[i].HalfEdge;
    }

    /// <summary>The walk with the least area that winds round a point, or -1; a component may be left out.</summary>
    internal int InnermostRound(Point point, int except = -1)
    {
        var turns = new Dictionary<int, int>();
        foreach (var i in _strips.At(point.Y))
        {
            var (curve, halfEdge) = _curves[i];
            var share = Winding.Share(curve, point);
            if (share == 0)
                continue;
            Add(_walks.WalkOf[halfEdge], share);
            Add(_walks.WalkOf[halfEdge ^ 1], -share);
        }
        var innermost = -1;
        foreach (var (walk, times) in turns)
            if (
                times > 0
                && _walks.ComponentOf(walk) != except
                && (innermost < 0 || _walks.AreaOf(walk) < _walks.AreaOf(innermost))
            )
                innermost = walk;
        return innermost;

        void Add(int walk, int share) => turns[walk] = turns.GetValueOrDefault(walk) + share;
    }
}
