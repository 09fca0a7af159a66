using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.CompassDrawing>;

namespace PatternGen;

/// <summary>A compass drawing as its lines.</summary>
internal static class LinesKind
{
    /// <summary>Most lines of a figure. Each may cross all others, and every crossing is found.</summary>
    private const int MostLines = 2000;

    private static readonly ListType<Point> Points = new(RecipeSizes.Point, "a list of points");

    private static readonly RecipeField<CompassDrawing, IReadOnlyList<Curve>> Lines = F.Needed(
        "lines",
        "The lines, arcs and circles of the figure, in the order drawn.",
        new ListType<Curve>(CurveType.Instance, "a list of lines", least: 1, most: MostLines),
        drawing => drawing.Curves
    );

    private static readonly RecipeField<CompassDrawing, IReadOnlyList<Point>?> Petals = F.Maybe(
        "petals",
        "A point inside each part that is a petal.",
        Points,
        drawing => drawing.PetalMarks.Count > 0 ? drawing.PetalMarks : null
    );

    private static readonly RecipeField<CompassDrawing, IReadOnlyList<Point>?> Plain = F.Maybe(
        "plain",
        "A point inside each part that always stays ground.",
        Points,
        drawing => drawing.PlainMarks.Count > 0 ? drawing.PlainMarks : null
    );

    internal static readonly RecipeKind<CompassDrawing> Kind = new RecipeKind<
        CompassDrawing,
        CompassDrawing
    >(
        "lines",
        "A figure of lines, arcs and circles.",
        drawing => drawing,
        new(Lines, Petals, Plain),
        given => CompassDrawing.OfCurves(given.Of(Lines), given.Of(Petals), given.Of(Plain))
    );
}
