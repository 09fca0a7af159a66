namespace PatternGen.Geometry;

/// <summary>Picks the pieces of closed curves that bound the area where the winding number is above 0.</summary>
internal static class BoundaryPieces
{
    /// <summary>
    /// Where along a piece both sides are asked, in turn. A place that happens to lie next to another piece gives sides
    /// that do not differ by what the piece itself adds, and the next one is tried.
    /// </summary>
    private static readonly double[] Places = [0.5, 0.37, 0.66, 0.21, 0.83];

    /// <summary>
    /// How far to the sides, in merge distances. Pieces that run along each other differ by up to one of them; the smaller
    /// distances are for narrow gaps between pieces that do not.
    /// </summary>
    private static readonly double[] Asides = [4, 1.0 / 4, 1.0 / 64, 32];

    /// <summary>Returns the pieces, each with the area to its left, and only once where several run along each other.</summary>
    internal static List<Piece> Of(List<Piece> pieces, WindingIndex winding, Tolerance tolerance)
    {
        var boundary = new List<Piece>();
        foreach (var (piece, times) in Grouped(pieces, tolerance))
        {
            if (times == 0)
                continue;
            var (left, right) = Sides(piece, times, winding, tolerance.Merge);
            if (left > 0 && right <= 0)
                boundary.Add(piece);
            else if (right > 0 && left <= 0)
                boundary.Add(piece.Reversed());
        }
        return boundary;
    }

    /// <summary>Pieces that run along each other, as one, with how often it is walked forwards less backwards.</summary>
    private static List<(Piece Piece, int Times)> Grouped(List<Piece> pieces, Tolerance tolerance)
    {
        var groups = new List<(Piece Piece, int Times)>();
        var known = new Dictionary<(int, int), List<int>>();
        foreach (var piece in pieces)
        {
            var isForward = piece.From < piece.To;
            var ends = isForward ? (piece.From, piece.To) : (piece.To, piece.From);
            if (!known.TryGetValue(ends, out var candidates))
                known[ends] = candidates = [];
            var middle = piece.Curve.Middle;
            var group = candidates.FindIndex(i =>
                middle.DistanceTo(groups[i].Piece.Curve.Middle) <= 4 * tolerance.Merge
            );
            if (group < 0)
            {
                candidates.Add(groups.Count);
                groups.Add((isForward ? piece : piece.Reversed(), isForward ? 1 : -1));
            }
            else
            {
                var (first, times) = groups[candidates[group]];
                groups[candidates[group]] = (first, times + (isForward ? 1 : -1));
            }
        }
        return groups;
    }

    private static (int Left, int Right) Sides(
        Piece piece,
        int times,
        WindingIndex winding,
        double merge
    )
    {
        var length = piece.Curve.Length;
        foreach (var aside in Asides)
        foreach (var place in Places)
        {
            var sides = SidesAt(length * place, Math.Min(aside * merge, length / 4));
            if (sides.Left - sides.Right == times)
                return sides;
        }
        return SidesAt(length / 2, merge);

        (int Left, int Right) SidesAt(double along, double aside)
        {
            var point = piece.Curve.PointAt(along);
            var toLeft = piece.Curve.NormalAt(along) * aside;
            return (winding.At(point + toLeft), winding.At(point - toLeft));
        }
    }
}
