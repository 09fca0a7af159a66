namespace PatternGen.Geometry;

/// <summary>The strands of a drawing's curves. Circles that are the same within the tolerance are one strand.</summary>
internal sealed class StrandSet
{
    private readonly Tolerance _tolerance;
    private readonly List<(Strand Strand, List<int> Sources)> _strands;
    private readonly Dictionary<int, List<int>> _circlesRound = [];
    private readonly PointMerger _centres;

    private StrandSet(int curves, Tolerance tolerance)
    {
        _strands = new(curves);
        _tolerance = tolerance;
        _centres = new(tolerance.Merge);
    }

    internal static Strand[] Of(Curve[] curves, Tolerance tolerance)
    {
        var set = new StrandSet(curves.Length, tolerance);
        for (var i = 0; i < curves.Length; i++)
            if (curves[i].IsCircle)
                set.AddCircle(curves[i].Circle, i);
            else
                set.Add(curves[i].Segment, i);
        return
        [
            .. set._strands.Select(known => known.Strand with { Sources = [.. known.Sources] }),
        ];
    }

    private void Add(Segment segment, int source)
    {
        if (Math.Abs(segment.Bulge) <= 1)
        {
            Add(new Strand(segment), source);
            return;
        }
        if (segment.Start == segment.End)
            return;
        var circle = Circle.Under(segment);
        if (_tolerance.Same(segment.Start, segment.End))
            AddCircle(circle, source);
        else if (segment.Bulge > 0)
            Add(new Strand(circle, segment.Start, segment.End), source);
        else
            Add(new Strand(circle, segment.End, segment.Start), source);
    }

    private void AddCircle(Circle circle, int source)
    {
        if (2 * circle.Radius <= _tolerance.Merge)
            return;
        var centre = _centres.IdOf(circle.Centre);
        if (!_circlesRound.TryGetValue(centre, out var round))
            _circlesRound[centre] = round = [];
        foreach (var known in round)
            if (Math.Abs(_strands[known].Strand.Circle.Radius - circle.Radius) <= _tolerance.Merge)
            {
                _strands[known].Sources.Add(source);
                return;
            }
        round.Add(_strands.Count);
        Add(new Strand(circle), source);
    }

    private void Add(Strand strand, int source) => _strands.Add((strand, [source]));
}
