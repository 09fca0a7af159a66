using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Cuts a chip in two along an upright line, as the end of a band does.</summary>
internal static class UprightCut
{
    /// <summary>Returns the part right of the line, closed along it; null if nothing lies there.</summary>
    internal static Contour? Right(Contour outline, double x)
    {
        var mirror = Transform.MirrorLeftRight(x);
        return Left(outline.Transformed(mirror), x)?.Transformed(mirror);
    }

    /// <summary>Returns the part left of the line, closed along it; null if nothing lies there.</summary>
    internal static Contour? Left(Contour outline, double x)
    {
        var ring = new List<Vertex>();
        Point? end = null;
        foreach (var piece in outline.Segments.SelectMany(side => Pieces(side, x)))
        {
            if (piece.Middle.X >= x)
                continue;
            // Where a piece is missing, the cut itself is the side.
            if (end is { } open && open != piece.Start)
                ring.Add(new(open));
            ring.Add(new(piece.Start, piece.Bulge));
            end = piece.End;
        }
        if (end is { } last && last != ring[0].Point)
            ring.Add(new(last));
        return ring.Count >= 2 ? new(ring) : null;
    }

    /// <summary>A side in parts that each lie on one side of the line; parts end exactly on it.</summary>
    internal static IEnumerable<Segment> Pieces(Segment side, double x)
    {
        var extents = side.Extents.Grown(1);
        var line = new Segment(new(x, extents.Min.Y), new(x, extents.Max.Y));
        var meeting = side.Intersect(line);
        var start = side.Start;
        double walked = 0;
        if (meeting.Kind is IntersectionKind.One or IntersectionKind.Two)
            foreach (var crossing in meeting.Points)
            {
                var at = side.LengthAt(crossing);
                Point onLine = new(x, crossing.Y);
                if (onLine == start || onLine == side.End)
                    continue;
                yield return new(start, onLine, side.PartBulge((at - walked) / side.Length));
                (start, walked) = (onLine, at);
            }
        yield return new(start, side.End, side.PartBulge(1 - walked / side.Length));
    }
}
