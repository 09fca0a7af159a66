using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Makes runs of corners as files have them: some twice.</summary>
internal static class CleanRun
{
    /// <summary>Returns the run, or one without its doubled corners; null if nothing is left.</summary>
    /// <param name="run">A run.</param>
    /// <param name="merge">Corners nearer than this are one.</param>
    internal static SegmentRun? Of(SegmentRun run, double merge)
    {
        for (var i = 0; i < run.Count; i++)
            if (run.At(i).Chord.Length <= merge)
                return Of(run.Vertices, run.IsClosed, merge);
        return run;
    }

    /// <summary>Returns the run with these corners, doubled ones once; null if nothing is left.</summary>
    internal static SegmentRun? Of(IReadOnlyList<Vertex> corners, bool isClosed, double merge)
    {
        var count = isClosed ? corners.Count : corners.Count - 1;
        var kept = new List<Vertex>(corners.Count);
        for (var i = 0; i < count; i++)
        {
            var next = corners[i + 1 < corners.Count ? i + 1 : 0];
            if (corners[i].Point.DistanceTo(next.Point) > merge)
                kept.Add(corners[i]);
        }
        if (!isClosed && kept.Count > 0)
            kept.Add(new(corners[^1].Point));
        if (kept.Count < 2)
            return null;
        return isClosed ? new Contour(kept) : new Chain(kept);
    }
}
