namespace PatternGen.Geometry;

/// <summary>The strands of a drawing's curves. Circles that are the same within the tolerance are one strand.</summary>
/// <remarks>
/// Equal circles would otherwise each get nodes of their own from a third curve, and where that crosses at a small angle
/// these lie farther apart than points that merge.
/// </remarks>
internal sealed class StrandSet
{
    private readonly Tolerance _tolerance;
    private readonly List<Strand> _strands = [];
    private readonly List<List<int>> _sources = [];
    private readonly Dictionary<int, List<int>> _circlesRound = [];
    private readonly PointMerger _centres;

    internal StrandSet(Curve[] curves, Tolerance tolerance)
    {
        _tolerance = tolerance;
        _centres = new(tolerance.Merge);
        for (var i = 0; i < curves.Length; i++)
            if (curves[i].IsCircle)
                AddCircle(curves[i].Circle, i);
            else
                Add(new(curves[i].Segment), i);
    }

    internal IReadOnlyList<Strand> Strands => _strands;

    /// <summary>The curves, by their place in the drawing, that a strand stands for.</summary>
    internal IReadOnlyList<int> SourcesOf(int strand) => _sources[strand];

    private void AddCircle(Circle circle, int source)
    {
        var centre = _centres.IdOf(circle.Centre);
        if (!_circlesRound.TryGetValue(centre, out var round))
            _circlesRound[centre] = round = [];
        foreach (var known in round)
            if (Math.Abs(_strands[known].Circle.Radius - circle.Radius) <= _tolerance.Merge)
            {
                _sources[known].Add(source);
                return;
            }
        round.Add(_strands.Count);
        Add(new(circle), source);
    }

    private void Add(Strand strand, int source)
    {
        _strands.Add(strand);
        _sources.Add([source]);
    }
}
