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

    private readonly EdgePiece[] _edges;
    private readonly int[] _starts;
    private readonly int[] _leaving;
    private readonly Scratch<double> _directions;

    private LeavingOrder(EdgePiece[] edges, int nodes)
    {
        _edges = edges;
        _starts = new int[nodes + 1];
        _leaving = new int[2 * edges.Length];
        _directions = Scratch<double>.Of(2 * edges.Length, 0);
    }

    /// <summary>Where the half-edges of each node start in <see cref="Leaving"/>.</summary>
    internal int[] Starts => _starts;

    internal int[] Leaving => _leaving;

    internal static LeavingOrder Of(EdgePiece[] edges, int nodes)
    {
        var order = new LeavingOrder(edges, nodes);
        order.Gather();
        for (var node = 0; node < nodes; node++)
            order.Sort(order._starts[node], order._starts[node + 1] - order._starts[node]);
        order._directions.Dispose();
        return order;
    }

    private void Gather()
    {
        foreach (ref readonly var edge in _edges.AsSpan())
        {
            _starts[edge.From + 1]++;
            _starts[edge.To + 1]++;
        }
        for (var i = 1; i < _starts.Length; i++)
            _starts[i] += _starts[i - 1];
        var next = _starts.ToArray();
        for (var i = 0; i < _edges.Length; i++)
        {
            ref readonly var edge = ref _edges[i];
            var curve = edge.Curve;
            Put(2 * i, next[edge.From]++, curve.Chord, curve.Bulge);
            if (edge.HasRest)
                curve = edge.Rest;
            Put(2 * i + 1, next[edge.To]++, -curve.Chord, -curve.Bulge);
        }
    }

    private void Put(int halfEdge, int place, Vector chord, double b)
    {
        _leaving[place] = halfEdge;
        // The chord turned back by half the sweep α, times 1 + b²: cos α is (1 - b²) / (1 + b²), sin α is 2b / (1 + b²).
        _directions.Span[place] = Diamond.Of(chord * (1 - b * b) - chord.Left * (2 * b));
    }

    private void Sort(int start, int count)
    {
        if (count < 2)
            return;
        var directions = _directions.Span.Slice(start, count);
        var leaving = _leaving.AsSpan(start, count);
        KeySort.Sort(directions, leaving);
        var (widest, isNear) = Gaps(directions);
        if (!isNear)
            return;
        // Near directions may lie on both sides of direction 0, so the round is cut open where it is widest.
        for (var i = 0; i < widest; i++)
            directions[i] += Diamond.Turn;
        KeySort.Sort(directions, leaving);
        for (var i = 1; i < count; i++)
            SortIn(directions, leaving, i);
    }

    /// <summary>The place after the widest gap between neighbouring directions, and whether any gap is small.</summary>
    private static (int Widest, bool IsNear) Gaps(ReadOnlySpan<double> directions)
    {
        var (widest, gap, isNear) = (0, -1.0, false);
        var before = directions[^1] - Diamond.Turn;
        for (var i = 0; i < directions.Length; i++)
        {
            var here = directions[i] - before;
            isNear |= here < Near;
            if (here > gap)
                (widest, gap) = (i, here);
            before = directions[i];
        }
        return (widest, isNear);
    }

    /// <summary>Moves a half-edge back past those that it lies to the right of.</summary>
    private void SortIn(Span<double> directions, Span<int> leaving, int place)
    {
        var (halfEdge, direction) = (leaving[place], directions[place]);
        var i = place;
        for (; i > 0 && direction - directions[i - 1] < Near; i--)
        {
            if (IsLeftOf(halfEdge, leaving[i - 1]))
                break;
            (leaving[i], directions[i]) = (leaving[i - 1], directions[i - 1]);
        }
        (leaving[i], directions[i]) = (halfEdge, direction);
    }

    private bool IsLeftOf(int halfEdge, int other)
    {
        var (a, b) = (CurveOf(halfEdge), CurveOf(other));
        return a.Chord.LengthSquared <= b.Chord.LengthSquared ? Side(a, b) >= 0 : Side(b, a) < 0;

        static double Side(Segment shorter, Segment longer) =>
            new ArcFrame(longer).Side(shorter.Middle);
    }

    private Segment CurveOf(int halfEdge) =>
        _edges[halfEdge >> 1].Leaving(forward: (halfEdge & 1) == 0);
}
