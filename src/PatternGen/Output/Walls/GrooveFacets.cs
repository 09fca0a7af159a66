using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Cuts the walls of grooves into facets of one tone each, and finds what lies deeper than a level.</summary>
internal static class GrooveFacets
{
    /// <summary>How far the edge may be off in mm where the path curves: a tenth of what is seen on a screen.</summary>
    private const double EdgeAccuracy = 0.01;

    /// <summary>Share of the next facet that each reaches under; from one piece of the path to the next, share of the clearance.</summary>
    private const double Overlap = 0.3;

    /// <summary>Returns the facets of a groove, both walls of each piece of its path and what is between them round corners.</summary>
    /// <param name="groove">The groove.</param>
    /// <param name="turn">Radians by which a curved wall turns from one facet to the next, at most.</param>
    internal static IReadOnlyList<WallFacet> Of(Groove groove, double turn)
    {
        var facets = new List<WallFacet>();
        var pieces = GroovePiece.Along(groove.Path, groove.Width, groove.Profile);
        for (var i = 0; i < pieces.Length; i++)
            foreach (var side in (int[])[1, -1])
            {
                if (i > 0)
                    AddJoint(facets, pieces[i - 1], pieces[i], side, turn);
                AddWall(facets, pieces[i], side, turn, goesOn: i + 1 < pieces.Length);
            }
        return facets;
    }

    /// <summary>Returns the edge of what lies deeper than a share of the greatest depth; null if nothing does.</summary>
    internal static Vertex[]? Below(Groove groove, double share)
    {
        if (share >= 1)
            return null;
        var (path, profile) = (groove.Path, groove.Profile);
        if (profile.IsTapering)
        {
            // Farther down, the tapers begin later and are shorter, at the same growth.
            var taper = profile.TaperOn(path.Length);
            path = path.Part(share * taper, path.Length - share * taper);
            profile = GrooveProfile.TaperingOver((1 - share) * taper);
        }
        return GrooveEdge.Of(path, (1 - share) * groove.Width, profile, EdgeAccuracy);
    }

    private static void AddWall(
        List<WallFacet> facets,
        in GroovePiece piece,
        int side,
        double turn,
        bool goesOn
    )
    {
        var steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(piece.Segment.Sweep.Radians) / turn));
        for (var i = 0; i < steps; i++)
        {
            var (from, end) = ((double)i / steps, (i + 1.0) / steps);
            // A little under the next one, so that no line shows between them.
            var to = Math.Min(1, end + Overlap / steps);
            // Parallels of an arc turn as it does, and those of its tapers nearly so.
            var bulge = piece.Segment.PartBulge(to - from);
            Vertex[] ring =
            [
                new(piece.Segment.PointAt(from * piece.Length), bulge),
                piece.Segment.PointAt(to * piece.Length),
                new(Edge(piece, to * piece.Length, side), -bulge),
                Edge(piece, from * piece.Length, side),
            ];
            if (goesOn && i + 1 == steps)
            {
                var further = piece.Segment.TangentAt(piece.Length) * (Overlap * piece.End);
                ring[1] = ring[1].Point + further;
                ring[2] = new(ring[2].Point + further, ring[2].Bulge);
            }
            facets.Add(new(ring, -Outwards(piece, 0.5 * (from + end) * piece.Length, side)));
        }
    }

    /// <summary>Where an outer corner opens, a cone goes round it.</summary>
    private static void AddJoint(
        List<WallFacet> facets,
        in GroovePiece before,
        in GroovePiece after,
        int side,
        double turn
    )
    {
        var (from, to) = (Outwards(before, before.Length, side), Outwards(after, 0, side));
        var angle = Math.Atan2(from.Cross(to), from.Dot(to));
        if (angle * -side <= 0)
            return;
        var (corner, steps) = (after.Segment.Start, (int)Math.Ceiling(Math.Abs(angle) / turn));
        for (var i = 0; i < steps; i++)
        {
            var start = Turned(from, angle * i / steps);
            var end = Turned(from, angle * (i + 1) / steps);
            Vertex[] ring =
            [
                corner,
                new(corner + start * after.Start, Math.Tan(angle / steps / 4)),
                corner + end * after.Start,
            ];
            facets.Add(new(ring, -Turned(from, angle * (i + 0.5) / steps)));
        }
    }

    private static Point Edge(in GroovePiece piece, double along, int side) =>
        piece.Segment.PointAt(along)
        + Outwards(piece, along, side) * (piece.Start + piece.Growth * along);

    /// <summary>The direction from the valley to the edge, up the wall: square to the edge.</summary>
    private static Vector Outwards(in GroovePiece piece, double along, int side)
    {
        var tangent = piece.Segment.TangentAt(along);
        return tangent.Left * (side * piece.Across) - tangent * piece.Growth;
    }

    private static Vector Turned(Vector vector, double radians)
    {
        var (sin, cos) = Math.SinCos(radians);
        return vector * cos + vector.Left * sin;
    }
}
