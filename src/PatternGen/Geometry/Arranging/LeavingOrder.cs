namespace PatternGen.Geometry;

/// <summary>The half-edges that leave each node, counter-clockwise. Half-edge 2e walks edge e forward, 2e + 1 backward.</summary>
/// <remarks>
/// Directions decide where they differ clearly. Where curves are tangent, or nearly so, directions are no better than the
/// merged points that they start from; but two such curves meet nowhere else near the node, so the middle of the shorter
/// one lies on the true side of the longer one.
/// </remarks>
internal sealed class LeavingOrder
{
    /// <summary>
    /// Directions nearer than this, in quarter turns, are compared by sides. A node that stands for a tangency lies up to
    /// 3e-5 of the radius off it, and turns both directions by as much; far larger values would only ask for more work.
    /// </summary>
    private const double Near = 1e-3;

    /// <summary>How far apart, in merge distances, the middles of pieces of one curve may come to lie.</summary>
    private const double SameWithin = 4;

    private readonly EdgePiece[] _edges;
    private readonly double _merge;
    private readonly int[] _starts;
    private readonly int[] _leaving;
    private readonly double[] _directions;
    private List<(int Kept, int Dropped)>? _same;

    private LeavingOrder(EdgePiece[] edges, int nodes, Tolerance tolerance)
    {
        _edges = edges;
        _merge = tolerance.Merge;
        _starts = new int[nodes + 1];
        _leaving = new int[2 * edges.Length];
        _directions = new double[2 * edges.Length];
    }

    /// <summary>Where the half-edges of each node start in <see cref="Leaving"/>.</summary>
    internal int[] Starts => _starts;

    internal int[] Leaving => _leaving;

    /// <summary>Pairs of edges that run along each other; of equal ones, each but the first is dropped once.</summary>
    internal IReadOnlyList<(int Kept, int Dropped)> Same => _same ?? [];

    internal static LeavingOrder Of(EdgePiece[] edges, int nodes, Tolerance tolerance)
    {
        var order = new LeavingOrder(edges, nodes, tolerance);
        order.Gather();
        for (var node = 0; node < nodes; node++)
            order.Sort(order._starts[node], order._starts[node + 1] - order._starts[node]);
        return order;
    }

    private void Gather()
    {
        foreach (var edge in _edges)
        {
            _starts[edge.From + 1]++;
            _starts[edge.To + 1]++;
        }
        for (var i = 1; i < _starts.Length; i++)
            _starts[i] += _starts[i - 1];
        var next = _starts.ToArray();
        for (var i = 0; i < _edges.Length; i++)
        {
            var edge = _edges[i];
            Put(2 * i, next[edge.From]++, edge.Leaving(forward: true));
            Put(2 * i + 1, next[edge.To]++, edge.Leaving(forward: false));
        }
    }

    private void Put(int halfEdge, int place, Segment curve)
    {
        _leaving[place] = halfEdge;
        // The chord turned back by half the sweep α, times 1 + b²: cos α is (1 - b²) / (1 + b²), sin α is 2b / (1 + b²).
        var (chord, b) = (curve.Chord, curve.Bulge);
        _directions[place] = Diamond.Of(chord * (1 - b * b) - chord.Left * (2 * b));
    }

    private void Sort(int start, int count)
    {
        if (count < 2)
            return;
        Array.Sort(_directions, _leaving, start, count);
        var (widest, isNear) = Gaps(start, count);
        if (!isNear)
            return;
        // Near directions may lie on both sides of direction 0, so the round is cut open where it is widest.
        Rotate(start, count, widest);
        for (var i = 1; i < count; i++)
            SortIn(start, start + i);
    }

    private (int Widest, bool IsNear) Gaps(int start, int count)
    {
        var (widest, gap, isNear) = (0, -1.0, false);
        for (var i = 0; i < count; i++)
        {
            var before = i > 0 ? _directions[start + i - 1] : _directions[start + count - 1] - 4;
            var here = _directions[start + i] - before;
            isNear |= here < Near;
            if (here > gap)
                (widest, gap) = (i, here);
        }
        return (widest, isNear);
    }

    private void Rotate(int start, int count, int first)
    {
        for (var i = start; i < start + first; i++)
            _directions[i] += Diamond.Turn;
        Array.Sort(_directions, _leaving, start, count);
    }

    /// <summary>Moves a half-edge back past those that it lies to the right of.</summary>
    private void SortIn(int start, int place)
    {
        var (halfEdge, direction) = (_leaving[place], _directions[place]);
        var i = place;
        for (; i > start && direction - _directions[i - 1] < Near; i--)
        {
            var side = SideOf(halfEdge, _leaving[i - 1]);
            if (side > 0)
                break;
            if (side == 0)
            {
                Merge(_leaving[i - 1], halfEdge);
                break;
            }
            (_leaving[i], _directions[i]) = (_leaving[i - 1], _directions[i - 1]);
        }
        (_leaving[i], _directions[i]) = (halfEdge, direction);
    }

    /// <summary>1 if a half-edge leaves to the left of another, -1 to the right, 0 if they are one.</summary>
    private int SideOf(int halfEdge, int other)
    {
        if (IsSame(halfEdge, other))
            return 0;
        var (a, b) = (CurveOf(halfEdge), CurveOf(other));
        return a.Chord.LengthSquared <= b.Chord.LengthSquared ? Side(a, b) : -Side(b, a);

        static int Side(Segment shorter, Segment longer) =>
            new ArcFrame(longer).Side(shorter.Middle) >= 0 ? 1 : -1;
    }

    private bool IsSame(int halfEdge, int other)
    {
        var (one, two) = (_edges[halfEdge >> 1], _edges[other >> 1]);
        return halfEdge >> 1 != other >> 1
            && TargetOf(halfEdge) == TargetOf(other)
            && one.HasRest == two.HasRest
            && CurveOf(halfEdge).Middle.DistanceTo(CurveOf(other).Middle) <= SameWithin * _merge;
    }

    private Segment CurveOf(int halfEdge) =>
        _edges[halfEdge >> 1].Leaving(forward: (halfEdge & 1) == 0);

    private int TargetOf(int halfEdge) =>
        (halfEdge & 1) == 0 ? _edges[halfEdge >> 1].To : _edges[halfEdge >> 1].From;

    private void Merge(int known, int halfEdge) => (_same ??= []).Add((known >> 1, halfEdge >> 1));
}
