using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Names how cuts run to the grain.</summary>
internal static class GrainRuns
{
    /// <summary>In radians: within it a cut counts as along or across the grain.</summary>
    private const double Near = 10 * Math.PI / 180;

    /// <summary>What a cosine that misses the limit by less than this misses by rounding.</summary>
    private const double Noise = 1e-9;

    /// <param name="direction">Of the cut, of length 1.</param>
    /// <param name="grain">Either way along the grain, of length 1.</param>
    /// <param name="withGrain">As the carver's view rates it.</param>
    internal static GrainRun Of(Vector direction, Vector grain, double withGrain)
    {
        var along = Math.Abs(direction.Dot(grain));
        if (along >= Math.Cos(Near) - Noise)
            return GrainRun.Along;
        if (along <= Math.Sin(Near) + Noise)
            return GrainRun.Across;
        return withGrain > 0 ? GrainRun.With : GrainRun.Against;
    }
}
