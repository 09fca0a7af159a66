using PatternGen.Geometry;

namespace PatternGen;

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
