using PatternGen.Geometry;

namespace PatternGen;

internal sealed partial class DxfItemReader
{
    /// <summary>How near to a whole turn, in radians, an ellipse counts as whole: what merges.</summary>
    private const double WholeTurn = 1e-9;

    private const int HighestDegree = 25;

    /// <summary>Its centre and major axis are given in space, unlike those of a circle; what it faces turns its minor axis.</summary>
    private DxfItem Ellipse()
    {
        if (Facing() is not { } facing || _entity.Number(31) != 0)
            return Skipped("what lies in a slanted plane");
        var major = new Vector(_entity.Number(11), _entity.Number(21));
        var ratio = _entity.Number(40, 1);
        if (!(major.Length > 0 && ratio > 0))
            return Skipped("ellipse without a width");
        NoteHeight(_entity.Number(30));
        var from = _entity.Number(41);
        var sweep = (_entity.Number(42, Math.Tau) - from) % Math.Tau;
        if (sweep <= WholeTurn)
            sweep += Math.Tau;
        var isWhole = sweep >= Math.Tau - WholeTurn;
        var minor = major.Left * (facing.Determinant < 0 ? -ratio : ratio);
        return new DxfEllipse(
            _entity,
            new(
                new(_entity.Number(10), _entity.Number(20)),
                major,
                minor,
                from % Math.Tau,
                isWhole ? Math.Tau : sweep
            ),
            isWhole
        );
    }

    private DxfItem Spline()
    {
        const int Closed = 1;
        var isFitted = _entity.Corners.Count == 0;
        var given = isFitted ? _entity.FitPoints : _entity.Corners;
        if (given.Count < 2)
            return Skipped("spline with fewer than two points");
        if (!AreLevel(given.Min(point => point.Z), given.Max(point => point.Z)))
            return Skipped("spline that is not level");
        NoteHeight(given[0].Z);
        Point[] points = [.. given.Select(point => new Point(point.X, point.Y))];
        if (points.All(point => point == points[0]))
            return Skipped("spline in one point");
        var degree = _entity.Whole(71, 3);
        if (!isFitted)
            CheckSpline(degree, points.Length);
        return new DxfSpline(
            _entity,
            degree,
            isFitted ? [] : [.. _entity.Knots],
            points,
            isFitted || _entity.Weights.Count == 0 ? null : [.. _entity.Weights],
            _entity.HasFlag(Closed),
            Direction(12),
            Direction(13)
        );
    }

    private void CheckSpline(int degree, int controls)
    {
        if (degree is < 1 or > HighestDegree)
            throw Wrong($"has degree {degree}, but 1 to {HighestDegree} are possible.");
        if (_entity.Knots.Count != controls + degree + 1)
            throw Wrong(
                $"of degree {degree} with {controls} control points has {controls + degree + 1} knots, but {_entity.Knots.Count} are given."
            );
        if (_entity.Weights.Count > 0 && _entity.Weights.Count != controls)
            throw Wrong($"with {controls} control points has {_entity.Weights.Count} weights.");

        ImportException Wrong(string what) =>
            new(
                $"The spline {what}",
                ImportedCurves.LineName(_entity.Line),
                ["the drawing with the spline saved anew, or as a polyline"]
            );
    }

    private Vector? Direction(int code)
    {
        var direction = new Vector(_entity.Number(code), _entity.Number(code + 10));
        return direction.Length > 0 ? direction : null;
    }
}
