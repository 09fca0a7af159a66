using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The walls of a roof as numbers: the sites they go down from, and the pieces of each, one site after the other.</summary>
internal sealed class RoofWork
{
    private readonly RoofPiece[] _pieces;

    /// <summary>For each site the number of pieces up to its own, and the number of all pieces last.</summary>
    private readonly int[] _firsts;

    private RoofWork(RoofSites sites, RoofPiece[] pieces, int[] firsts)
    {
        Sites = sites;
        _pieces = pieces;
        _firsts = firsts;
    }

    internal RoofSites Sites { get; }

    /// <summary>The first place that no disc is stopped at: only an outline that is none has one.</summary>
    internal Point? Open { get; private init; }

    internal ReadOnlySpan<RoofPiece> PiecesOf(int site) =>
        _pieces.AsSpan(_firsts[site].._firsts[site + 1]);

    internal static RoofWork Of(Contour outline, IReadOnlyList<Contour> holes)
    {
        var sites = RoofSites.Of(outline, holes);
        var count = sites.Span.Length;
        var firsts = new int[count + 1];
        Point? open = null;
        using var all = new Scratch<RoofPiece>(3 * count);
        using var envelope = new WallEnvelope(sites);
        for (var number = 0; number < count; number++)
        {
            if (sites.HasWall(number))
                foreach (var piece in envelope.Of(number))
                {
                    if (piece.Partner == RoofPiece.OwnCentre && !(sites[number].Curvature > 0))
                        open ??= sites[number].FootAt(piece.Middle);
                    all.Add(piece);
                }
            firsts[number + 1] = all.Count;
        }
        return new(sites, all.Span.ToArray(), firsts) { Open = open };
    }

    /// <summary>Distance in mm from a place of a site to the valley.</summary>
    internal double RadiusAt(int site, in RoofPiece piece, double s) =>
        piece.Partner == RoofPiece.OwnCentre
            ? 1 / Sites[site].Curvature
            : Sites[site].RadiusAt(s, piece.Curve);

    /// <summary>The point of the valley that belongs to a place of a site.</summary>
    internal Point ValleyAt(int site, double s, double radius) =>
        Sites[site].FootAt(s) + Sites[site].NormalAt(s) * radius;

    /// <summary>The place within a piece, its ends included, where the valley is farthest from the site.</summary>
    internal double FarthestIn(int site, in RoofPiece piece)
    {
        var best = piece.From;
        var reached = RadiusAt(site, piece, best);
        Try(piece, piece.Middle);
        Try(piece, piece.To);
        if (piece.Partner != RoofPiece.OwnCentre)
        {
            var (first, second) = Sites[site].Turning(piece.Curve).Roots();
            Try(piece, first);
            Try(piece, second);
        }
        return best;

        void Try(in RoofPiece within, double s)
        {
            if (!(s >= within.From && s <= within.To))
                return;
            var radius = RadiusAt(site, within, s);
            // Of what is equally far the first, or the answer would hang on rounding.
            if (radius > reached * (1 + Rounding))
                (best, reached) = (s, radius);
        }
    }

    /// <summary>Whether the valley is as far from the site all along a piece as it is at a radius.</summary>
    internal bool IsLevel(int site, in RoofPiece piece, double radius)
    {
        var least = radius * (1 - Rounding);
        return RadiusAt(site, piece, piece.From) >= least
            && RadiusAt(site, piece, piece.Middle) >= least
            && RadiusAt(site, piece, piece.To) >= least;
    }

    /// <summary>Share of a distance that is rounding.</summary>
    internal const double Rounding = 1e-12;
}
