using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The line at the bottom of a chip where two of its walls meet, from one node to another.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Valley
{
    private readonly RoofWork _work;
    private readonly int _site;
    private readonly RoofPiece _piece;

    internal Valley(RoofWork work, int site, RoofPiece piece, RoofNode start, RoofNode end)
    {
        (_work, _site, _piece) = (work, site, piece);
        (Start, End) = (start, end);
        Kind = KindOf(work.Sites[site], work.Sites[piece.Partner]);
    }

    /// <summary>Where it starts.</summary>
    public RoofNode Start { get; }

    /// <summary>Where it ends.</summary>
    public RoofNode End { get; }

    /// <summary>What curve it is.</summary>
    public ValleyKind Kind { get; }

    /// <summary>Whether it is equally far from the outline all along, as in the middle of a rectangle.</summary>
    public bool IsLevel =>
        Math.Abs(Start.Clearance - End.Clearance) <= LevelShare * Start.Clearance
        && Math.Abs(PlaceAt(0.5).Clearance - Start.Clearance) <= LevelShare * Start.Clearance;

    /// <summary>Share of the clearance by which a level valley may rise. Smaller ones are not seen for rounding.</summary>
    private const double LevelShare = 1e-9;

    /// <summary>Returns the place at a share of the way from start to end; exact, whatever the kind.</summary>
    /// <param name="share">0 is the start and 1 the end. Between them places follow each other in order, though not by length along the valley.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 1.</exception>
    public ValleyPlace PlaceAt(double share)
    {
        Guard.Within(share, 0, 1);
        if (share == 0)
            return new(Start.Place, Start.Clearance);
        if (share == 1)
            return new(End.Place, End.Clearance);
        return OwnPlaceAt(share);
    }

    /// <summary>The same, at the ends too, where a node that valleys share may lie a rounding error beside this one's own end.</summary>
    internal ValleyPlace OwnPlaceAt(double share)
    {
        var s = ParameterAt(share);
        var radius = _work.RadiusAt(_site, _piece, s);
        return new(_work.ValleyAt(_site, s, radius), radius);
    }

    /// <summary>The point of the outline where one of the two walls starts that meet at a share of the way.</summary>
    internal Point FootAt(double share) => _work.Sites[_site].FootAt(ParameterAt(share));

    private double ParameterAt(double share) => _piece.From + (_piece.To - _piece.From) * share;

    /// <summary>The share of the way from start to end where it is farthest from the outline; the start, if it is level.</summary>
    internal double DeepestShare() =>
        (_work.FarthestIn(_site, _piece) - _piece.From) / (_piece.To - _piece.From);

    /// <summary>Returns kind and ends, for messages.</summary>
    public override string ToString() => $"{Kind} from {Start} to {End}";

    /// <summary>
    /// The middle of a disc is as far from an arc's centre as the arc's radius less or more the disc's own. So for two arcs the
    /// difference or the sum of the distances from their centres is constant. A corner is an arc without radius.
    /// </summary>
    private static ValleyKind KindOf(in RoofSite a, in RoofSite b)
    {
        if (a.IsStraight || b.IsStraight)
            return a.IsStraight && b.IsStraight ? ValleyKind.Line : ValleyKind.Parabola;
        var isHyperbola = a.IsBulging == b.IsBulging;
        if (isHyperbola)
            return Math.Abs(a.Radius - b.Radius) <= LevelShare * Math.Max(a.Radius, b.Radius)
                ? ValleyKind.Line
                : ValleyKind.Hyperbola;
        return a.Centre.DistanceTo(b.Centre) <= LevelShare * Math.Max(a.Radius, b.Radius)
            ? ValleyKind.Arc
            : ValleyKind.Ellipse;
    }
}
