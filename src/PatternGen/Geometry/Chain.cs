namespace PatternGen.Geometry;

/// <summary>An open run of lines and arcs.</summary>
/// <remarks>
/// Each corner carries the bulge of the segment that starts there; the bulge of the last one has no segment and is 0.
/// Arcs of more than a half circle are split when stored. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class Chain : SegmentRun
{
    /// <inheritdoc cref="Chain(IEnumerable{Vertex})"/>
    public Chain(params Vertex[] vertices)
        : this((IEnumerable<Vertex>)vertices) { }

    /// <summary>Creates a chain from its corners, in order.</summary>
    /// <exception cref="ArgumentException">There are fewer than two corners.</exception>
    public Chain(IEnumerable<Vertex> vertices)
        : this(VertexRun.Stored(Guard.NotNull(vertices), closed: false))
    {
        if (Span.Length < 2)
            throw new ArgumentException(
                $"A chain needs at least two corners, but has {Span.Length}.",
                nameof(vertices)
            );
    }

    internal Chain(VertexRun stored)
        : base(stored) { }

    /// <inheritdoc/>
    public override bool IsClosed => false;

    /// <summary>Where the chain starts.</summary>
    public Point Start => Span[0].Point;

    /// <summary>Where the chain ends.</summary>
    public Point End => Span[^1].Point;

    /// <summary>Returns the straight line between two points.</summary>
    public static Chain Line(Point start, Point end) => new([new Vertex(start), new Vertex(end)]);

    /// <inheritdoc cref="Of(IEnumerable{Segment})"/>
    public static Chain Of(params Segment[] segments) => Of((IEnumerable<Segment>)segments);

    /// <summary>Returns the chain of the given segments, each starting where the one before ends.</summary>
    /// <exception cref="ArgumentException">There is no segment, or one does not start where the one before ends.</exception>
    public static Chain Of(IEnumerable<Segment> segments)
    {
        var run = Guard.NotNull(segments).ToArray();
        if (run.Length == 0)
            throw new ArgumentException("A chain needs at least one segment.", nameof(segments));
        for (var i = 1; i < run.Length; i++)
            if (run[i].Start != run[i - 1].End)
                throw new ArgumentException(
                    $"Segment {i} starts at {run[i].Start}, but the one before ends at {run[i - 1].End}.",
                    nameof(segments)
                );
        return new([
            .. run.Select(segment => new Vertex(segment.Start, segment.Bulge)),
            new Vertex(run[^1].End),
        ]);
    }

    /// <summary>Returns the same run walked the other way.</summary>
    public Chain Reversed()
    {
        var vertices = Span;
        var reversed = new Vertex[vertices.Length];
        for (var i = 0; i < reversed.Length; i++)
        {
            var corner = reversed.Length - 1 - i;
            reversed[i] = new(vertices[corner].Point, corner > 0 ? -vertices[corner - 1].Bulge : 0);
        }
        return new(VertexRun.Trusted(reversed));
    }

    /// <summary>Returns the chain moved, turned, mirrored or scaled.</summary>
    public Chain Transformed(Transform transform) => new(VertexRun.Transformed(Span, transform));
}
