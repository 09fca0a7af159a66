using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How far a motif reaches from its origin: the radius of the circle that keeps clear of it.</summary>
internal static class MotifReach
{
    internal static double Of(Pattern motif)
    {
        double reach = 0;
        foreach (var chip in motif.Chips)
            reach = Math.Max(reach, Of(chip.Outline));
        foreach (var cut in motif.LineCuts)
            reach = Math.Max(reach, Of(cut.Path) + cut.Width / 2);
        return reach;
    }

    internal static double Of(SegmentRun run) => run.Segments.Max(Of);

    private static double Of(Segment side)
    {
        var ends = Math.Max(side.Start.DistanceTo(Point.Origin), side.End.DistanceTo(Point.Origin));
        if (side.IsLine)
            return ends;
        var centre = side.Centre - Point.Origin;
        if (centre.Length == 0)
            return ends;
        // Of a circle, the farthest point lies beyond its centre; of an arc only if it goes so far.
        var farthest = Point.Origin + centre.Unit() * (centre.Length + side.Radius);
        var merge = Tolerance.For(side.Extents).Merge;
        return side.DistanceTo(farthest) <= merge ? farthest.DistanceTo(Point.Origin) : ends;
    }
}
