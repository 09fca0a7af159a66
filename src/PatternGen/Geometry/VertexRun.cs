namespace PatternGen.Geometry;

/// <summary>Corners as runs keep them: finite, with arcs of at most a half circle, and no bulge at the end of an open run.</summary>
/// <remarks>A type of its own, so that no caller's array gets into a run without the split.</remarks>
internal readonly struct VertexRun
{
    /// <summary>
    /// An arc that rises less than this, in mm, is stored as a line: a thousandth of what merges. Flatter ones have radii
    /// that doubles no longer tell from infinity.
    /// </summary>
    private const double LeastRise = 1e-12;

    private VertexRun(Vertex[] corners) => Corners = corners;

    internal Vertex[] Corners { get; }

    /// <summary>Takes over corners that are known to be as runs keep them.</summary>
    internal static VertexRun Trusted(Vertex[] corners) => new(corners);

    /// <summary>Copies the corners, with arcs of more than a half circle split in two and arcs that hardly rise as lines.</summary>
    internal static VertexRun Stored(IEnumerable<Vertex> vertices, bool closed)
    {
        var given = vertices.ToArray();
        var stored = new List<Vertex>(given.Length);
        for (var i = 0; i < given.Length; i++)
        {
            var isLast = i == given.Length - 1;
            if (isLast && !closed)
            {
                // Nothing starts at the end of an open run.
                stored.Add(new(given[i].Point));
                break;
            }
            var next = given[(i + 1) % given.Length].Point;
            var bulge = Stored(given[i].Bulge, given[i].Point.DistanceTo(next));
            Guard.Bulge(given[i].Point, next, bulge, nameof(vertices));
            var (first, second) = new Segment(given[i].Point, next, bulge).Halves();
            stored.Add(new(first.Start, first.Bulge));
            if (second is { } half)
                stored.Add(new(half.Start, half.Bulge));
        }
        return new([.. stored]);
    }

    private static double Stored(double bulge, double chord) =>
        Math.Abs(bulge) * chord / 2 < LeastRise ? 0 : bulge;

    internal static VertexRun Transformed(ReadOnlySpan<Vertex> vertices, Transform transform)
    {
        var moved = new Vertex[vertices.Length];
        for (var i = 0; i < moved.Length; i++)
            moved[i] = new(
                Guard.Moved(
                    transform.Apply(vertices[i].Point),
                    vertices[i].Point,
                    nameof(transform)
                ),
                transform.ApplyBulge(vertices[i].Bulge)
            );
        // The corner after an open run's last one is no matter: that one has no bulge.
        for (var i = 0; i < moved.Length; i++)
            Guard.Bulge(
                moved[i].Point,
                moved[(i + 1) % moved.Length].Point,
                moved[i].Bulge,
                nameof(transform)
            );
        return new(moved);
    }

    /// <summary>Turns a closed run round in place; it keeps its first corner.</summary>
    internal static void ReverseRing(Span<Vertex> ring)
    {
        ring.Reverse();
        // A bulge sits where its segment starts, and that is now the corner before.
        var first = ring[^1].Point;
        for (var i = ring.Length - 1; i > 0; i--)
            ring[i] = new(ring[i - 1].Point, -ring[i].Bulge);
        ring[0] = new(first, -ring[0].Bulge);
    }
}
