namespace PatternGen.Geometry;

/// <summary>A run of lines and arcs, each starting where the one before ends: what a closed <see cref="Contour"/> and an open <see cref="Chain"/> have in common.</summary>
/// <remarks>
/// Each corner carries the bulge of the segment that starts there. Arcs of more than a half circle are split when
/// stored. Immutable and safe to share between threads.
/// </remarks>
public abstract partial class SegmentRun
{
    private readonly Vertex[] _vertices;

    private protected SegmentRun(VertexRun stored) => _vertices = stored.Corners;

    /// <summary>The corners, each with the bulge of the segment that starts there; the last one of an open run has bulge 0.</summary>
    public IReadOnlyList<Vertex> Vertices => _vertices;

    /// <summary>The segments, in order; in a closed run the last one ends where the first one starts.</summary>
    public IEnumerable<Segment> Segments
    {
        get
        {
            for (var i = 0; i < Count; i++)
                yield return At(i);
        }
    }

    /// <summary>Number of segments: as many as corners in a closed run, one less in an open one.</summary>
    public int Count => IsClosed ? _vertices.Length : _vertices.Length - 1;

    /// <summary>Whether the run ends where it starts: true for a contour, false for a chain.</summary>
    public abstract bool IsClosed { get; }

    internal ReadOnlySpan<Vertex> Span => _vertices;

    /// <summary>Returns the segment at a place in the run.</summary>
    /// <param name="index">From 0 to <see cref="Count"/> - 1; segment 2 starts at corner 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such segment.</exception>
    public Segment SegmentAt(int index)
    {
        Guard.Within(index, 0, Count - 1);
        return At(index);
    }

    /// <summary>The segment at a place that is known to exist.</summary>
    internal Segment At(int index)
    {
        var next = index + 1 < _vertices.Length ? index + 1 : 0;
        return new(_vertices[index].Point, _vertices[next].Point, _vertices[index].Bulge);
    }

    /// <summary>Copies the segments into an array, for work that visits them often.</summary>
    internal Segment[] ToSegments()
    {
        var segments = new Segment[Count];
        for (var i = 0; i < segments.Length; i++)
            segments[i] = At(i);
        return segments;
    }
}
