using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.Geometry.Curve>;

namespace PatternGen;

/// <summary>Lines, arcs and circles of a figure.</summary>
internal static class CurveType
{
    private static readonly RecipeField<Curve, Point?> Centre = F.Maybe(
        "centre",
        "Of a whole circle: its centre.",
        RecipeSizes.Point,
        curve => curve.IsCircle ? curve.Circle.Centre : null
    );

    private static readonly RecipeField<Curve, double?> Radius = F.Maybe(
        "radius",
        "Of a whole circle: its radius in mm.",
        RecipeSizes.Positive,
        curve => curve.IsCircle ? curve.Circle.Radius : null
    );

    private static readonly RecipeField<Curve, Point?> From = F.Maybe(
        "from",
        "Of a line or an arc: where it starts.",
        RecipeSizes.Point,
        curve => curve.IsCircle ? null : curve.Segment.Start
    );

    private static readonly RecipeField<Curve, Point?> To = F.Maybe(
        "to",
        "Of a line or an arc: where it ends.",
        RecipeSizes.Point,
        curve => curve.IsCircle ? null : curve.Segment.End
    );

    private static readonly RecipeField<Curve, double> Bulge = F.Usually(
        "bulge",
        0,
        "Of an arc: the tangent of a quarter of its sweep, positive counter-clockwise.",
        RecipeSizes.Bulge,
        curve => curve.IsCircle ? 0 : curve.Segment.Bulge
    );

    internal static readonly ObjectType<Curve> Instance = new(
        "curve",
        "A line or an arc, from an end to the other, or a whole circle.",
        new(Centre, Radius, From, To, Bulge),
        Make
    );

    private static Curve Make(GivenFields given)
    {
        var isCircle = given.Has(Centre) && given.Has(Radius);
        var isSegment = given.Has(From) && given.Has(To);
        var isMixed = isCircle
            ? given.Has(From) || given.Has(To) || given.Has(Bulge)
            : given.Has(Centre) || given.Has(Radius);
        return (isCircle, isSegment, isMixed) switch
        {
            (true, _, false) => new(
                new Circle(given.Of(Centre).GetValueOrDefault(), given.Of(Radius) ?? 0)
            ),
            (false, true, false) => new(
                new Segment(
                    given.Of(From).GetValueOrDefault(),
                    given.Of(To).GetValueOrDefault(),
                    given.Of(Bulge)
                )
            ),
            _ => throw new ArgumentException(
                "A circle has a centre and a radius; a line or an arc has two ends, from and to, and perhaps a bulge."
            ),
        };
    }
}
