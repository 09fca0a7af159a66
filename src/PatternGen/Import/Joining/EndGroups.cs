using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Ends that lie together, in groups: each in the order of its first end, and the ends in theirs.</summary>
internal sealed class EndGroups
{
    private readonly int[] _ends;
    private readonly int[] _starts;

    private EndGroups(int[] ends, int[] starts)
    {
        _ends = ends;
        _starts = starts;
    }

    internal int Count => _starts.Length - 1;

    internal ReadOnlySpan<int> this[int group] => _ends.AsSpan(_starts[group].._starts[group + 1]);

    /// <summary>Groups places: each joins the nearest group whose first place lies within a distance, or begins one.</summary>
    internal static EndGroups Of(Point[] places, double distance)
    {
        using var points = new PointMerger(distance, places.Length);
        var groups = Array.ConvertAll(places, points.IdOf);
        var starts = new int[points.Points.Length + 1];
        foreach (var group in groups)
            starts[group + 1]++;
        for (var group = 1; group < starts.Length; group++)
            starts[group] += starts[group - 1];
        var next = starts.ToArray();
        var ends = new int[places.Length];
        for (var end = 0; end < groups.Length; end++)
            ends[next[groups[end]]++] = end;
        return new(ends, starts);
    }
}
