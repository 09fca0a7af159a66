namespace PatternGen;

/// <summary>Chips that are too deep or too wide.</summary>
internal sealed partial class RemedyFinder
{
    private ChipCut Cut => job.Layout.ShapeOf(job.Layout.Chips[_found.Chip]).Shape.Cut;

    /// <summary>What makes the chip no deeper than this.</summary>
    private IEnumerable<FoundRemedy> ForDepth(double deepest)
    {
        if (deepest <= 0)
            yield break;
        var clearance = ClearanceFor(deepest);
        if (Shrunk(clearance) is { } shrunk)
            yield return shrunk;
        var angle = Down(double.RadiansToDegrees(Math.Atan(deepest / _found.Detail)), 1);
        if (
            job.Cutter is Knife knife
            && Cut == ChipCut.Walls
            && angle >= Knife.FlattestWalls
            && angle < knife.HeldAt.Degrees
        )
            yield return new(RemedyKind.HoldKnifeAt, angle);
        if (SplitUp(clearance) is { } split)
            yield return split;
    }

    private IEnumerable<FoundRemedy> ForWidth(double widest)
    {
        if (Shrunk(widest / 2) is { } shrunk)
            yield return shrunk;
        if (SplitUp(widest / 2) is { } split)
            yield return split;
    }

    private FoundRemedy? Shrunk(double clearance)
    {
        var factor = Down(clearance / _found.Detail, 3);
        return factor > 0 ? new(RemedyKind.Shrink, factor, 2 * _found.Detail * factor) : null;
    }

    /// <summary>In a part of twice the clearance in width, no place is farther from the outline.</summary>
    private FoundRemedy? SplitUp(double clearance)
    {
        var width = Down(2 * clearance, 2);
        return !Cut.IsStabbed && width > 0
            ? new(RemedyKind.Split, width, Math.Ceiling(2 * _found.Detail / width))
            : null;
    }

    private IEnumerable<FoundRemedy> ForStock()
    {
        var depth = job.Stock.Thickness - _found.Value;
        var share = job.Limits.FloorShare;
        if (share < 1)
            yield return new(
                RemedyKind.ThickerStock,
                Up(Math.Max(depth / (1 - share), depth + job.Limits.Floor), 1)
            );
    }

    /// <summary>The largest clearance with which a chip is no deeper than this. Deeper chips never have less.</summary>
    private double ClearanceFor(double deepest)
    {
        var (low, high) = (0.0, _found.Detail);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            if (DepthFor(middle) <= deepest)
                low = middle;
            else
                high = middle;
        }
        return low;
    }

    private double DepthFor(double clearance)
    {
        var chip = job.Layout.Chips[_found.Chip];
        return ShapeCheck.DepthOf(job, job.Layout.ShapeOf(chip), clearance);
    }
}
