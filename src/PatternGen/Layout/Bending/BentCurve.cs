using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws what a line or arc becomes on a stretch of even curvature: arcs that meet smoothly.</summary>
/// <remarks>
/// A slanted line becomes a part of an Archimedean spiral: the radius grows evenly with the angle. Neighbours that share a
/// side walk it in different directions and count from different stations; it is always fitted from its lower end, from
/// x = 0, so that both get the same arcs.
/// </remarks>
internal static class BentCurve
{
    /// <summary>Lengths are rounded to this part of a millimetre before a fit, so that the same side gives the same arcs.</summary>
    private const double Steps = 1L << 36;

    /// <summary>Returns the corners where the arcs of a bent side begin.</summary>
    /// <param name="piece">The stretch.</param>
    /// <param name="side">The side as on a rail.</param>
    /// <param name="accuracy">How far the arcs may be off, in mm.</param>
    internal static IEnumerable<BentCorner> Fit(BendPiece piece, Segment side, double accuracy)
    {
        if (piece.Turn == 0)
            return [new(new(side.Start.X, side.Start.Y), side.Bulge)];
        var isReversed = (side.End.Y, side.End.X).CompareTo((side.Start.Y, side.Start.X)) < 0;
        var walked = isReversed ? side.Reversed() : side;
        var arcs = Arcs(piece, FromStart(walked), accuracy);
        var places = Places(piece, walked, arcs);
        return isReversed
            ? Enumerable
                .Range(0, arcs.Count)
                .Select(i => new BentCorner(places[^(i + 1)], -arcs[^(i + 1)].Bulge))
            : arcs.Select((arc, i) => new BentCorner(places[i], arc.Bulge));
    }

    private static Segment FromStart(Segment side) =>
        new(
            new(0, Rounded(side.Start.Y)),
            new(Rounded(side.End.X - side.Start.X), Rounded(side.End.Y)),
            side.Bulge
        );

    private static IReadOnlyList<Segment> Arcs(BendPiece piece, Segment side, double accuracy) =>
        BiarcFitter.Fit(
            length =>
            {
                var (at, way) = (side.PointAt(length), side.TangentAt(length));
                return new(
                    piece.Local(at.X, at.Y),
                    piece.LocalAlong(at.X, at.Y) * way.X + piece.LocalAcross(at.X) * way.Y
                );
            },
            0,
            side.Length,
            accuracy
        );

    /// <summary>Where the arcs begin, and where the last one ends, as places on the band.</summary>
    private static BendPlace[] Places(BendPiece piece, Segment side, IReadOnlyList<Segment> arcs)
    {
        var places = new BendPlace[arcs.Count + 1];
        places[0] = new(side.Start.X, side.Start.Y);
        var round = Math.Tau / piece.Turn;
        for (var i = 1; i < arcs.Count; i++)
        {
            var place = piece.Place(arcs[i].Start);
            // Seen from the centre, places a whole turn apart look alike: the one near the arc before is meant.
            var x = side.Start.X + place.X;
            x += Math.Round((places[i - 1].X - x) / round) * round;
            places[i] = new(x, Rounded(place.Y));
        }
        places[^1] = new(side.End.X, side.End.Y);
        return places;
    }

    private static double Rounded(double length) => Math.Round(length * Steps) / Steps;
}
