using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Curves with those left out that lie wholly on one another, ends and all.</summary>
internal sealed class DistinctCurves
{
    private readonly PointMerger _points;
    private readonly HashSet<(int, int, int)> _seen = [];

    internal DistinctCurves(IEnumerable<DrawnCurve> curves)
    {
        DrawnCurve[] all = [.. curves];
        _points = new(ToleranceFor(all).Merge);
        Drawn = Distinct(all, PencilLine.Drawn);
        // After the figure's lines: a guide line that was drawn over is none.
        Guides = Distinct(all, PencilLine.Guide);
    }

    internal Curve[] Drawn { get; }

    internal Curve[] Guides { get; }

    private static Tolerance ToleranceFor(DrawnCurve[] curves) =>
        curves.Length == 0
            ? default
            : Tolerance.For(
                curves
                    .Select(curve => curve.Curve.Extents)
                    .Aggregate((together, next) => together.Including(next))
            );

    private Curve[] Distinct(DrawnCurve[] curves, PencilLine line) =>
        [
            .. curves
                .Where(curve => curve.Line == line && _seen.Add(KeyOf(curve.Curve)))
                .Select(curve => curve.Curve),
        ];

    /// <summary>Three points that no other curve has: the ends, in either order, and the middle.</summary>
    private (int, int, int) KeyOf(Curve curve)
    {
        if (curve.IsCircle)
        {
            var (centre, radius) = (curve.Circle.Centre, curve.Circle.Radius);
            // No segment ends in one point and has its middle in another.
            var right = _points.IdOf(centre + new Vector(radius, 0));
            return (right, right, _points.IdOf(centre));
        }
        var segment = curve.Segment;
        var (start, end) = (_points.IdOf(segment.Start), _points.IdOf(segment.End));
        return (Math.Min(start, end), Math.Max(start, end), _points.IdOf(segment.Middle));
    }
}
