using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Places motifs on the stations of a fitted path.</summary>
internal sealed class PathPlacer
{
    /// <summary>An offset this near to the radius, as a share of it, puts every motif of an arc on its centre.</summary>
    private const double AtCentre = 1e-9;

    private readonly SegmentRun _path;
    private readonly PathSettings _settings;
    private readonly PathPlan _plan;
    private readonly int _motifs;
    private readonly RunWalker _walker;
    private readonly CornerFinder _finder;
    private readonly PathFacing _facing;
    private readonly double _first;
    private readonly double _reach;
    private (double Radius, Point At)? _folded;

    internal PathPlacer(SegmentRun path, PathSettings settings, PathPlan plan, int motifs)
    {
        _path = path;
        _settings = settings;
        _plan = plan;
        _motifs = motifs;
        _walker = new(path);
        var within = settings.Corners == PathCorners.Turned ? settings.Clearance : 0;
        _finder = new(path, plan.Corners, within);
        _facing = new(settings.Heading, path);
        var used = plan.Fit.Stretches.Where(stretch => stretch.Repeats > 0).ToArray();
        _first = used[0].First;
        _reach = path.IsClosed ? path.Length : used[^1].Last - _first;
    }

    /// <summary>Returns where motifs stand, along the path; on both sides, left before right.</summary>
    internal ScatterPlace[] Places()
    {
        var isBoth = _settings.Sides == PathSides.Both;
        var places = new ScatterPlace[_plan.Fit.Repeats * (isBoth ? 2 : 1)];
        var count = 0;
        foreach (var stretch in _plan.Fit.Stretches)
            for (var i = 0; i < stretch.Repeats; i++)
            {
                var scale = ScaleAt(stretch, i);
                var station = StationAt(stretch.PlaceOf(i));
                var mirrored = _settings.Sides == PathSides.Alternate && i % 2 != 0;
                places[count++] = new(Placed(station, scale, mirrored), i % _motifs);
                if (isBoth)
                    places[count++] = new(Placed(station, scale, true), i % _motifs);
            }
        RefuseFolded();
        return places;
    }

    /// <summary>Returns where motifs stand on the corners.</summary>
    internal Transform[] CornerPlaces()
    {
        var facing = new PathFacing(_settings.CornerHeading, _path);
        return
        [
            .. _plan.Corners.Select(corner =>
            {
                var offset = corner.Tangent.Left * (_settings.Offset * corner.Mitre);
                return facing.Place(corner.Point + offset, corner.Tangent, 1, mirrored: false);
            }),
        ];
    }

    private PathStation StationAt(double length)
    {
        if (_path.IsClosed && length >= _path.Length)
            length -= _path.Length;
        _walker.MoveTo(length);
        if (_finder.Near(length) is not { } corner)
            return new(_walker.Point, _walker.Tangent, _walker.Tangent, 1, _walker.Curvature);
        // On the corner both sides count alike; beside it only the motif is turned.
        return _finder.IsOn(corner, length)
            ? new(_walker.Point, corner.Tangent, corner.Tangent, corner.Mitre, 0)
            : new(_walker.Point, _walker.Tangent, corner.Tangent, 1, _walker.Curvature);
    }

    private Transform Placed(in PathStation station, double scale, bool mirrored)
    {
        var offset = mirrored ? -_settings.Offset : _settings.Offset;
        if (offset * station.Curvature >= 1 - AtCentre)
            Fold(station);
        return _facing.Place(
            station.Point + station.Tangent.Left * (offset * station.Mitre),
            station.Facing,
            scale,
            mirrored
        );
    }

    private double ScaleAt(PathStretch stretch, int index)
    {
        var factors = _settings.Factors;
        if (factors.Count == 0)
            return 1;
        var (first, reach) =
            _settings.FactorsBetweenCorners && _plan.Fit is { ClosesLoop: false }
                ? (stretch.First, stretch.Last - stretch.First)
                : (_first, _reach);
        // A single repeat stands in the middle of its stretch.
        var share = reach > 0 ? (stretch.PlaceOf(index) - first) / reach : 0.5;
        var place = Math.Clamp(share, 0, 1) * (factors.Count - 1);
        var below = Math.Min((int)place, factors.Count - 2);
        return below < 0
            ? factors[0]
            : factors[below] + (factors[below + 1] - factors[below]) * (place - below);
    }

    private void Fold(in PathStation station)
    {
        var radius = 1 / Math.Abs(station.Curvature);
        if (_folded is not { } tightest || radius < tightest.Radius)
            _folded = (radius, station.Point);
    }

    private void RefuseFolded()
    {
        if (_folded is not { } fold)
            return;
        var offset = Guard.Text(Math.Abs(_settings.Offset));
        var radius = Guard.Text(fold.Radius);
        throw new PatternException(
            $"{offset} mm beside the path on the inside of an arc of radius {radius} mm, repeats come to lie on or beyond its centre, where their order turns round.",
            fold.At,
            [
                $"an offset of less than {radius} mm",
                $"a path whose arcs have a radius of more than {offset} mm there",
                "repeats along the parallel of the outline (Offset or Inset), which leaves out what folds over",
            ]
        );
    }

    /// <param name="Point">The place on the path.</param>
    /// <param name="Tangent">The direction of travel that offsets are square to.</param>
    /// <param name="Facing">The direction of travel that headings follow.</param>
    /// <param name="Mitre">How much farther an offset reaches.</param>
    /// <param name="Curvature">Of the path there.</param>
    private readonly record struct PathStation(
        Point Point,
        Vector Tangent,
        Vector Facing,
        double Mitre,
        double Curvature
    );
}
