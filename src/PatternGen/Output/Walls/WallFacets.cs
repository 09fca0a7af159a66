using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Cuts the walls of a roof into facets of one tone each, from the sides down to the valley.</summary>
/// <remarks>
/// A flat wall is one facet; walls beside arcs and round corners that point in are cut along lines straight down them, so
/// that each facet faces nearly one way. Its side is the exact line or arc; its foot follows the valley in chords.
/// </remarks>
internal sealed class WallFacets
{
    /// <summary>Halvings between two places at most: the foot of a wall is smooth there, and a 64th of it is enough for any picture.</summary>
    private const int MostHalvings = 6;

    /// <summary>Halvings that find where a wall begins to be wider than what is left free, to the last digits, so that side and valley are one point there.</summary>
    private const int EdgeHalvings = 50;

    /// <summary>Share of a facet's turn under which a cone is too narrow to be reached under alone.</summary>
    private const double Narrow = 0.1;

    /// <summary>Share of the clearance that is rounding: in a tip, side and valley are one point.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Directions of length 1 whose difference is smaller go on smoothly, as roofs have it.</summary>
    private const double Smooth = 1e-4;

    private readonly FacetDetail _detail;
    private readonly double _accuracy;
    private readonly double _past;
    private readonly double _near;
    private readonly List<WallFacet> _facets = [];

    private WallFacets(Roof roof, FacetDetail detail)
    {
        _detail = detail;
        _accuracy = detail.Valley * roof.Clearance;
        _past = detail.Past * roof.Clearance;
        _near = Rounding * roof.Clearance;
        WallStrips[] walls = [.. roof.Walls.Select(wall => Strips(roof, wall))];
        for (var i = 0; i < walls.Length; i++)
            walls[i].Follower = FollowerOf(walls, i);
        foreach (var wall in walls)
            AddWall(wall);
    }

    /// <summary>Returns the facets in the order of the walls.</summary>
    internal static IReadOnlyList<WallFacet> Of(Roof roof, FacetDetail detail) =>
        new WallFacets(roof, detail)._facets;

    /// <summary>The wall that goes on smoothly where this one ends, if there is one.</summary>
    private static WallStrips? FollowerOf(WallStrips[] walls, int at)
    {
        var last = walls[at].Fall(1);
        var first = at;
        while (first > 0 && walls[first - 1].Ring == walls[at].Ring)
            first--;
        var isLast = at + 1 == walls.Length || walls[at + 1].Ring != walls[at].Ring;
        var next = walls[isLast ? first : at + 1];
        var start = next.Fall(0);
        return
            (start.Inward - last.Inward).Length < Smooth
            && start.Edge.DistanceTo(last.Edge) <= Smooth * (start.Length + last.Length)
            ? next
            : null;
    }

    /// <summary>Chooses the places of a wall: the ends of its facets, and those between that its foot needs.</summary>
    private WallStrips Strips(Roof roof, RoofWall wall)
    {
        var strips = new WallStrips(roof, wall);
        var count = Math.Max(1, (int)Math.Ceiling(strips.Turn / _detail.Turn - Smooth));
        var breaks = wall.Breaks;
        var next = 1;
        strips.Add(0, isFacetEnd: true);
        for (var i = 1; i <= count; i++)
        {
            var end = (double)i / count;
            for (; breaks[next] < end; next++)
                AddUpTo(strips, breaks[next], false);
            AddUpTo(strips, end, true);
        }
        return strips;
    }

    private void AddUpTo(WallStrips strips, double share, bool isFacetEnd)
    {
        AddBetween(strips, strips.LastShare, share, MostHalvings);
        strips.Add(share, isFacetEnd);
    }

    private void AddBetween(WallStrips strips, double from, double to, int halvings)
    {
        var middle = 0.5 * (from + to);
        var chord = strips.Fall(from).Valley.Towards(strips.Fall(to).Valley, 0.5);
        if (halvings == 0 || strips.Fall(middle).Valley.DistanceTo(chord) <= _accuracy)
            return;
        AddBetween(strips, from, middle, halvings - 1);
        strips.Add(middle, isFacetEnd: false);
        AddBetween(strips, middle, to, halvings - 1);
    }

    private void AddWall(WallStrips wall)
    {
        var start = 0;
        for (var i = 1; i < wall.Count; i++)
            if (wall.IsFacetEnd(i))
            {
                AddFacet(wall, start, i);
                start = i;
            }
    }

    /// <summary>Adds a facet, or several where the wall is in between no wider than what is left free.</summary>
    private void AddFacet(WallStrips wall, int start, int end)
    {
        var facing = wall.Fall(0.5 * (wall.Share(start) + wall.Share(end))).Inward;
        var ring = new FacetRing(wall, _detail.Free, _past, _near);
        for (var i = start; i < end; i++)
        {
            var (from, to) = (wall.Share(i), wall.Share(i + 1));
            var (isIn, staysIn) = (IsWide(wall, from), IsWide(wall, to));
            if (isIn)
                ring.Add(from);
            if (isIn != staysIn)
                ring.Add(EdgeBetween(wall, isIn ? from : to, isIn ? to : from));
            if (isIn && !staysIn)
                Close(ring, facing);
        }
        if (!IsWide(wall, wall.Share(end)))
        {
            Close(ring, facing);
            return;
        }
        ring.Add(wall.Share(end));
        if (_detail.Overlaps)
            AddOverlap(ring, wall, end);
        Close(ring, facing);
    }

    private void AddOverlap(FacetRing ring, WallStrips wall, int end)
    {
        if (end + 1 < wall.Count)
        {
            if (IsWide(wall, wall.Share(end + 1)))
                ring.Add(wall.Share(end + 1));
            return;
        }
        // A cone may be far narrower than a facet, where sides go on almost smoothly: then the next wall too.
        for (var next = wall.Follower; next is not null; next = next.Follower)
        {
            if (IsWide(next, next.Share(1)))
                ring.GoOn(next, next.Share(1));
            if (next.Turn > Narrow * _detail.Turn || !next.IsCorner)
                return;
        }
    }

    private void Close(FacetRing ring, Vector facing)
    {
        if (ring.Take() is { } corners)
            _facets.Add(new(corners, facing));
    }

    private bool IsWide(WallStrips wall, double share) =>
        _detail.Free == 0 || wall.Fall(share).Length > _detail.Free;

    /// <summary>Where between a place that is wide enough and one that is not the one turns into the other.</summary>
    private double EdgeBetween(WallStrips wall, double wide, double narrow)
    {
        for (var i = 0; i < EdgeHalvings; i++)
        {
            var middle = 0.5 * (wide + narrow);
            if (IsWide(wall, middle))
                wide = middle;
            else
                narrow = middle;
        }
        return wide;
    }
}
