using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One wall of a chip: what slopes down from a side, or as a cone from a corner that points into the chip.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class RoofWall
{
    private readonly RoofWork _work;
    private readonly int _site;

    internal RoofWall(RoofWork work, int site, int ring, int index)
    {
        (_work, _site) = (work, site);
        (Ring, Index) = (ring, index);
    }

    /// <summary>The ring that the wall belongs to: 0 is the outline, the holes follow from 1.</summary>
    public int Ring { get; }

    /// <summary>The place of the side in its ring, from 0; for a corner, that of the side that starts there.</summary>
    public int Index { get; }

    /// <summary>Whether the wall is a cone that goes down from a corner.</summary>
    public bool IsCorner => _work.Sites[_site].IsCorner;

    /// <summary>Area in mm² that the wall covers as seen from above. Over the cosine of the wall angle, it is the area of the wall itself.</summary>
    public double Area => new RoofMeasure(_work).SumOf(_site).Area;

    /// <summary>
    /// The shares of the way along the side, or of the angle round the corner, where another wall begins to meet this one: from 0 to 1, in
    /// order. Between them the foot of the wall in the valley is one smooth curve.
    /// </summary>
    public IReadOnlyList<double> Breaks
    {
        get
        {
            var pieces = _work.PiecesOf(_site);
            var breaks = new double[pieces.Length + 1];
            for (var i = 1; i < pieces.Length; i++)
                breaks[i] = _work.Sites[_site].ShareAt(pieces[i].From);
            breaks[^1] = 1;
            return breaks;
        }
    }

    /// <summary>Returns the straight line down the wall from a place of the side, or from the corner, to the valley.</summary>
    /// <param name="share">Share of the way along the side, or of the angle round the corner, in the direction of the outline: 0 is the start.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 1.</exception>
    public WallFall FallAt(double share)
    {
        ref readonly var site = ref _work.Sites[_site];
        var s = Math.Clamp(site.ParameterAt(Guard.Within(share, 0, 1)), -site.Half, site.Half);
        var pieces = _work.PiecesOf(_site);
        var i = 0;
        while (i < pieces.Length - 1 && pieces[i].To < s)
            i++;
        return new(site.FootAt(s), site.NormalAt(s), _work.RadiusAt(_site, pieces[i], s));
    }

    /// <summary>Returns the straight line down the wall where that is longest, and with it the wall deepest.</summary>
    /// <param name="share">Where it starts: share of the way along the side, or of the angle round the corner.</param>
    internal WallFall Longest(out double share)
    {
        var (best, length) = (-_work.Sites[_site].Half, 0.0);
        foreach (var piece in _work.PiecesOf(_site))
        {
            var s = _work.FarthestIn(_site, piece);
            var radius = _work.RadiusAt(_site, piece, s);
            if (radius > length * (1 + RoofWork.Rounding))
                (best, length) = (s, radius);
        }
        ref readonly var site = ref _work.Sites[_site];
        share = site.ShareAt(best);
        return new(site.FootAt(best), site.NormalAt(best), length);
    }
}
