namespace PatternGen.Geometry;

/// <summary>A piece of a curve between two nodes of an arrangement, which meets others in its ends only.</summary>
/// <remarks>Immutable and safe to share between threads. The default value belongs to no arrangement.</remarks>
public readonly record struct Edge
{
    private readonly Arrangement _arrangement;

    internal Edge(Arrangement arrangement, int index)
    {
        _arrangement = arrangement;
        Index = index;
    }

    /// <summary>Its place in <see cref="Arrangement.Edges"/>.</summary>
    public int Index { get; }

    /// <summary>The half-edge from its start to its end; arcs of circles run counter-clockwise.</summary>
    public HalfEdge Forward => new(_arrangement, 2 * Index);

    /// <summary>The half-edge back.</summary>
    public HalfEdge Backward => new(_arrangement, 2 * Index + 1);

    /// <summary>The curves that run along it, as places in <see cref="Arrangement.Curves"/>, in ascending order.</summary>
    public IReadOnlyList<int> Sources => _arrangement.SourcesOf(Index);

    /// <summary>Whether the same face lies on both sides, so that the edge bounds nothing: a dangling end, or a bridge to one.</summary>
    public bool IsDangling => Forward.Face == Backward.Face;

    /// <summary>Returns the number and the curve, for messages.</summary>
    public override string ToString() => $"edge {Index}, {Forward.Segments[0]}";
}
