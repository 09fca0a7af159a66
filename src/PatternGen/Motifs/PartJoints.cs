using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Which neighbouring parts of a drawing make one chip.</summary>
internal sealed class PartJoints
{
    internal static readonly PartJoints None = new([]);

    private readonly (DrawingPart One, DrawingPart Other)[] _pairs;

    private PartJoints((DrawingPart, DrawingPart)[] pairs) => _pairs = pairs;

    /// <summary>Pairs of neighbours, the lower number first; some may not be carved any more.</summary>
    internal IReadOnlyList<(DrawingPart One, DrawingPart Other)> Pairs => _pairs;

    internal PartJoints And(
        IReadOnlyCollection<DrawingPart> parts,
        Func<DrawingPart, DrawingPart, bool> which
    )
    {
        var known = parts.ToHashSet();
        var pairs = parts.SelectMany(one =>
            one.Neighbours.Where(other => one.Number < other.Number && known.Contains(other))
                .Where(other => which(one, other))
                .Select(other => (one, other))
        );
        return new([.. _pairs, .. pairs]);
    }

    /// <summary>The parts of each chip in the order of their numbers, chips in the order of their first parts.</summary>
    internal IEnumerable<DrawingPart[]> Groups(IReadOnlyList<DrawingPart> parts)
    {
        var places = new Dictionary<DrawingPart, int>();
        for (var i = 0; i < parts.Count; i++)
            places[parts[i]] = i;
        var groups = new Groups(parts.Count);
        foreach (var (one, other) in _pairs)
            if (places.TryGetValue(one, out var first) && places.TryGetValue(other, out var second))
                groups.Join(first, second);
        return Enumerable
            .Range(0, parts.Count)
            .GroupBy(groups.Of)
            .Select(group => group.Select(i => parts[i]).ToArray());
    }
}
