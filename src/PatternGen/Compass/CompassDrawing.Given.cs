using PatternGen.Geometry;

namespace PatternGen;

public partial class CompassDrawing
{
    /// <summary>A figure whose lines are given, and not the steps that draw them.</summary>
    private CompassDrawing(DistinctCurves distinct)
    {
        _instructions = [];
        _curves = distinct.Drawn;
        _guides = [];
        Extents = _curves
            .Select(curve => curve.Extents)
            .Aggregate((together, next) => together.Including(next));
        PetalMarks = [];
        PlainMarks = [];
    }

    /// <summary>Returns the figure that the given lines make, at least one; it has no steps.</summary>
    internal static CompassDrawing OfCurves(IReadOnlyList<Curve> curves) =>
        new(new DistinctCurves(curves.Select(curve => new DrawnCurve(curve, PencilLine.Drawn))));
}
