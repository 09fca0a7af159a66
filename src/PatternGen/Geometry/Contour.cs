namespace PatternGen.Geometry;

/// <summary>A closed ring of lines and arcs. Counter-clockwise contours hold what lies inside; clockwise ones are holes.</summary>
/// <remarks>
/// Each corner carries the bulge of the segment that starts there; the last one's segment leads back to the first.
/// Arcs of more than a half circle are split when stored. A contour may be wrong (crossing itself, with a doubled
/// corner): Validate says how and where. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class Contour : SegmentRun
{
    /// <inheritdoc cref="Contour(IEnumerable{Vertex})"/>
    public Contour(params Vertex[] vertices)
        : this((IEnumerable<Vertex>)vertices) { }

    /// <summary>Creates a contour from its corners, in order.</summary>
    /// <param name="vertices">At least two corners; the first one is not repeated at the end. Two corners need an arc to hold any area.</param>
    /// <exception cref="ArgumentException">There are fewer than two corners.</exception>
    public Contour(IEnumerable<Vertex> vertices)
        : this(VertexRun.Stored(Guard.NotNull(vertices), closed: true))
    {
        if (Count < 2)
            throw new ArgumentException(
                $"A contour needs at least two corners, but has {Count}.",
                nameof(vertices)
            );
    }

    internal Contour(VertexRun stored)
        : base(stored) { }

    /// <inheritdoc/>
    public override bool IsClosed => true;

    /// <inheritdoc cref="Of(IEnumerable{Segment})"/>
    public static Contour Of(params Segment[] segments) => Of((IEnumerable<Segment>)segments);

    /// <summary>Returns the contour of the given segments, each starting where the one before ends, and the first where the last ends.</summary>
    /// <exception cref="ArgumentException">There are fewer than two segments, or one does not start where the one before ends.</exception>
    public static Contour Of(IEnumerable<Segment> segments)
    {
        var ring = Guard.NotNull(segments).ToArray();
        for (var i = 0; i < ring.Length; i++)
        {
            var before = ring[(i + ring.Length - 1) % ring.Length];
            if (ring[i].Start != before.End)
                throw new ArgumentException(
                    $"Segment {i} starts at {ring[i].Start}, but the one before ends at {before.End}.",
                    nameof(segments)
                );
        }
        return new(ring.Select(segment => new Vertex(segment.Start, segment.Bulge)));
    }

    /// <inheritdoc cref="Polygon(IEnumerable{Point})"/>
    public static Contour Polygon(params Point[] corners) => Polygon((IEnumerable<Point>)corners);

    /// <summary>Returns the straight-sided contour with the given corners.</summary>
    /// <exception cref="ArgumentException">There are fewer than three corners.</exception>
    public static Contour Polygon(IEnumerable<Point> corners)
    {
        var vertices = Guard.NotNull(corners).Select(corner => new Vertex(corner)).ToArray();
        return vertices.Length >= 3
            ? new(vertices)
            : throw new ArgumentException(
                $"A polygon needs at least three corners, but has {vertices.Length}.",
                nameof(corners)
            );
    }

    /// <summary>Returns the counter-clockwise upright rectangle between two opposite corners.</summary>
    /// <exception cref="ArgumentException">The corners lie on one upright or level line.</exception>
    public static Contour Rectangle(Point corner, Point opposite)
    {
        if (corner.X == opposite.X || corner.Y == opposite.Y)
            throw new ArgumentException(
                $"A rectangle has two sides, but {corner} and {opposite} span none.",
                nameof(opposite)
            );
        var (left, right) = (Math.Min(corner.X, opposite.X), Math.Max(corner.X, opposite.X));
        var (low, high) = (Math.Min(corner.Y, opposite.Y), Math.Max(corner.Y, opposite.Y));
        return Polygon(new(left, low), new(right, low), new(right, high), new(left, high));
    }

    /// <summary>Returns the same ring walked the other way, from the same first corner.</summary>
    public Contour Reversed()
    {
        var vertices = Span;
        var reversed = new Vertex[vertices.Length];
        for (var i = 0; i < reversed.Length; i++)
        {
            // The segment that starts at this corner going back is the one that ended there.
            var corner = (reversed.Length - i) % reversed.Length;
            var arriving = (corner + reversed.Length - 1) % reversed.Length;
            reversed[i] = new(vertices[corner].Point, -vertices[arriving].Bulge);
        }
        return new(VertexRun.Trusted(reversed));
    }

    /// <summary>Returns the same ring begun at another corner.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such corner.</exception>
    public Contour StartingAt(int index)
    {
        Guard.Within(index, 0, Count - 1);
        return new(VertexRun.Trusted([.. Span[index..], .. Span[..index]]));
    }

    /// <summary>Returns this contour, reversed if it is clockwise.</summary>
    public Contour CounterClockwise() => SignedArea >= 0 ? this : Reversed();

    /// <summary>Returns the contour moved, turned, mirrored or scaled. A mirrored contour keeps its order of corners and so changes direction.</summary>
    public Contour Transformed(Transform transform) => new(VertexRun.Transformed(Span, transform));
}
