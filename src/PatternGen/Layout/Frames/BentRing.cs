namespace PatternGen;

/// <summary>A band of a frame that bends round its corners.</summary>
internal sealed class BentRing
{
    private readonly BentBand _bent;
    private readonly BandPlan _plan;

    /// <param name="outline">The frame.</param>
    /// <param name="ring">The band.</param>
    /// <param name="radius">Radius of the corners at the outer edge in mm.</param>
    internal BentRing(FrameOutline outline, FrameRing ring, double radius)
    {
        _bent = BentBand.Along(
            outline.Rounded(0, radius),
            ring.Band,
            ring.From,
            ring.Fitting,
            BentStyle.Default
        );
        Length = _bent.Line.Length;
        _plan = Symmetric(outline, ring) ?? _bent.Solve();
    }

    /// <summary>The way round, in mm, where the repeats are as long as the pitch.</summary>
    internal double Length { get; }

    internal Fit Fit => _plan.Fit;

    internal PatternNode Draw() => _bent.Draw(_plan);

    /// <summary>
    /// So many repeats that from the middle of side 1, where the first begins, to each mirror of the outline there are
    /// whole or half ones; null if that would need a pitch beyond its limits.
    /// </summary>
    private BandPlan? Symmetric(FrameOutline outline, FrameRing ring)
    {
        // Refuses what is asked of ends that are none.
        _ = _bent.Solve();
        var mirrors = outline.Mirrors;
        var question = ring.Fitting.Ask(Length / mirrors, ring.Band, RepeatParity.Any, extra: 0);
        return question.Nearest() is { } each
            ? ClosedFit.Plan(mirrors * each, Length, question.Nominal)
            : null;
    }
}
