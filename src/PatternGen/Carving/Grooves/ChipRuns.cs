namespace PatternGen;

/// <summary>Makes the paths of a chip in its own frame.</summary>
internal static class ChipRuns
{
    /// <param name="roof">The chip's roof.</param>
    /// <param name="clearance">How much may be left standing, as clearance in the roof's own frame.</param>
    internal static GrooveRun[] Of(Roof roof, double clearance)
    {
        var tracer = new ValleyTracer(roof, clearance);
        if (roof.Valleys.Count == 0)
            return [IntoMiddle(roof)];
        return [.. ValleyWalks.Of(roof).Select(walk => Run(roof, tracer, walk))];
    }

    /// <summary>A round chip is a cone: it has no valley, only a deepest point, which the bit reaches down the wall.</summary>
    private static GrooveRun IntoMiddle(Roof roof) =>
        GrooveRun.Of(
            GrooveEntry.Wall,
            [
                new(roof.Outline.Vertices[0].Point, 0, 0),
                new(roof.Deepest, roof.ClearanceAt(roof.Deepest), 0),
            ]
        );

    private static GrooveRun Run(Roof roof, ValleyTracer tracer, IReadOnlyList<ValleyStep> walk)
    {
        var knots = new List<GrooveKnot>();
        var isFromTip = ValleyTracer.IsTip(roof, walk[0].From);
        // Down a wall the cone's circle grows as its distance from the outline does, so it never leaves the chip.
        if (!isFromTip)
            knots.Add(new(walk[0].FootAtStart, 0, 0));
        foreach (var step in walk)
        {
            var traced = tracer.Trace(step.Valley);
            knots.AddRange(step.IsBackwards ? Reversed(traced) : traced[..^1]);
        }
        var end = tracer.PlaceOf(walk[^1].To);
        knots.Add(new(end.Point, end.Clearance, 0));
        return GrooveRun.Of(isFromTip ? GrooveEntry.Tip : GrooveEntry.Wall, knots);
    }

    /// <summary>The corners the other way, without the last one; what a corner says of the piece after it goes to its other end.</summary>
    private static IEnumerable<GrooveKnot> Reversed(List<GrooveKnot> knots)
    {
        for (var i = knots.Count - 1; i > 0; i--)
            yield return knots[i] with
            {
                Rise = knots[i - 1].Rise,
            };
    }
}
