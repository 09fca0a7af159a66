namespace PatternGen.Geometry;

/// <summary>A point of an arrangement where curves end or meet.</summary>
/// <remarks>Immutable and safe to share between threads. The default value belongs to no arrangement.</remarks>
public readonly record struct Node
{
    private readonly Arrangement _arrangement;

    internal Node(Arrangement arrangement, int index)
    {
        _arrangement = arrangement;
        Index = index;
    }

    /// <summary>Its place in <see cref="Arrangement.Nodes"/>.</summary>
    public int Index { get; }

    /// <summary>Where it is.</summary>
    public Point Point => _arrangement.PointOf(Index);

    /// <summary>How many half-edges leave it: 2 where one curve goes on into the next, 4 where two cross.</summary>
    public int Degree => _arrangement.LeavingOf(Index).Length;

    /// <summary>The half-edges that leave it, counter-clockwise.</summary>
    public IReadOnlyList<HalfEdge> Leaving
    {
        get
        {
            var numbers = _arrangement.LeavingOf(Index);
            var leaving = new HalfEdge[numbers.Length];
            for (var i = 0; i < leaving.Length; i++)
                leaving[i] = new(_arrangement, numbers[i]);
            return leaving;
        }
    }

    /// <summary>Returns the number and the place, for messages.</summary>
    public override string ToString() => $"node {Index} at {Point}";
}
