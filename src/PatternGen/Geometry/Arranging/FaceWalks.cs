namespace PatternGen.Geometry;

/// <summary>The walks along half-edges that go round each face and each component.</summary>
internal sealed class FaceWalks
{
    private readonly Arrangement _arrangement;
    private readonly int[] _walkOf;
    private readonly List<int> _firstOf;
    private readonly List<double> _areas;
    private readonly List<int> _componentOf;

    internal FaceWalks(Arrangement arrangement)
    {
        _arrangement = arrangement;
        // As many as there are if all hangs together, by Euler's formula.
        var walks = Math.Max(1, 2 - arrangement.NodeCount + arrangement.EdgePieces.Length);
        (_firstOf, _areas, _componentOf) = (new(walks), new(walks), new(walks));
        _walkOf = new int[arrangement.HalfEdgeCount];
        Array.Fill(_walkOf, -1);
        for (var halfEdge = 0; halfEdge < _walkOf.Length; halfEdge++)
            if (_walkOf[halfEdge] < 0)
                Walk(halfEdge);
        RoundComponent = OuterWalks(Components());
    }

    /// <summary>The walk that each half-edge is part of.</summary>
    internal int[] WalkOf => _walkOf;

    internal int Count => _firstOf.Count;

    /// <summary>For each component, the walk round its outside.</summary>
    internal int[] RoundComponent { get; }

    internal int FirstOf(int walk) => _firstOf[walk];

    /// <summary>Area that a walk encloses on its left: positive, or for one round a component 0 or negative.</summary>
    internal double AreaOf(int walk) => _areas[walk];

    internal int ComponentOf(int walk) => _componentOf[walk];

    /// <summary>
    /// The start of a component whose nodes − edges + walks are not 2, as Euler has it, or of a face whose walk encloses no
    /// area; null if there is none.
    /// </summary>
    internal Point? FirstContradiction()
    {
        var sums = new int[RoundComponent.Length];
        foreach (var component in _componentOf)
            sums[component]++;
        for (var halfEdge = 0; halfEdge < _walkOf.Length; halfEdge += 2)
            sums[_componentOf[_walkOf[halfEdge]]]--;
        for (var node = 0; node < _arrangement.NodeCount; node++)
            sums[_componentOf[_walkOf[_arrangement.LeavingOf(node)[0]]]]++;
        for (var walk = 0; walk < Count; walk++)
        {
            var component = _componentOf[walk];
            if (sums[component] != 2 || (!(_areas[walk] > 0) && walk != RoundComponent[component]))
                return _arrangement.PointOf(_arrangement.OriginOf(_firstOf[walk]));
        }
        return null;
    }

    private void Walk(int first)
    {
        // Near the walk, so that areas keep their digits far from the drawing's origin.
        var origin = _arrangement.PointOf(_arrangement.OriginOf(first));
        double area = 0;
        var halfEdge = first;
        do
        {
            _walkOf[halfEdge] = _firstOf.Count;
            var swept = _arrangement.EdgePieces[halfEdge >> 1].SweptFrom(origin);
            area += (halfEdge & 1) == 0 ? swept : -swept;
            halfEdge = _arrangement.NextOf(halfEdge);
        } while (halfEdge != first);
        _firstOf.Add(first);
        _areas.Add(area);
    }

    /// <summary>The component of each walk, and how many there are.</summary>
    private int Components()
    {
        var groups = new Groups(Count);
        for (var halfEdge = 0; halfEdge < _walkOf.Length; halfEdge += 2)
            groups.Join(_walkOf[halfEdge], _walkOf[halfEdge + 1]);
        var count = 0;
        for (var walk = 0; walk < Count; walk++)
        {
            var first = groups.Of(walk);
            _componentOf.Add(first == walk ? count++ : _componentOf[first]);
        }
        return count;
    }

    /// <summary>
    /// Exactly one walk goes round the outside of a component, the one with the least area: all others have their face inside
    /// and so a positive one. Asking for the sign would hang on rounding where a component encloses nothing.
    /// </summary>
    private int[] OuterWalks(int components)
    {
        var outer = new int[components];
        Array.Fill(outer, -1);
        for (var walk = 0; walk < Count; walk++)
        {
            ref var least = ref outer[_componentOf[walk]];
            if (least < 0 || _areas[walk] < _areas[least])
                least = walk;
        }
        return outer;
    }
}
