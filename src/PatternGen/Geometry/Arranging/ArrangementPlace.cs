namespace PatternGen.Geometry;

/// <summary>What a point of the plane lies on or in: exactly one of a node, an edge and a face.</summary>
/// <remarks>Immutable and safe to share between threads. The default value is none of them.</remarks>
public readonly record struct ArrangementPlace
{
    internal ArrangementPlace(Node node) => Node = node;

    internal ArrangementPlace(Edge edge) => Edge = edge;

    internal ArrangementPlace(Face face) => Face = face;

    /// <summary>The node that the point lies on, or null.</summary>
    public Node? Node { get; }

    /// <summary>The edge that the point lies on, away from its nodes, or null.</summary>
    public Edge? Edge { get; }

    /// <summary>The face that the point lies in, off all edges, or null.</summary>
    public Face? Face { get; }

    /// <summary>Returns which it is, for messages.</summary>
    public override string ToString() => $"{(object?)Node ?? (object?)Edge ?? Face}";
}
