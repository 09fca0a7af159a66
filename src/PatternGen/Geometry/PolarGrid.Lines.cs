namespace PatternGen.Geometry;

public sealed partial class PolarGrid : ISnapGrid
{
    double ISnapGrid.LineCount(Extents room) => Rays + Farthest(room) / RingStep;

    /// <summary>Rings farther apart: there are never as many rays alone.</summary>
    string ISnapGrid.Coarser(Extents room, int most) =>
        $"rings {Guard.Text(Math.Ceiling(Farthest(room) / (most - Rays) * 1000) / 1000)} mm apart";

    IEnumerable<SegmentRun> ISnapGrid.Lines(Extents room)
    {
        var farthest = Farthest(room);
        var rounding = Tolerance.ForExtent(farthest).Merge / RingStep;
        var rings = Math.Floor(farthest / RingStep + rounding);
        for (var ring = 1; ring <= rings; ring++)
            yield return new Circle(Centre, ring * RingStep).ToContour();
        // From the first ring: all rays together would blot the centre.
        for (var ray = 0; ray < Rays && rings > 1; ray++)
            yield return Chain.Line(At(RingStep, ray), At(rings * RingStep, ray));
    }

    private double Farthest(Extents room) =>
        new[]
        {
            room.Min,
            room.Max,
            new(room.Min.X, room.Max.Y),
            new Point(room.Max.X, room.Min.Y),
        }.Max(Centre.DistanceTo);
}
