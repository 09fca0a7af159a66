namespace PatternGen.Geometry;

/// <summary>An edge of an arrangement walked in one direction, with a face on its left.</summary>
/// <remarks>Immutable and safe to share between threads. The default value belongs to no arrangement.</remarks>
public readonly record struct HalfEdge
{
    private readonly Arrangement _arrangement;

    internal HalfEdge(Arrangement arrangement, int index)
    {
        _arrangement = arrangement;
        Index = index;
    }

    /// <summary>The edge.</summary>
    public Edge Edge => new(_arrangement, Index >> 1);

    /// <summary>Whether it runs as the edge does, from its start to its end.</summary>
    public bool IsForward => (Index & 1) == 0;

    /// <summary>Where it starts.</summary>
    public Node Origin => new(_arrangement, _arrangement.OriginOf(Index));

    /// <summary>Where it ends; on a circle with one node, where it starts.</summary>
    public Node Target => Twin.Origin;

    /// <summary>The same edge walked the other way.</summary>
    public HalfEdge Twin => new(_arrangement, Index ^ 1);

    /// <summary>The half-edge that goes on round the same face; at a dangling end, the twin.</summary>
    public HalfEdge Next => new(_arrangement, _arrangement.NextOf(Index));

    /// <summary>The half-edge before, round the same face.</summary>
    public HalfEdge Previous => new(_arrangement, _arrangement.PreviousOf(Index));

    /// <summary>The face on the left.</summary>
    public Face Face => new(_arrangement, _arrangement.FaceOf(Index));

    /// <summary>The curve, from origin to target: one segment, or two where it is more than a half circle.</summary>
    public IReadOnlyList<Segment> Segments
    {
        get
        {
            var piece = _arrangement.EdgePieces[Index >> 1];
            if (!piece.HasRest)
                return [IsForward ? piece.Curve : piece.Curve.Reversed()];
            return IsForward
                ? [piece.Curve, piece.Rest]
                : [piece.Rest.Reversed(), piece.Curve.Reversed()];
        }
    }

    internal int Index { get; }

    /// <summary>Returns the edge and the curve, for messages.</summary>
    public override string ToString() => $"half-edge of edge {Index >> 1}, {Segments[0]}";
}
