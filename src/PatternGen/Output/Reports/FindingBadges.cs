using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds room for the numbers of findings: beside what they are about, clear of each other and of the rings.</summary>
internal sealed class FindingBadges
{
    /// <summary>Radius in mm of a ring round a place.</summary>
    internal const double RingRadius = 1.7;

    /// <summary>Radius in mm of the disc that a number stands in.</summary>
    internal const double BadgeRadius = 2.3;

    /// <summary>Room in mm between two discs.</summary>
    private const double Between = 0.5;

    /// <summary>Directions that are tried at each distance.</summary>
    private const int Directions = 24;

    /// <summary>Distances that are tried; beyond, a number would not be taken to belong to its place.</summary>
    private const int MostSteps = 12;

    private readonly List<(Point Place, double Radius)> _taken = [];
    private readonly List<(Point Place, Point Badge)> _badges = [];
    private readonly Point _centre;

    internal FindingBadges(IReadOnlyList<Finding> findings, Point centre)
    {
        _centre = centre;
        foreach (var finding in findings)
            _taken.Add((finding.Place, RingRadius));
        foreach (var finding in findings)
            _badges.Add((finding.Place, Room(finding.Place)));
    }

    /// <summary>For each finding its first place, and the middle of its number.</summary>
    internal IReadOnlyList<(Point Place, Point Badge)> Badges => _badges;

    /// <summary>The nearest free disc, outwards first.</summary>
    private Point Room(Point place)
    {
        var outwards = (place - _centre).Direction;
        var nearest = RingRadius + BadgeRadius + 2 * Between;
        var badge = place + nearest * Vector.Towards(outwards);
        for (var step = 0; step < MostSteps; step++)
        for (var turn = 0; turn < Directions; turn++)
        {
            // 0, +1, -1, +2, -2 … steps from the direction outwards.
            var sign = turn % 2 == 0 ? -1 : 1;
            var direction = outwards + Angle.OfTurn(sign * ((turn + 1) / 2) / (double)Directions);
            var candidate = place.Polar(nearest + step * BadgeRadius, direction);
            if (!IsFree(candidate))
                continue;
            _taken.Add((candidate, BadgeRadius));
            return candidate;
        }
        _taken.Add((badge, BadgeRadius));
        return badge;
    }

    private bool IsFree(Point candidate) =>
        _taken.TrueForAll(taken =>
            taken.Place.DistanceTo(candidate) >= taken.Radius + BadgeRadius + Between
        );
}
