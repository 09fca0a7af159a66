using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A point of a chip's side and the point of the valley below it.</summary>
/// <param name="Edge">The point of the side.</param>
/// <param name="Valley">The point of the valley.</param>
/// <param name="Depth">Distance in mm from the one to the other, as seen from above.</param>
/// <param name="Facing">Where the wall looks, a unit vector.</param>
internal readonly record struct WallFoot(Point Edge, Point Valley, double Depth, Vector Facing)
{
    /// <summary>The point of the wall so far from the side, or the valley if that is nearer.</summary>
    internal Point Inset(double edge) => Depth > edge ? Edge.Towards(Valley, edge / Depth) : Valley;
}

/// <summary>A stretch of wall in one tone.</summary>
internal sealed class Wall(WallFoot start, WallFoot end, double bulge)
{
    private readonly List<WallFoot> _feet = [start, end];
    private readonly List<double> _bulges = [bulge];

    /// <summary>Which of the tones it has.</summary>
    private readonly int _tone = ToneOf(start, end);

    /// <summary>Whether a further part starts where this ends and looks the same.</summary>
    internal bool GoesOn(WallFoot from, WallFoot to) =>
        from == _feet[^1] && ToneOf(from, to) == _tone;

    internal void Extend(WallFoot to, double bulge)
    {
        _feet.Add(to);
        _bulges.Add(bulge);
    }

    /// <summary>The ring round it where a placement takes it.</summary>
    /// <param name="placement">Where the chip lies.</param>
    /// <param name="edge">Width in mm along the side that is left free.</param>
    internal Vertex[] Ring(Transform placement, double edge)
    {
        var free = edge / placement.Scale;
        var along = _feet.Select(
            (foot, i) =>
                new Vertex(
                    placement.Apply(foot.Inset(free)),
                    i < _bulges.Count ? placement.ApplyBulge(_bulges[i]) : 0
                )
        );
        var back = Enumerable
            .Reverse(_feet)
            .Select(foot => new Vertex(placement.Apply(foot.Valley)));
        return [.. along, .. back];
    }

    /// <summary>Where it looks once placed.</summary>
    internal Vector Facing(Transform placement) =>
        placement.Apply(_feet[0].Facing + _feet[^1].Facing);

    private static int ToneOf(WallFoot from, WallFoot to) =>
        WallTones.StepOf(from.Facing + to.Facing);
}
