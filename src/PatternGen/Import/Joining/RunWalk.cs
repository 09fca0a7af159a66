using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Follows paired runs from end to end.</summary>
internal sealed class RunWalk(Chain[] runs, EndPairs pairs)
{
    private readonly bool[] _isWalked = new bool[runs.Length];

    /// <summary>The corners of all that a run is joined to, in the run's own direction, and whether they close; null if it was walked before.</summary>
    internal (List<Vertex> Corners, bool Closes)? From(int run)
    {
        if (_isWalked[run])
            return null;
        var (first, closes) = Beginning(RunEnd.Start(run));
        var corners = new List<Vertex>();
        var entering = first;
        do
        {
            var leaving = Append(corners, entering);
            entering = pairs.PartnerOf(leaving);
            if (entering < 0)
                corners.Add(new(pairs.PlaceOf(leaving)));
        } while (entering >= 0 && entering != first);
        return (corners, closes);
    }

    /// <summary>The end where the walk begins, found going back from a run's start: that start itself if the runs close.</summary>
    private (int First, bool Closes) Beginning(int start)
    {
        var entering = start;
        while (pairs.PartnerOf(entering) is var before and >= 0)
        {
            entering = RunEnd.Across(before);
            if (entering == start)
                return (start, true);
        }
        return (entering, false);
    }

    /// <summary>Adds the corners of a run but the last; returns the end where it is left.</summary>
    private int Append(List<Vertex> corners, int entering)
    {
        var run = RunEnd.Run(entering);
        _isWalked[run] = true;
        var walked = RunEnd.IsArriving(entering) ? runs[run].Reversed() : runs[run];
        corners.Add(new(pairs.PlaceOf(entering), walked.Span[0].Bulge));
        for (var i = 1; i < walked.Count; i++)
            corners.Add(walked.Span[i]);
        return RunEnd.Across(entering);
    }
}
