using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.MotifNode>;

namespace PatternGen;

/// <summary>Pieces as they are: chips, line cuts, layout lines, outlines of the stock, labels.</summary>
/// <remarks>Every pattern can be said so, even one of which nothing else is known: then as its pieces lie on the wood.</remarks>
internal static class DrawnKind
{
    private static readonly ListType<ChipShape> Row = new(ChipType.Instance, "a list of chips");

    private static readonly RecipeField<MotifNode, IReadOnlyList<ChipShape>?> Chips = F.Maybe(
        "chips",
        "The chips, if all lie in one row.",
        Row,
        drawn => drawn.ChipRows.Length == 1 ? drawn.ChipRows[0] : null
    );

    private static readonly RecipeField<MotifNode, IReadOnlyList<IReadOnlyList<ChipShape>>?> Rows =
        F.Maybe(
            "rows",
            "The chips, row by row.",
            new ListType<IReadOnlyList<ChipShape>>(Row, "a list of rows"),
            drawn => drawn.ChipRows.Length > 1 ? drawn.ChipRows : null
        );

    private static readonly RecipeField<MotifNode, IReadOnlyList<LineCut>?> LineCuts = F.Maybe(
        "lineCuts",
        "V grooves along lines.",
        new ListType<LineCut>(LineCutType.Instance, "a list of line cuts"),
        drawn => OrNull(drawn.LineCuts)
    );

    private static readonly RecipeField<MotifNode, IReadOnlyList<Chain>?> LayoutLines = F.Maybe(
        "layoutLines",
        "Lines to lay the pattern out by.",
        new ListType<Chain>(RecipeSizes.Line, "a list of lines"),
        drawn => OrNull(drawn.LayoutLines)
    );

    private static readonly RecipeField<MotifNode, IReadOnlyList<Contour>?> Stock = F.Maybe(
        "stock",
        "Outlines of the wood; holes in it run clockwise.",
        new ListType<Contour>(RecipeSizes.Outline, "a list of outlines"),
        drawn => OrNull(drawn.Stock)
    );

    private static readonly RecipeField<MotifNode, IReadOnlyList<Chain>?> GridLines = F.Maybe(
        "gridLines",
        "Lines of the carver's grid.",
        new ListType<Chain>(RecipeSizes.Line, "a list of lines"),
        drawn => OrNull(drawn.GridLines)
    );

    private static readonly RecipeField<MotifNode, IReadOnlyList<Label>?> Labels = F.Maybe(
        "labels",
        "Lines of text.",
        new ListType<Label>(LabelType.Instance, "a list of labels"),
        drawn => OrNull(drawn.Labels)
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, MotifNode>(
        "drawn",
        "Chips, line cuts, layout lines, outlines of the stock and labels, as they are.",
        pattern => pattern.Root as MotifNode ?? FlatPattern.Of(pattern),
        new(Chips, Rows, LineCuts, LayoutLines, Stock, GridLines, Labels),
        given =>
        {
            if (given.Has(Chips) && given.Has(Rows))
                throw new ArgumentException(
                    "Chips stand in one row, under chips, or in several, under rows.",
                    "rows"
                );
            return Pattern.OfPieces(
                new()
                {
                    ChipRows = given.Of(Chips) is { } chips
                        ?
                        [
                            [.. chips],
                        ]
                        : [.. (given.Of(Rows) ?? []).Select(row => row.ToArray())],
                    LineCuts = [.. given.Of(LineCuts) ?? []],
                    LayoutLines = [.. given.Of(LayoutLines) ?? []],
                    Stock = [.. given.Of(Stock) ?? []],
                    GridLines = [.. given.Of(GridLines) ?? []],
                    Labels = [.. given.Of(Labels) ?? []],
                }
            );
        }
    );

    private static IReadOnlyList<T>? OrNull<T>(T[] pieces) => pieces.Length > 0 ? pieces : null;
}
