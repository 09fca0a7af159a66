using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The edge of a groove at the surface, for drawings.</summary>
internal static class GrooveEdge
{
    /// <summary>Returns the edge, counter-clockwise from the start of the path.</summary>
    /// <remarks>
    /// At a place of clearance h that changes by k for each mm, the edge lies at h(±cN - kT) from the path, with T and N
    /// its tangent and normal and c² + k² = 1. Around outer corners it is an arc; inside corners it crosses itself, which
    /// an area filled by direction does not show.
    /// </remarks>
    /// <param name="path">The valley.</param>
    /// <param name="width">Width in mm where it is widest.</param>
    /// <param name="profile">How it runs out.</param>
    /// <param name="accuracy">How far the edge may be off in mm, where the path curves.</param>
    internal static Vertex[] Of(Chain path, double width, GrooveProfile profile, double accuracy)
    {
        var pieces = GroovePiece.Along(path, width, profile);
        var right = new List<Vertex>();
        var left = new List<Vertex>();
        for (var i = 0; i < pieces.Length; i++)
        {
            if (i > 0)
            {
                Join(right, pieces[i - 1], pieces[i], side: -1);
                Join(left, pieces[i - 1], pieces[i], side: 1);
            }
            AddSide(right, pieces[i], -1, accuracy);
            AddSide(left, pieces[i], 1, accuracy);
        }
        return [.. right, .. Backwards(left)];
    }

    private static void AddSide(List<Vertex> edge, in GroovePiece piece, int side, double accuracy)
    {
        var segment = piece.Segment;
        var steps = segment.IsLine
            ? 1
            : (int)Math.Ceiling(piece.Length / Math.Sqrt(8 * segment.Radius * accuracy));
        for (var step = 0; step <= steps; step++)
        {
            var along = piece.Length * step / steps;
            var clearance = piece.Start + piece.Growth * along;
            edge.Add(new(segment.PointAt(along) + Direction(piece, along, side) * clearance));
        }
    }

    /// <summary>Rounds what opens between two pieces.</summary>
    private static void Join(
        List<Vertex> edge,
        in GroovePiece before,
        in GroovePiece after,
        int side
    )
    {
        var from = Direction(before, before.Length, side);
        var to = Direction(after, 0, side);
        var turn = Math.Atan2(from.Cross(to), from.Dot(to));
        // On the left the way round an outer corner is clockwise.
        if (turn * -side > 0)
            edge[^1] = new(edge[^1].Point, Math.Tan(turn / 4));
    }

    private static Vector Direction(in GroovePiece piece, double along, int side)
    {
        var tangent = piece.Segment.TangentAt(along);
        return tangent.Left * (side * piece.Across) - tangent * piece.Growth;
    }

    /// <summary>The same run walked the other way: a bulge sits where its segment starts.</summary>
    private static IEnumerable<Vertex> Backwards(List<Vertex> run)
    {
        for (var i = run.Count - 1; i >= 0; i--)
            yield return new(run[i].Point, i > 0 ? -run[i - 1].Bulge : 0);
    }
}
