using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws what a line or arc becomes on a stretch of even curvature.</summary>
internal static class BentCurve
{
    /// <summary>Returns the corners where the arcs of a bent side begin.</summary>
    internal static IEnumerable<BentCorner> Fit(BendPiece piece, Segment side, double accuracy)
    {
        if (piece.Turn == 0)
            return [new(new(side.Start.X, side.Start.Y), side.Bulge)];
        var at = side.Start.X;
        var (start, end) = (Bent(piece, side.Start, at), Bent(piece, side.End, at));
        var middle = Bent(piece, side.Middle, at);
        var chord = end - start;
        var sagitta = chord.Unit().Cross(middle - start.Towards(end, 0.5));
        return [new(new(side.Start.X, side.Start.Y), -2 * sagitta / chord.Length)];
    }

    private static Point Bent(BendPiece piece, Point point, double at) =>
        piece.Local(point.X - at, point.Y);
}
