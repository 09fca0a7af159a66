using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The curves of a run, those together that were split: halves of a circle as the circle.</summary>
internal static class WholeCurves
{
    internal static IEnumerable<Curve> Of(SegmentRun run)
    {
        var tolerance = Tolerance.For(run.Extents);
        if (!run.IsClosed)
            return run.Segments.Select(segment => new Curve(segment));
        var sides = PieceJoiner.Joined([.. run.Segments], tolerance);
        return CircleOf(sides, tolerance) is { } circle
            ? [new Curve(circle)]
            : sides.Select(side => new Curve(side));
    }

    private static Circle? CircleOf(List<Segment> sides, Tolerance tolerance)
    {
        if (sides.Count != 2 || sides[0].IsLine || sides[1].IsLine)
            return null;
        var (first, second) = (sides[0], sides[1]);
        var areHalves =
            tolerance.Same(first.Centre, second.Centre)
            && Math.Abs(first.Radius - second.Radius) <= tolerance.Merge
            && first.Bulge * second.Bulge > 0;
        return areHalves && first.Radius <= Guard.MaxSize ? new(first.Centre, first.Radius) : null;
    }
}
