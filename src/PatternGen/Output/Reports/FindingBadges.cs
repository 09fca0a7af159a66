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

    /// <summary>Side of the cells in which what is taken is looked up: no two discs that are too near lie further apart.</summary>
    private const double Cell = 2 * BadgeRadius + Between;

    private readonly Dictionary<(long, long), List<(Point Place, double Radius)>> _taken = [];
    private readonly List<Point> _middles = [];
    private readonly Point _centre;

    /// <param name="findings">The findings, in the order of their numbers.</param>
    /// <param name="centre">Middle of the piece, away from which numbers are put if there is room.</param>
    internal FindingBadges(IReadOnlyList<Finding> findings, Point centre)
    {
        _centre = centre;
        foreach (var place in findings.SelectMany(finding => finding.Places))
            Take(place.Place, RingRadius);
        foreach (var finding in findings)
            _middles.Add(Room(finding.Place));
    }

    /// <summary>For each finding the middle of its number.</summary>
    internal IReadOnlyList<Point> Middles => _middles;

    /// <summary>Returns a box grown to hold all rings and numbers.</summary>
    internal Extents Including(Extents box) =>
        _taken
            .Values.SelectMany(taken => taken)
            .Aggregate(
                box,
                (all, taken) => all.Including(Extents.Of(taken.Place).Grown(taken.Radius))
            );

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
            Take(candidate, BadgeRadius);
            return candidate;
        }
        Take(badge, BadgeRadius);
        return badge;
    }

    private void Take(Point place, double radius)
    {
        var cell = CellOf(place);
        if (!_taken.TryGetValue(cell, out var taken))
            _taken[cell] = taken = [];
        taken.Add((place, radius));
    }

    private bool IsFree(Point candidate)
    {
        var (column, row) = CellOf(candidate);
        for (var x = column - 1; x <= column + 1; x++)
        for (var y = row - 1; y <= row + 1; y++)
            if (_taken.TryGetValue((x, y), out var near) && near.Exists(IsTooNear))
                return false;
        return true;

        bool IsTooNear((Point Place, double Radius) taken) =>
            taken.Place.DistanceTo(candidate) < taken.Radius + BadgeRadius + Between;
    }

    private static (long Column, long Row) CellOf(Point place) =>
        ((long)Math.Floor(place.X / Cell), (long)Math.Floor(place.Y / Cell));
}
