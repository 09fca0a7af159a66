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

    /// <summary>Where on the wall the side begins that is collected last, and the number of corners up to there.</summary>
    private double _from;
    private int _sideStart;

    /// <summary>Goes on to a place farther along the wall.</summary>
    internal void Add(double share)
    {
        var fall = _wall.Fall(share);
        var edge = new Vertex(fall.Edge + fall.Inward * free);
        // The side of a wall is one line or arc, however often its foot bends.
        if (_side.Count > _sideStart)
            _side.RemoveRange(_sideStart, _side.Count - _sideStart);
        if (_sideStart == 0)
        {
            _from = share;
            _side.Add(edge);
            _sideStart = 1;
        }
        else
        {
            _side[^1] = new(_side[^1].Point, _wall.Bulge(_from, share));
            _side.Add(edge);
        }
        _foot.Add(fall.Valley + fall.Inward * Math.Min(past, MostPast * (fall.Length - free)));
    }

    /// <summary>Goes on into the wall that follows, up to a place of it.</summary>
    internal void GoOn(WallStrips follower, double share)
    {
        (_wall, _from, _sideStart) = (follower, 0, _side.Count);
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
        _sideStart = 0;
        _foot.Clear();
        var isArea =
            ring.Count > 2 || (ring.Count == 2 && ring.Exists(corner => corner.Bulge != 0));
        return isArea ? [.. ring] : null;
    }

    private bool IsSame(Vertex a, Vertex b) => a.Point.DistanceTo(b.Point) <= near;
}
