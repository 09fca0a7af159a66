namespace PatternGen;

/// <summary>What the paths of a pattern add up to.</summary>
internal sealed class GrooveTally
{
    internal long Paths { get; private set; }

    internal long Places { get; private set; }

    internal long WallEntries { get; private set; }

    internal long Plunges { get; private set; }

    internal long LeftOut { get; private set; }

    /// <summary>The greatest clearance that a path reaches.</summary>
    internal double Reached { get; private set; }

    /// <summary>The greatest clearance of what is cut.</summary>
    internal double Clearance { get; private set; }

    /// <param name="runs">The paths of a chip or line cut; null if it is left out.</param>
    /// <param name="scale">How it is scaled.</param>
    /// <param name="clearance">Its own clearance where it lies.</param>
    internal void Add(ReadOnlySpan<GrooveRun> runs, double scale, double clearance)
    {
        if (runs.IsEmpty)
        {
            LeftOut++;
            return;
        }
        Clearance = Math.Max(Clearance, clearance);
        foreach (var run in runs)
        {
            Paths++;
            Places += run.Count;
            Reached = Math.Max(Reached, run.Deepest * scale);
            if (run.Entry == GrooveEntry.Wall)
                WallEntries++;
            if (run.Entry == GrooveEntry.Plunge)
                Plunges++;
        }
    }
}
