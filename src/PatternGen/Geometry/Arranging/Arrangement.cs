namespace PatternGen.Geometry;

/// <summary>
/// What a drawing of lines, arcs and circles divides the plane into: nodes where curves end or meet, edges between them,
/// and faces, which may have holes.
/// </summary>
/// <remarks>
/// Exact: nothing is flattened, and faces come out as contours of lines and arcs. Points within the tolerance's merge
/// distance are one node, so any number of curves may run through one. Curves that run along each other share one edge,
/// which remembers them all. An edge with the same face on both sides, such as a dangling end, is kept but bounds nothing.
/// A circle that nothing meets gets one node, on its right, where its only edge starts and ends.
/// Nodes, edges and faces are numbered from 0, in an order that depends only on the curves and their order; face 0 is the
/// outer one. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class Arrangement
{
    private readonly Curve[] _curves;
    private readonly Point[] _nodes;
    private readonly int[] _starts;
    private readonly int[] _leaving;
    private readonly int[] _places;
    private readonly FaceWalks _walks;
    private readonly int[] _faceOfWalk;
    private readonly int[] _outerWalks;
    private readonly List<int>[] _holeWalks;

    internal Arrangement(
        Curve[] curves,
        Tolerance tolerance,
        Point[] nodes,
        EdgePiece[] edges,
        LeavingOrder order
    )
    {
        _curves = curves;
        Tolerance = tolerance;
        _nodes = nodes;
        EdgePieces = edges;
        (_starts, _leaving) = (order.Starts, order.Leaving);
        _places = new int[_leaving.Length];
        for (var i = 0; i < _leaving.Length; i++)
            _places[_leaving[i]] = i;
        _walks = new(this);
        FirstContradiction = _walks.FirstContradiction();
        (_faceOfWalk, _outerWalks) = NumberFaces();
        _holeWalks = new List<int>[_outerWalks.Length];
        PlaceComponents();
        _index = new(() => new(this, _walks));
        Nodes = new Numbered<Node>(nodes.Length, i => new(this, i));
        Edges = new Numbered<Edge>(edges.Length, i => new(this, i));
        Faces = new Numbered<Face>(_outerWalks.Length, i => new(this, i));
    }

    /// <summary>The curves that it was made of, in their order; <see cref="Edge.Sources"/> are places in this list.</summary>
    public IReadOnlyList<Curve> Curves => _curves;

    /// <summary>What counts as one point: that of the extents of all curves, or a coarser or finer one where that would not tell faces apart.</summary>
    public Tolerance Tolerance { get; }

    /// <summary>The points where curves end or meet.</summary>
    public IReadOnlyList<Node> Nodes { get; }

    /// <summary>The pieces of curves between nodes.</summary>
    public IReadOnlyList<Edge> Edges { get; }

    /// <summary>The faces; the first is the outer one, without bounds.</summary>
    public IReadOnlyList<Face> Faces { get; }

    /// <summary>The face outside of everything.</summary>
    public Face OuterFace => new(this, 0);

    /// <summary>Faces with bounds, which have an area: all but the outer one.</summary>
    public IEnumerable<Face> BoundedFaces => Faces.Skip(1);

    /// <summary>Number of separate parts of the drawing that hang together; a lone circle is one.</summary>
    public int ComponentCount => _walks.RoundComponent.Length;

    /// <inheritdoc cref="Of(IEnumerable{Curve})"/>
    public static Arrangement Of(params Curve[] curves) => Of((IEnumerable<Curve>)curves);

    /// <summary>Returns the arrangement of lines, arcs and circles.</summary>
    /// <param name="curves">The curves, in any order. Those smaller than the tolerance vanish. None gives the outer face alone.</param>
    /// <returns>Two circles of radius 1 round (0, 0) and (1, 0) give 2 nodes, 4 edges and 4 faces, the outer one counted.</returns>
    /// <exception cref="ArgumentNullException">There is no list.</exception>
    /// <exception cref="PatternException">Many curves lie about the tolerance apart, so that their faces cannot be told apart.</exception>
    public static Arrangement Of(IEnumerable<Curve> curves) =>
        ArrangementMaker.Make([.. Guard.NotNull(curves)]);

    internal EdgePiece[] EdgePieces { get; }

    internal int NodeCount => _nodes.Length;

    internal int HalfEdgeCount => _leaving.Length;

    internal Point PointOf(int node) => _nodes[node];

    internal IReadOnlyList<int> SourcesOf(int edge) => Array.AsReadOnly(EdgePieces[edge].Sources);

    /// <summary>
    /// A place where what curves were found to have in common does not fit together, or null: a component that does not obey
    /// Euler's formula, or a face without area.
    /// </summary>
    internal Point? FirstContradiction { get; }

    internal int OriginOf(int halfEdge) =>
        (halfEdge & 1) == 0 ? EdgePieces[halfEdge >> 1].From : EdgePieces[halfEdge >> 1].To;

    internal ReadOnlySpan<int> LeavingOf(int node) =>
        _leaving.AsSpan(_starts[node], _starts[node + 1] - _starts[node]);

    /// <summary>The half-edge that goes on round the same face: at the target, the next one clockwise from the way back.</summary>
    internal int NextOf(int halfEdge)
    {
        var back = halfEdge ^ 1;
        var place = _places[back];
        var node = OriginOf(back);
        return _leaving[place > _starts[node] ? place - 1 : _starts[node + 1] - 1];
    }

    /// <summary>The half-edge before this one round the same face.</summary>
    internal int PreviousOf(int halfEdge)
    {
        var place = _places[halfEdge];
        var node = OriginOf(halfEdge);
        return _leaving[place + 1 < _starts[node + 1] ? place + 1 : _starts[node]] ^ 1;
    }

    internal int FaceOf(int halfEdge) => _faceOfWalk[_walks.WalkOf[halfEdge]];

    /// <summary>The walks round a face: that round its outside, unless it is the outer face, then those round its holes.</summary>
    internal IEnumerable<int> WalksRound(int face) =>
        face == 0 ? HolesOf(face) : HolesOf(face).Prepend(_outerWalks[face]);

    internal IReadOnlyList<int> HolesOf(int face) => _holeWalks[face] ?? [];

    internal double AreaOf(int face) => WalksRound(face).Sum(_walks.AreaOf);

    /// <summary>The half-edges of a walk, in order.</summary>
    internal IEnumerable<int> WalkFrom(int walk)
    {
        var first = _walks.FirstOf(walk);
        var halfEdge = first;
        do
        {
            yield return halfEdge;
            halfEdge = NextOf(halfEdge);
        } while (halfEdge != first);
    }

    /// <summary>Every walk that does not go round a component has a bounded face of its own.</summary>
    private (int[] FaceOfWalk, int[] OuterWalks) NumberFaces()
    {
        var faceOfWalk = new int[_walks.Count];
        foreach (var walk in _walks.RoundComponent)
            faceOfWalk[walk] = -1;
        var outerWalks = new List<int> { -1 };
        for (var walk = 0; walk < faceOfWalk.Length; walk++)
            if (faceOfWalk[walk] == 0)
            {
                faceOfWalk[walk] = outerWalks.Count;
                outerWalks.Add(walk);
            }
        return (faceOfWalk, [.. outerWalks]);
    }

    /// <summary>The walks round components are holes in the face that they lie in.</summary>
    private void PlaceComponents()
    {
        var faces = ComponentNesting.FacesOf(this, _walks, _faceOfWalk);
        for (var component = 0; component < faces.Length; component++)
        {
            var walk = _walks.RoundComponent[component];
            _faceOfWalk[walk] = faces[component];
            (_holeWalks[faces[component]] ??= []).Add(walk);
        }
    }
}
