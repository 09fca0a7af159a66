namespace PatternGen.Geometry;

/// <summary>Joins pieces that have an area to their left into the rings round it.</summary>
internal sealed class RingStitcher
{
    private readonly List<Piece> _pieces;
    private readonly Tolerance _tolerance;
    private readonly Dictionary<int, List<int>> _leaving = [];
    private readonly bool[] _isUsed;

    internal RingStitcher(List<Piece> pieces, Tolerance tolerance)
    {
        _pieces = pieces;
        _tolerance = tolerance;
        _isUsed = new bool[pieces.Count];
        var balance = new Dictionary<int, (int Count, Point Place)>();
        for (var i = 0; i < pieces.Count; i++)
        {
            var (from, to, curve) = pieces[i];
            if (!_leaving.TryGetValue(from, out var leaving))
                _leaving[from] = leaving = [];
            leaving.Add(i);
            balance[from] = (balance.GetValueOrDefault(from).Count + 1, curve.Start);
            balance[to] = (balance.GetValueOrDefault(to).Count - 1, curve.End);
        }
        foreach (var (count, place) in balance.Values)
            if (count != 0)
                Open = place;
    }

    /// <summary>A place where not as many pieces arrive as leave, so that they do not all close into rings; null if there is none.</summary>
    internal Point? Open { get; }

    /// <summary>Returns the rings; those thinner than the merge distance are left out.</summary>
    internal List<Contour> Rings()
    {
        var rings = new List<Contour>();
        for (var i = 0; i < _pieces.Count; i++)
            if (!_isUsed[i])
                Walk(i, rings);
        return rings;
    }

    /// <summary>Walks on from a piece, taking off a ring whenever the walk comes back to one of its points.</summary>
    private void Walk(int start, List<Contour> rings)
    {
        var walk = new List<Piece>();
        var placeOf = new Dictionary<int, int>();
        for (var next = start; next >= 0; next = Next(_pieces[next]))
        {
            _isUsed[next] = true;
            var piece = _pieces[next];
            placeOf[piece.From] = walk.Count;
            walk.Add(piece);
            if (!placeOf.TryGetValue(piece.To, out var first))
                continue;
            AddRing(walk[first..], rings);
            foreach (var done in walk[first..])
                placeOf.Remove(done.From);
            walk.RemoveRange(first, walk.Count - first);
        }
    }

    /// <summary>
    /// Of several pieces that leave here, the sharpest to the left: parts that touch in a point then become rings of their
    /// own.
    /// </summary>
    private int Next(Piece arriving)
    {
        if (!_leaving.TryGetValue(arriving.To, out var leaving))
            return -1;
        var (best, sharpest) = (-1, double.NegativeInfinity);
        var back = arriving.Curve.Reversed().TangentAt(0);
        foreach (var candidate in leaving)
        {
            if (_isUsed[candidate])
                continue;
            var ahead = _pieces[candidate].Curve.TangentAt(0);
            var turn = Math.Atan2(ahead.Cross(back), ahead.Dot(back));
            // Clockwise from the way back, a whole turn being the least sharp.
            var sharpness = turn > 0 ? -turn : -turn - Math.Tau;
            if (sharpness > sharpest)
                (best, sharpest) = (candidate, sharpness);
        }
        return best;
    }

    private void AddRing(List<Piece> ring, List<Contour> rings)
    {
        var joined = PieceJoiner.Joined(ring.ConvertAll(piece => piece.Curve), _tolerance);
        if (joined.Count < 2)
            return;
        var contour = Contour.Of(joined);
        // The area of a thin ring is its width times half the way round it.
        if (contour.Area > _tolerance.Merge * contour.Length / 2)
            rings.Add(contour);
    }
}
