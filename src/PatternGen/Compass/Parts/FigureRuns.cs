using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the runs of a figure from its arrangement.</summary>
internal sealed class FigureRuns
{
    private readonly Arrangement _arrangement;
    private readonly double _near;
    private readonly bool[] _isThrough;
    private readonly bool[] _isUsed;

    private FigureRuns(Arrangement arrangement, double near)
    {
        (_arrangement, _near) = (arrangement, near);
        _isThrough = [.. arrangement.Nodes.Select(IsThrough)];
        _isUsed = new bool[arrangement.Edges.Count];
    }

    /// <param name="arrangement">The figure.</param>
    /// <param name="near">How far off its curve, in mm, a piece may lie.</param>
    internal static FigureRun[] Of(Arrangement arrangement, double near)
    {
        var runs = new FigureRuns(arrangement, near);
        return
        [
            .. arrangement
                .Edges.Where(edge => !runs._isUsed[edge.Index])
                .Select(edge => runs.From(edge.Forward)),
        ];
    }

    private FigureRun From(HalfEdge halfEdge)
    {
        var first = halfEdge;
        while (IsThroughAt(first))
        {
            first = first.Previous;
            if (first == halfEdge)
                break;
        }
        var way = new List<HalfEdge>();
        var next = first;
        do
        {
            way.Add(next);
            _isUsed[next.Edge.Index] = true;
            next = next.Next;
        } while (next != first && IsThroughAt(next));
        return FigureRun.Of(way, isRound: IsThroughAt(first));
    }

    private bool IsThroughAt(HalfEdge leaving) => _isThrough[leaving.Origin.Index];

    private bool IsThrough(Node node)
    {
        if (node.Degree != 2)
            return false;
        var (one, other) = (node.Leaving[0], node.Leaving[1]);
        return SmoothJoint.GoesOn(one.Twin.Segments[^1], other.Segments[0], _near);
    }
}
