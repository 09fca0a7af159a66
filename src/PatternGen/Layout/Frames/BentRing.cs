using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band of a frame that bends round its corners.</summary>
internal sealed class BentRing
{
    private readonly BentBand _bent;
    private readonly BandPlan _plan;

    /// <param name="frame">The frame.</param>
    /// <param name="ring">The band.</param>
    /// <param name="radius">Radius of the corners at the outer edge in mm.</param>
    internal BentRing(Frame frame, FrameRing ring, double radius)
    {
        var outline = frame.Outline;
        for (var corner = 0; corner < outline.Sides.Count; corner++)
            RefuseOffTheWood(frame, corner, ring, radius);
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

    private static void RefuseOffTheWood(Frame frame, int corner, FrameRing ring, double radius)
    {
        var side = frame.Outline.Sides[corner];
        var rounding = Tolerance.ForExtent(side.Length).Merge;
        var isOver =
            frame.HasOpening
            && side.AlongMitre(ring.To, radius)
                > side.AlongMitre(frame.MemberWidth, frame.CornerRadius) + rounding;
        var isUnder =
            side.AlongMitre(ring.From, radius) < side.AlongMitre(0, frame.CornerRadius) - rounding;
        if (isOver || isUnder)
            throw new PatternException(
                $"Bent round a radius of {Guard.Text(radius)} mm, a band from {Guard.Text(ring.From)} to {Guard.Text(ring.To)} mm from the edge would "
                    + (isOver ? "run into the opening" : "run off the wood")
                    + " at the corner.",
                FrameOutline.PointAt(side, isOver ? frame.MemberWidth : 0),
                [
                    $"wood with the same radius (Rounded({Guard.Text(radius)}))",
                    isOver == side.First > 0 ? "a smaller radius" : "a larger radius",
                    isOver ? "wider members" : "a band farther from the edge",
                ]
            );
    }

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
