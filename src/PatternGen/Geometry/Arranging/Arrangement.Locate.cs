namespace PatternGen.Geometry;

public sealed partial class Arrangement
{
    private readonly Lazy<WalkIndex> _index;

    /// <summary>Returns the node, edge or face that a point lies on or in.</summary>
    /// <param name="point">Any place. Nearer to a node or edge than the merge distance of <see cref="Tolerance"/> it lies on that.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public ArrangementPlace Locate(Point point)
    {
        Guard.Place(point);
        HalfEdge? on = null;
        foreach (var number in _index.Value.EdgesAtHeightOf(point, Tolerance.Merge))
        {
            var halfEdge = new HalfEdge(this, number);
            if (Tolerance.Same(point, halfEdge.Origin.Point))
                return new(halfEdge.Origin);
            if (Tolerance.Same(point, halfEdge.Target.Point))
                return new(halfEdge.Target);
            if (on is null && DistanceTo(number, point) <= Tolerance.Merge)
                on = halfEdge;
        }
        return on is { } found ? new(found.Edge) : new(FaceRound(point));
    }

    /// <summary>Returns the face that a point lies in; null if it lies on a node or edge.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public Face? FaceAt(Point point) => Locate(point).Face;

    private Face FaceRound(Point point)
    {
        var walk = _index.Value.InnermostRound(point);
        return new(this, walk < 0 ? 0 : _faceOfWalk[walk]);
    }

    private double DistanceTo(int halfEdge, Point point)
    {
        var piece = EdgePieces[halfEdge >> 1];
        var distance = piece.Curve.DistanceTo(point);
        return piece.HasRest ? Math.Min(distance, piece.Rest.DistanceTo(point)) : distance;
    }
}
