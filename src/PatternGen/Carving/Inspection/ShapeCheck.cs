using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Checks of each chip alone: how deep, how wide, how sharp, how hollow. Worked out once for all repeats of one size.</summary>
internal sealed class ShapeCheck(InspectionJob job)
{
    /// <summary>A curve that rises less than this over its chord, in mm, is cut straight: nothing is to be followed there.</summary>
    private const double StraightCut = 0.1;

    private readonly Dictionary<(int Shape, long Size), Occurrence[]> _known = [];

    internal void Run()
    {
        for (var i = 0; i < job.Layout.Chips.Count; i++)
        {
            var chip = job.Layout.Chips[i];
            foreach (var found in FaultsOf(chip))
                job.Found.Add(found with { Chip = i, Place = chip.Placement.Apply(found.Place) });
        }
    }

    /// <summary>What is wrong with a chip of this shape and size, at places in its own frame.</summary>
    private Occurrence[] FaultsOf(in LaidChip chip)
    {
        var scale = chip.Placement.Scale;
        var key = (chip.Shape, PairKey.Rounded(scale));
        if (!_known.TryGetValue(key, out var faults))
            _known.Add(key, faults = [.. Faults(job.Layout.ShapeOf(chip), scale)]);
        return faults;
    }

    private IEnumerable<Occurrence> Faults(ShapeFacts shape, double scale)
    {
        const double slack = InspectionJob.Slack;
        var limits = job.Limits;
        var roof = shape.Roof;
        var clearance = roof.Clearance * scale;
        var (width, depth) = (2 * clearance, DepthOf(job, shape, clearance));
        if (job.Stock.Thickness - depth is var floor && floor < job.Floor - slack)
            yield return Deep(FindingKind.TooDeepForStock, floor, job.Floor);
        if (job.Cutter is VBit bit && width > bit.Diameter + slack)
            yield return Deep(FindingKind.WiderThanBit, width, bit.Diameter);
        if (job.Cutter is Knife && depth > job.Cutter.Reach + slack)
            yield return Deep(FindingKind.BeyondReach, depth, job.Cutter.Reach);
        if (job.Cutter is Knife && depth > limits.ComfortableDepth + slack)
            yield return Deep(FindingKind.OverComfortableDepth, depth, limits.ComfortableDepth);
        if (
            job.Cutter is Knife knife
            && shape.Shape.Cut == ChipCut.Walls
            && knife.WallAngleFor(clearance).Degrees is var angle
            && angle < knife.HeldAt.Degrees - slack
        )
            yield return Deep(FindingKind.WallsFlattened, angle, knife.HeldAt.Degrees);
        if (width < limits.ChipWidth - slack)
            yield return Deep(FindingKind.TooNarrow, width, limits.ChipWidth);
        var tip = shape.Corners[shape.SharpestTip];
        if (
            double.RadiansToDegrees(tip.Inside) is var sharp
            && sharp < limits.TipAngle.Degrees - slack
        )
            yield return new(
                FindingKind.TipTooSharp,
                -1,
                -1,
                tip.Point,
                sharp,
                limits.TipAngle.Degrees
            );
        if (shape.TightestHollow(StraightCut / scale) is var side && side >= 0)
        {
            var hollow = shape.Sides.Side(side).Segment;
            if (hollow.Radius * scale is var radius && radius < job.HollowRadius - slack)
                yield return new(
                    FindingKind.HollowTooTight,
                    -1,
                    -1,
                    hollow.Middle,
                    radius,
                    job.HollowRadius
                );
        }

        Occurrence Deep(FindingKind kind, double value, double limit) =>
            new(kind, -1, -1, DeepestOf(shape), value, limit, clearance);
    }

    /// <summary>Depth in mm of a chip of a shape, drawn so large that its deepest point has the given clearance.</summary>
    internal static double DepthOf(InspectionJob job, ShapeFacts shape, double clearance)
    {
        var cut = shape.Shape.Cut;
        if (cut.WallAngle is { } angle)
            return clearance * Math.Tan(angle.Radians);
        return cut.IsStabbed
            ? cut.StabbedSolid(shape.Shape.Outline).Depth * clearance / shape.Roof.Clearance
            : job.Cutter.DepthFor(clearance);
    }

    /// <summary>Where the chip is deepest, in its own frame.</summary>
    private static Point DeepestOf(ShapeFacts shape) =>
        shape.Shape.Cut.Apex is { } apex
            ? shape.Shape.Outline.Vertices[apex].Point
            : shape.Roof.Deepest;
}
