using PatternGen.Geometry;

namespace PatternGen;

public partial class CompassDrawing
{
    /// <summary>A figure whose lines are given, and not the steps that draw them.</summary>
    private CompassDrawing(DistinctCurves distinct, Point[] petalMarks, Point[] plainMarks)
    {
        _instructions = [];
        _curves = distinct.Drawn;
        _guides = [];
        Extents = ExtentsOf(_curves);
        PetalMarks = petalMarks;
        PlainMarks = plainMarks;
    }

    /// <summary>Returns the figure that the given lines make, at least one; it has no steps.</summary>
    /// <param name="curves">The lines.</param>
    /// <param name="petals">A point inside each petal, if some parts are.</param>
    /// <param name="plain">A point inside each part that always stays ground, if some do.</param>
    internal static CompassDrawing OfCurves(
        IReadOnlyList<Curve> curves,
        IEnumerable<Point>? petals = null,
        IEnumerable<Point>? plain = null
    ) =>
        new(
            new DistinctCurves(curves.Select(curve => new DrawnCurve(curve, PencilLine.Drawn))),
            [.. petals ?? []],
            [.. plain ?? []]
        );
}
