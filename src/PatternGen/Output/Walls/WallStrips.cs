namespace PatternGen;

/// <summary>Places along a wall, in order, at which it is cut or its foot bends.</summary>
internal sealed class WallStrips
{
    /// <summary>Places nearer than this share of the wall are one: a valley's end that rounding sets beside the end of a facet.</summary>
    private const double Same = 1e-9;

    private readonly RoofWall _wall;
    private readonly double _bend;
    private readonly List<double> _shares = [];
    private readonly List<bool> _facetEnds = [];

    internal WallStrips(Roof roof, RoofWall wall)
    {
        _wall = wall;
        if (wall.IsCorner)
        {
            var (first, last) = (wall.FallAt(0).Inward, wall.FallAt(1).Inward);
            // Round a corner that points in the wall turns clockwise as the outline runs on.
            _bend = Math.Atan2(first.Cross(last), first.Dot(last));
            if (_bend > 0)
                _bend -= Math.Tau;
        }
        else
        {
            var ring = wall.Ring == 0 ? roof.Outline : roof.Holes[wall.Ring - 1];
            _bend = ring.At(wall.Index).Sweep.Radians;
        }
    }

    internal int Ring => _wall.Ring;

    internal bool IsCorner => _wall.IsCorner;

    /// <summary>The wall that goes on smoothly where this one ends, if there is one.</summary>
    internal WallStrips? Follower { get; set; }

    /// <summary>The angle in radians by which the wall turns from its start to its end.</summary>
    internal double Turn => Math.Abs(_bend);

    internal int Count => _shares.Count;

    internal double LastShare => _shares[^1];

    internal double Share(int at) => _shares[at];

    internal bool IsFacetEnd(int at) => _facetEnds[at];

    internal WallFall Fall(double share) => _wall.FallAt(share);

    /// <summary>Bulge of the wall's parallels between two places: it does not hang on how far in they lie.</summary>
    internal double Bulge(double from, double to) => Math.Tan(_bend * (to - from) / 4);

    internal void Add(double share, bool isFacetEnd)
    {
        if (Count > 0 && share - LastShare < Same)
        {
            _facetEnds[^1] |= isFacetEnd;
            return;
        }
        _shares.Add(share);
        _facetEnds.Add(isFacetEnd);
    }
}
