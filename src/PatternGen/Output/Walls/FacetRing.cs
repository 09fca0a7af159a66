using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Collects the corners of one facet: down the side, and back along the valley.</summary>
/// <param name="wall">The wall.</param>
/// <param name="free">Width along the side that is left free.</param>
/// <param name="past">How far it reaches past the valley.</param>
/// <param name="near">Points nearer than this are one.</param>
internal sealed class FacetRing(WallStrips wall, double free, double past, double near)
{
    /// <summary>Share of a wall's width that it reaches past the valley at most: in a tip, where walls have none, more would be off the chip.</summary>
    private const double MostPast = 0.1;

    private readonly List<Vertex> _side = [];
    private readonly List<Point> _foot = [];
    private WallStrips _wall = wall;
    private double _last;

    /// <summary>Goes on to a place farther along the wall.</summary>
    internal void Add(double share)
    {
        var fall = _wall.Fall(share);
        if (_side.Count > 0)
            _side[^1] = new(_side[^1].Point, _wall.Bulge(_last, share));
        _side.Add(new(fall.Edge + fall.Inward * free));
        _foot.Add(fall.Valley + fall.Inward * Math.Min(past, MostPast * fall.Length));
        _last = share;
    }

    /// <summary>Goes on into the wall that follows, up to a place of it.</summary>
    internal void GoOn(WallStrips follower, double share)
    {
        (_wall, _last) = (follower, 0);
        Add(share);
    }

    /// <summary>Returns the corners collected, each once, and starts anew; null if they enclose nothing.</summary>
    internal Vertex[]? Take()
    {
        var ring = new List<Vertex>(2 * _side.Count);
        foreach (var corner in _side.Concat(Enumerable.Reverse(_foot).Select(at => new Vertex(at))))
            if (ring.Count == 0 || !IsSame(ring[^1], corner))
                ring.Add(corner);
            else
                ring[^1] = corner;
        while (ring.Count > 1 && IsSame(ring[^1], ring[0]))
            ring.RemoveAt(ring.Count - 1);
        _side.Clear();
        _foot.Clear();
        var isArea =
            ring.Count > 2 || (ring.Count == 2 && ring.Exists(corner => corner.Bulge != 0));
        return isArea ? [.. ring] : null;
    }

    private bool IsSame(Vertex a, Vertex b) => a.Point.DistanceTo(b.Point) <= near;
}
