using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws what a line or arc becomes on a stretch of even curvature: arcs that meet smoothly.</summary>
/// <remarks>A slanted line becomes a part of an Archimedean spiral: the radius grows evenly with the angle.</remarks>
internal static class BentCurve
{
    /// <summary>Returns where the arcs of a bent side begin, as on a rail, with their bulges.</summary>
    /// <param name="piece">The stretch.</param>
    /// <param name="side">The side as on a rail; where it starts on the stretch is no matter.</param>
    /// <param name="accuracy">How far the arcs may be off, in mm.</param>
    internal static IEnumerable<Vertex> Fit(BendPiece piece, Segment side, double accuracy)
    {
        if (piece.Turn == 0)
        {
            yield return new(side.Start, side.Bulge);
            yield break;
        }
        var arcs = Arcs(piece, side, accuracy);
        var round = Math.Tau / piece.Turn;
        var x = side.Start.X;
        for (var i = 0; i < arcs.Count; i++)
        {
            var place = i > 0 ? piece.Place(arcs[i].Start) : new(0, side.Start.Y);
            // Seen from the centre, places a whole turn apart look alike: the one near the arc before is meant.
            var next = side.Start.X + place.X;
            x = next + Math.Round((x - next) / round) * round;
            yield return new(new(x, place.Y), BentArc.AtMostHalf(arcs[i].Bulge));
        }
    }

    private static IReadOnlyList<Segment> Arcs(BendPiece piece, Segment side, double accuracy) =>
        BiarcFitter.Fit(
            length =>
            {
                var (at, way) = (side.PointAt(length), side.TangentAt(length));
                var x = at.X - side.Start.X;
                return new(
                    piece.Local(x, at.Y),
                    piece.LocalAlong(x, at.Y) * way.X + piece.LocalAcross(x) * way.Y
                );
            },
            0,
            side.Length,
            accuracy
        );
}
